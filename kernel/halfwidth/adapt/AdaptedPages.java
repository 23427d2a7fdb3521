package halfwidth.adapt;

import halfwidth.approval.PageDifference;
import halfwidth.page.Pages;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * A job's own copies of pages, each at {@code pages/STAGE/NAME.md} in the job folder, where it goes
 * before the shipped page of its name. A copy is replaced as a whole or not at all.
 */
public final class AdaptedPages {
    private static final Pattern NAME =
            Pattern.compile("[\\p{L}\\p{N}_-]{1,80}(/[\\p{L}\\p{N}_-]{1,80}){0,3}");

    private final Path notebooks;
    private final Path folder;

    /**
     * The copies of a job.
     *
     * @param notebooks the folder of the shipped pages
     */
    public AdaptedPages(Path notebooks, Path jobFolder) {
        this.notebooks = notebooks;
        this.folder = jobFolder.resolve("pages");
    }

    /** All pages, the adapted before the shipped. */
    public Pages pages() {
        return new Pages(notebooks).under(folder);
    }

    /**
     * Where a page's adapted copy lies, whether there is one or not.
     *
     * @throws IllegalArgumentException if the name is none of a page, or leads out of the folder
     */
    public Path file(String name) {
        Path file = named(name, folder);
        refuseOutside(file, name);
        return file;
    }

    /** Whether the job has a copy of its own of a page. */
    public boolean adapted(String name) {
        return Files.isRegularFile(file(name));
    }

    /**
     * Reads a page as the job has it: the adapted copy, else the shipped page.
     *
     * @throws UncheckedIOException if it is neither there nor readable as UTF-8
     */
    public Draft draft(String name) {
        Path file = adapted(name) ? file(name) : named(name, notebooks);
        return Draft.of(name, file, text(file));
    }

    /**
     * The text of a page as shipped.
     *
     * @throws UncheckedIOException if there is none of that name
     */
    public String shipped(String name) {
        return text(named(name, notebooks));
    }

    /** The version of a page as the job has it now; changes whoever edits it. */
    public Version version(String name) {
        try {
            return Version.of(
                    Files.readAllBytes(adapted(name) ? file(name) : named(name, notebooks)));
        } catch (NoSuchFileException none) {
            return Version.NONE;
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /**
     * Writes a page's adapted copy, and does not return before it is on disk.
     *
     * @param basis the version of the text that the draft was made from
     * @throws ChangedElsewhere if the page is no longer of that version
     * @throws IllegalArgumentException if the draft has problems: a page that cannot be read never
     *     takes the place of one that can
     * @throws UncheckedIOException if it cannot be written
     */
    public synchronized Version write(Draft draft, Version basis) {
        if (draft.page().isEmpty()) {
            throw new IllegalArgumentException(
                    "page " + draft.name() + " must be free of problems to be written");
        }
        Path file = file(draft.name());
        if (!version(draft.name()).equals(basis)) {
            throw new ChangedElsewhere(draft.name());
        }
        byte[] bytes = draft.text().toString().getBytes(StandardCharsets.UTF_8);
        try {
            Files.createDirectories(file.getParent());
            replace(file, bytes);
        } catch (IOException unwritable) {
            throw new UncheckedIOException(unwritable);
        }
        return draft.text().version();
    }

    /**
     * Goes back to the shipped page: the adapted copy gets a name under which it is no page, and
     * stays in its folder.
     *
     * @param basis the version of the copy that whoever asks has seen
     * @throws ChangedElsewhere if the copy is no longer of that version
     * @throws IllegalArgumentException if there is no copy, or no shipped page to go back to
     * @throws UncheckedIOException if it cannot be renamed
     */
    public synchronized void setAside(String name, Version basis) {
        if (!adapted(name) || !hasShipped(name)) {
            throw new IllegalArgumentException(
                    "page " + name + " must be an adapted copy of a shipped page to be set aside");
        }
        if (!version(name).equals(basis)) {
            throw new ChangedElsewhere(name);
        }
        try {
            Files.move(file(name), aside(name, countAside(name) + 1));
        } catch (IOException unwritable) {
            throw new UncheckedIOException(unwritable);
        }
    }

    /** Whether there is a shipped page of that name. */
    public boolean hasShipped(String name) {
        return Files.isRegularFile(named(name, notebooks));
    }

    /**
     * What a page's text has otherwise than the shipped page of its name.
     *
     * @param notebooks the folder of the shipped pages
     * @return empty if it says the same; it is told from others by its text, so that it stays the
     *     same difference when a later version ships another page
     */
    public static Optional<PageDifference> difference(Path notebooks, String name, String text) {
        String digest = Version.of(text.getBytes(StandardCharsets.UTF_8)).digest();
        Optional<Difference> difference = compared(notebooks, name, text);
        if (difference.isEmpty()) {
            return Optional.of(new PageDifference(digest, "none of its name is shipped"));
        }
        return difference
                .filter(lines -> !lines.isNone())
                .map(lines -> new PageDifference(digest, lines.words()));
    }

    /**
     * A page's text line by line beside the shipped page of its name.
     *
     * @param notebooks the folder of the shipped pages
     * @return empty if none of its name is shipped
     */
    public static Optional<Difference> compared(Path notebooks, String name, String text) {
        if (!NAME.matcher(name).matches() || !Files.isRegularFile(named(name, notebooks))) {
            return Optional.empty();
        }
        String shipped = text(named(name, notebooks));
        return Optional.of(Difference.of(shipped.replaceFirst("^\ufeff", ""), text));
    }

    /** How many copies were set aside; they are numbered from 1. */
    private int countAside(String name) {
        int number = 0;
        while (Files.exists(aside(name, number + 1))) {
            number++;
        }
        return number;
    }

    private Path aside(String name, int number) {
        Path file = file(name);
        String bare = file.getFileName().toString().replaceFirst("\\.md$", "");
        return file.resolveSibling(bare + ".aside-" + number + ".txt");
    }

    /** Where the copy lies that was set aside last. */
    public Optional<Path> lastSetAside(String name) {
        int last = countAside(name);
        return last == 0 ? Optional.empty() : Optional.of(aside(name, last));
    }

    private static void replace(Path file, byte[] bytes) throws IOException {
        Path fresh = Files.createTempFile(file.getParent(), file.getFileName().toString(), ".new");
        try {
            try (FileChannel channel = FileChannel.open(fresh, StandardOpenOption.WRITE)) {
                ByteBuffer rest = ByteBuffer.wrap(bytes);
                while (rest.hasRemaining()) {
                    channel.write(rest);
                }
                channel.force(true);
            }
            Files.move(
                    fresh,
                    file,
                    StandardCopyOption.ATOMIC_MOVE,
                    StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(fresh);
        }
    }

    private static Path named(String name, Path folder) {
        if (!NAME.matcher(name).matches()) {
            throw new IllegalArgumentException(
                    "page name "
                            + name
                            + " must be words of letters, digits, - and _ with / between");
        }
        return folder.resolve(name + ".md");
    }

    /** A link in the job folder must not lead a write to somewhere else. */
    private void refuseOutside(Path file, String name) {
        Path there = file;
        while (there != null && !Files.exists(there)) {
            there = there.equals(folder) ? null : there.getParent();
        }
        try {
            Path root = folder.getParent().toRealPath().resolve(folder.getFileName());
            if (there != null && !there.toRealPath().startsWith(root)) {
                throw new IllegalArgumentException(
                        "page " + name + " must lie in " + folder + ", not behind a link");
            }
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static String text(Path file) {
        try {
            ByteBuffer bytes = ByteBuffer.wrap(Files.readAllBytes(file));
            return StandardCharsets.UTF_8.newDecoder().decode(bytes).toString();
        } catch (CharacterCodingException notText) {
            throw new UncheckedIOException(
                    new IOException(file + " has bytes that are not UTF-8; save it as UTF-8"));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
