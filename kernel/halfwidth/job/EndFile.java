package halfwidth.job;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The file {@code journal-end.csv}: where the journal ended, so that it is noticed if whole lines
 * at its end are gone. It is written when the lines are on disk already: a process that is killed
 * leaves it behind the journal and never ahead of it, and so never a false alarm. Ends that are
 * missing stay in it until somebody has seen to them. It also holds a digest of the job's heading
 * as it was then.
 */
final class EndFile implements AutoCloseable {
    private static final String NAME = "journal-end.csv";

    private final Path file;
    private final List<JournalEnd> missing;
    private final String heading;
    private FileChannel channel;

    private EndFile(Path journal, List<JournalEnd> missing, String heading) {
        this.file = beside(journal);
        this.missing = List.copyOf(missing);
        this.heading = heading;
    }

    /**
     * The file of a journal, to write.
     *
     * @param missing the ends that the journal has no more
     * @param heading the digest of the job's heading; given, since to read it when lines are on
     *     disk already may fail
     */
    static EndFile of(Path journal, List<JournalEnd> missing, String heading) {
        return new EndFile(journal, missing, heading);
    }

    /** The ends that are known of a journal; none where the file cannot be read. */
    static List<JournalEnd> read(Path journal) {
        return text(beside(journal)).map(JournalEnd::read).orElse(List.of());
    }

    /** The digest of the heading when the journal was last written; empty if not known. */
    static Optional<String> heading(Path folder) {
        return text(folder.resolve(NAME)).flatMap(JournalEnd::heading);
    }

    private static Optional<String> text(Path file) {
        try {
            return Optional.of(new String(Files.readAllBytes(file), StandardCharsets.UTF_8));
        } catch (IOException notKnown) {
            return Optional.empty();
        }
    }

    private static Path beside(Path journal) {
        return journal.resolveSibling(NAME);
    }

    /** Why ends cannot be noted; empty if they can. */
    Optional<String> hindrance() {
        try {
            if (Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
                channel = OwnFile.open(file, JournalEnd.HEADER);
            }
            return Optional.empty();
        } catch (IOException e) {
            return Optional.of(
                    e.getMessage()
                            + "; until then, lines gone from the journal's end go unnoticed");
        }
    }

    /** Notes where the journal ends now; where that fails, what was noted before still guards. */
    void note(JournalEnd end) {
        List<JournalEnd> ends = new ArrayList<>(missing);
        ends.add(end);
        ByteBuffer text =
                ByteBuffer.wrap(JournalEnd.write(ends, heading).getBytes(StandardCharsets.UTF_8));
        try {
            if (channel == null) {
                channel = OwnFile.open(file, JournalEnd.HEADER);
            }
            while (text.hasRemaining()) {
                channel.write(text, text.position());
            }
            channel.truncate(text.limit());
        } catch (IOException e) {
            // What was entered is on disk; to refuse it now would be wrong.
            giveUp();
        }
    }

    /** Closes it whatever comes of it; the next note opens it again. */
    void giveUp() {
        if (channel != null) {
            OwnFile.close(channel);
            channel = null;
        }
    }

    @Override
    public void close() {
        try {
            if (channel != null) {
                channel.close();
            }
        } catch (IOException e) {
            throw new JobRefused(file + " cannot be closed: " + e);
        }
    }
}
