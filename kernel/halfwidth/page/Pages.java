package halfwidth.page;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The worked pages in a folder, in the order of the job. A page is as its file is when it is asked
 * for; one whose text is the same as before is not parsed again.
 */
public final class Pages {
    private static final String ENDING = ".md";

    /** The order in which the work of a station asks for them. */
    private static final List<String> JOB =
            List.of(
                    "site/course-geometry",
                    "site/check-points",
                    "site/lost-mark",
                    "lines/phase-constant",
                    "transmit/modulation",
                    "transmit/feed-trim",
                    "transmit/quadrature-phasing",
                    "transmit/course-width",
                    "transmit/clearance-width",
                    "array/prediction",
                    "array/distribution-check",
                    "array/tolerance-study",
                    "sweep/ground-check",
                    "sweep/comparison",
                    "monitor/return-lines",
                    "monitor/pair-null",
                    "monitor/composite",
                    "monitor/alarm-points",
                    "instruments/receiver-check",
                    "instruments/load-impedance",
                    "record/facility-reference",
                    "record/periodic-check",
                    "record/flight-brief");

    private static final List<String> STAGES = JOB.stream().map(Pages::folder).distinct().toList();
    private static final Comparator<String> ORDER =
            Comparator.<String>comparingInt(name -> place(STAGES, folder(name)))
                    .thenComparing(name -> folder(name))
                    .thenComparingInt(name -> place(JOB, name))
                    .thenComparing(Comparator.naturalOrder());

    /** Names that lead nowhere but into the folder. */
    private static final Pattern PLAIN = Pattern.compile("[a-zA-Z0-9_-]+(/[a-zA-Z0-9_-]+)*");

    private final Path notebooks;
    private final Optional<Path> adapted;
    private final Map<Path, Page> parsed;

    public Pages(Path notebooks) {
        this(notebooks, Optional.empty(), new ConcurrentHashMap<>());
    }

    private Pages(Path notebooks, Optional<Path> adapted, Map<Path, Page> parsed) {
        this.notebooks = notebooks;
        this.adapted = adapted;
        this.parsed = parsed;
    }

    /** The folder that they are in, without any that lie over them. */
    public Path folder() {
        return notebooks;
    }

    /** These pages under those of another folder, which need not be there. */
    public Pages under(Path folder) {
        return new Pages(notebooks, Optional.of(folder), parsed);
    }

    private static String folder(String name) {
        return name.substring(0, Math.max(name.indexOf('/'), 0));
    }

    /** What is not in the order comes after what is. */
    private static int place(List<String> order, String name) {
        int place = order.indexOf(name);
        return place < 0 ? order.size() : place;
    }

    /**
     * The names of all pages in the order of the job, stage by stage; what is not of it comes last
     * in its stage, and other folders last of all, by the alphabet.
     *
     * @throws UncheckedIOException if the folder cannot be read
     */
    public List<String> names() {
        Stream<String> more = adapted.filter(Files::isDirectory).stream().flatMap(Pages::names);
        return Stream.concat(names(notebooks), more).distinct().sorted(ORDER).toList();
    }

    private static Stream<String> names(Path folder) {
        try (Stream<Path> files = Files.walk(folder)) {
            return files
                    .filter(Files::isRegularFile)
                    .filter(file -> file.getFileName().toString().endsWith(ENDING))
                    .map(file -> nameOf(file, folder))
                    .toList()
                    .stream();
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
                pages.add(read(name));
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
        if (!has(plain)) {
            throw new IllegalArgumentException(
                    "page "
                            + name
                            + " is not in "
                            + notebooks
                            + "; "
                            + Near.advice(plain, names()));
        }
        return read(plain);
    }

    /** Whether there is a page of just that name. */
    public boolean has(String name) {
        // The list of names is sure and slow: a folder is walked for each question.
        return PLAIN.matcher(name).matches()
                        && Stream.concat(adapted.stream(), Stream.of(notebooks))
                                .anyMatch(folder -> isThere(folder, name + ENDING))
                || names().contains(name);
    }

    /** Whether a file is there under this name, whatever else the machine takes for the same. */
    private static boolean isThere(Path folder, String file) {
        try {
            Path path = folder.resolve(file);
            return Files.isRegularFile(path) && path.toRealPath().endsWith(Path.of(file));
        } catch (IOException gone) {
            return false;
        }
    }

    private Page read(String name) {
        String file = name + ENDING;
        Path folder =
                adapted.filter(own -> Files.isRegularFile(own.resolve(file))).orElse(notebooks);
        return current(name, folder.resolve(file));
    }

    private Page current(String name, Path file) {
        String text = SourceText.withPlainLines(SourceText.read(file));
        Page known = parsed.get(file);
        if (known != null && known.text().equals(text)) {
            return known;
        }
        Page page = parse(name, file, text);
        parsed.put(file, page);
        return page;
    }

    /**
     * Reads a page from its text.
     *
     * @param file where the text is from, for messages
     * @throws PageRefused if it is malformed
     */
    public static Page parse(String name, Path file, String text) {
        return parse(name, file, text, true);
    }

    /**
     * Reads a page from a text that came in a record. No file is read for it: an example that names
     * an array by a path is refused.
     *
     * @param file for messages
     * @throws PageRefused if it is malformed
     */
    public static Page parseFromElsewhere(String name, Path file, String text) {
        return parse(name, file, text, false);
    }

    private static Page parse(String name, Path file, String text, boolean files) {
        Problems problems = new Problems(file);
        String plain = SourceText.withPlainLines(text);
        Outline outline = new Outline(plain, problems, files);
        problems.refuseIfAny();
        return new Page(name, file, outline.title(), outline.parts(), plain);
    }

    private static String nameOf(Path file, Path folder) {
        String name = folder.relativize(file).toString();
        return name.substring(0, name.length() - ENDING.length()).replace('\\', '/');
    }
}
