package halfwidth.page;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** The worked pages in a folder, in the order of the job. */
public final class Pages {
    private static final String ENDING = ".md";
    private static final List<String> STAGES =
            List.of(
                    "site",
                    "lines",
                    "transmit",
                    "array",
                    "sweep",
                    "monitor",
                    "instruments",
                    "record");
    private static final Comparator<String> ORDER =
            Comparator.comparingInt(Pages::stage).thenComparing(Comparator.naturalOrder());

    private final Path notebooks;

    public Pages(Path notebooks) {
        this.notebooks = notebooks;
    }

    private static int stage(String name) {
        int stage = STAGES.indexOf(name.substring(0, Math.max(name.indexOf('/'), 0)));
        return stage < 0 ? STAGES.size() : stage;
    }

    /**
     * The names of all pages: stage by stage in the order of the job, other folders after, each in
     * the order of the alphabet.
     *
     * @throws UncheckedIOException if the folder cannot be read
     */
    public List<String> names() {
        try (Stream<Path> files = Files.walk(notebooks)) {
            return files.filter(Files::isRegularFile)
                    .filter(file -> file.getFileName().toString().endsWith(ENDING))
                    .map(file -> nameOf(file, notebooks))
                    .sorted(ORDER)
                    .toList();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /**
     * Reads all pages.
     *
     * @throws PageRefused if any of them is malformed, with the problems of all
     */
    public List<Page> all() {
        List<Page> pages = new ArrayList<>();
        List<Problem> problems = new ArrayList<>();
        for (String name : names()) {
            try {
                pages.add(read(file(name), notebooks));
            } catch (PageRefused refusal) {
                problems.addAll(refusal.problems());
            }
        }
        if (!problems.isEmpty()) {
            throw new PageRefused(problems);
        }
        return pages;
    }

    /**
     * Reads a page by its name, as in {@code transmit/feed-trim}.
     *
     * @throws IllegalArgumentException if there is none of that name, naming those that are near
     * @throws PageRefused if it is malformed
     */
    public Page find(String name) {
        String plain = name.replace('\\', '/');
        List<String> names = names();
        if (!names.contains(plain)) {
            throw new IllegalArgumentException(
                    "page " + name + " is not in " + notebooks + "; " + Near.advice(plain, names));
        }
        return read(file(plain), notebooks);
    }

    private Path file(String name) {
        return notebooks.resolve(name + ENDING);
    }

    /**
     * Reads a page from its file.
     *
     * @param notebooks the folder that its name starts from
     * @throws PageRefused if it is malformed or cannot be read
     * @throws IllegalArgumentException if {@code file} is not in {@code notebooks} or does not end
     *     in {@code .md}
     */
    public static Page read(Path file, Path notebooks) {
        return parse(nameOf(file, notebooks), file, SourceText.read(file));
    }

    /**
     * Reads a page from its text.
     *
     * @param file where the text is from, for messages
     * @throws PageRefused if it is malformed
     */
    public static Page parse(String name, Path file, String text) {
        Problems problems = new Problems(file);
        Outline outline = new Outline(SourceText.withPlainLines(text), problems);
        problems.refuseIfAny();
        return new Page(name, file, outline.title(), outline.parts());
    }

    private static String nameOf(Path file, Path notebooks) {
        Path root = notebooks.toAbsolutePath().normalize();
        Path place = file.toAbsolutePath().normalize();
        String name = place.startsWith(root) ? root.relativize(place).toString() : "";
        if (!name.endsWith(ENDING)) {
            throw new IllegalArgumentException(
                    "file " + file + " must be a " + ENDING + " file in " + notebooks);
        }
        return name.substring(0, name.length() - ENDING.length()).replace('\\', '/');
    }
}
