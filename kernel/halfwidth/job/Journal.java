package halfwidth.job;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/** A journal's file: read once, then appended to. What is appended is on disk, all or nothing. */
final class Journal implements AutoCloseable {
    /** More than the links at the end of a line. */
    private static final int TAIL = 64;

    private final Path file;
    private final Chain chain = new Chain();
    private final EndFile ends;
    private FileChannel channel;

    /** Tells the file that is open from another one that took its name; null on some systems. */
    private Object key;

    /** The last bytes before {@code end}, the link of the last line among them. */
    private byte[] tail = {};

    private long end;
    private String before;
    private boolean breakFirst;

    /** The number of the last line. */
    private long number;

    /** Whether it is not known what is in the file any more. */
    private boolean givenUp;

    private Journal(Path file, JournalText text, String heading) {
        this.file = file;
        this.end = text.whole();
        this.before = text.chain();
        List<Line> lines = text.lines();
        this.number = lines.isEmpty() ? 0 : lines.get(lines.size() - 1).number();
        this.ends = EndFile.of(file, text.missing(), heading);
    }

    /** Reads a journal without touching it; a file that is not there is an empty one. */
    static JournalText read(Path file) {
        try {
            if (Files.isSymbolicLink(file)) {
                throw new JobRefused("is a link; put the journal itself into its place");
            }
            // Before the journal: who writes in it meanwhile may note a later end.
            List<JournalEnd> ends = EndFile.read(file);
            return JournalText.read(bytes(file).orElse(new byte[0]), ends);
        } catch (IOException e) {
            throw new JobRefused(file + " cannot be read: " + e);
        } catch (JobRefused refusal) {
            throw new JobRefused(file + ": " + refusal.getMessage());
        }
    }

    /** What is in a file, if it is there; one that only cannot be read is not taken for none. */
    private static Optional<byte[]> bytes(Path file) throws IOException {
        try {
            return Optional.of(Files.readAllBytes(file));
        } catch (NoSuchFileException none) {
            return Optional.empty();
        }
    }

    /**
     * Opens a journal for appending; what was torn off at its end is set aside in a file.
     *
     * @param heading the digest of the job's heading
     * @param said takes what is to be said of the set-aside end
     */
    static Journal open(Path file, JournalText text, String heading, List<String> said) {
        Journal journal = new Journal(file, text, heading);
        boolean opened = false;
        try {
            journal.ends.hindrance().ifPresent(said::add);
            Optional<byte[]> bytes = bytes(file); // first: closing a file ends its locks
            if (bytes.isPresent()) {
                journal.openChannel();
                journal.setAside(bytes.get(), said, !text.missing().isEmpty());
            }
            opened = true;
            return journal;
        } catch (IOException e) {
            throw new JobRefused(file + " cannot be written: " + e + "; nothing new is kept");
        } finally {
            if (!opened) {
                journal.giveUp();
            }
        }
    }

    /**
     * Opens the file, and locks it besides the folder: the file that holds the folder's lock may be
     * deleted while a program runs.
     *
     * @throws JobHeld if another process has it open
     */
    private void openChannel() throws IOException {
        FileChannel opened = OwnFile.open(file, JournalText.HEADER);
        try {
            if (!WriterLock.locks(opened)) {
                throw new JobHeld(
                        file + " is being written by another process; nothing is kept here");
            }
            key = attributes().fileKey();
            // What a process wrote that ended before it forced it is shown, and so must last.
            opened.force(true);
            FolderSync.of(file.toAbsolutePath().getParent());
            channel = opened;
        } finally {
            if (channel == null) {
                OwnFile.close(opened);
            }
        }
    }

    private BasicFileAttributes attributes() throws IOException {
        return Files.readAttributes(file, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
    }

    private void setAside(byte[] bytes, List<String> said, boolean known) throws IOException {
        if (bytes.length < end) {
            throw new IOException("another program made it shorter meanwhile; open the job again");
        }
        breakFirst = end > 0 && bytes[(int) end - 1] != '\n';
        if (bytes.length > end) {
            byte[] torn = Arrays.copyOfRange(bytes, (int) end, bytes.length);
            Path aside = free();
            Files.write(aside, torn, StandardOpenOption.CREATE_NEW, StandardOpenOption.SYNC);
            FolderSync.of(file.toAbsolutePath().getParent());
            channel.truncate(end);
            channel.force(true);
            said.add(
                    "the end of journal.csv was torn off"
                            + (known ? "" : " while it was written, before it was acknowledged")
                            + "; its "
                            + torn.length
                            + " bytes are set aside in "
                            + aside.getFileName());
        }
        tail = tail(bytes, (int) end);
    }

    private static byte[] tail(byte[] bytes, int end) {
        return Arrays.copyOfRange(bytes, Math.max(0, end - TAIL), end);
    }

    private Path free() {
        int number = 1;
        while (Files.exists(aside(number))) {
            number++;
        }
        return aside(number);
    }

    private Path aside(int number) {
        return file.resolveSibling("journal-torn-" + number + ".txt");
    }

    /**
     * Appends lines that belong together; they are on disk when it returns.
     *
     * @throws JobRefused if that fails: then none of them is in the file, unless it says that this
     *     is not known
     */
    void append(List<Line> lines) {
        boolean closed = channel != null && !channel.isOpen();
        // Whoever wrote the lines before may have run out of memory before it knew of them.
        if (givenUp || closed || lines.get(0).number() != number + 1) {
            throw new JobRefused(
                    file
                            + " was given up after a fault, and nothing more is kept; open the job"
                            + " again");
        }
        boolean known = false;
        try {
            appendKnown(lines);
            known = true;
        } catch (JobRefused refusal) {
            known = true;
            throw refusal;
        } finally {
            if (!known) {
                giveUp();
            }
        }
    }

    private void appendKnown(List<Line> lines) {
        StringBuilder text = new StringBuilder(breakFirst ? "\n" : "");
        if (end == 0) {
            text.append(JournalText.HEADER).append('\n');
        }
        String tie = before;
        for (Line line : lines) {
            String cells = LineText.write(line);
            String checks = chain.end(tie, cells.getBytes(StandardCharsets.UTF_8));
            tie = Chain.last(checks);
            text.append(cells).append(checks).append('\n');
        }
        byte[] bytes = text.toString().getBytes(StandardCharsets.UTF_8);
        write(ByteBuffer.wrap(bytes), lines.get(0).fact() instanceof Fact.Ran);
        end += bytes.length;
        tail = tail(bytes, bytes.length);
        before = tie;
        breakFirst = false;
        number = lines.get(lines.size() - 1).number();
        ends.note(new JournalEnd(number, tie));
    }

    /** What its last line ends with, and the next is tied to. */
    String tie() {
        return before;
    }

    /** What a fault comes to, where it is known and where it is not. */
    private static String lost(boolean results, boolean known) {
        if (known) {
            return results
                    ? "The results of this run are not kept for other pages; the values entered are"
                    : "What was just entered is NOT kept; what was kept before is whole";
        }
        return (results
                        ? "The values entered are kept; whether the results of this run are"
                        : "What was kept before is whole; whether what was just entered is kept")
                + " shows when the job is opened again, and it must be";
    }

    private void write(ByteBuffer bytes, boolean results) {
        boolean known = true;
        try {
            ready();
            try {
                long at = end;
                while (bytes.hasRemaining()) {
                    at += channel.write(bytes, at);
                }
                channel.force(false);
                return;
            } catch (IOException e) {
                known = takenOff();
                throw e;
            }
        } catch (IOException e) {
            String why = e.getMessage() == null ? e.toString() : e.getMessage();
            throw new JobRefused(file + " cannot be written: " + why + ". " + lost(results, known));
        }
    }

    /** Takes off what was written in part, and returns whether that is done. */
    private boolean takenOff() {
        try {
            channel.truncate(end);
            channel.force(true);
            return true;
        } catch (IOException worse) {
            giveUp();
            return false;
        }
    }

    /** Closes the files, whatever comes of it, and writes no more. */
    private void giveUp() {
        givenUp = true;
        ends.giveUp();
        if (channel != null) {
            OwnFile.close(channel);
        }
    }

    /**
     * Sees to it that the file is as this process left it, else what is written would replace what
     * another has written, or go into a file that nobody finds.
     */
    private void ready() throws IOException {
        try {
            if (channel == null) {
                openChannel();
            }
            if (isAsLeft()) {
                return;
            }
        } catch (NoSuchFileException deleted) {
            // As below.
        }
        throw new IOException(
                "another program has changed it since this one opened it; close this one, see"
                        + " what the journal holds, and open the job again");
    }

    private boolean isAsLeft() throws IOException {
        ByteBuffer last = ByteBuffer.allocate(tail.length);
        while (last.hasRemaining() && channel.read(last, end - last.remaining()) > 0) {
            // It reads on until it has all, or the file ends.
        }
        BasicFileAttributes is = attributes();
        return is.isRegularFile()
                && is.size() == end
                && Objects.equals(is.fileKey(), key)
                && Arrays.equals(last.array(), tail);
    }

    @Override
    public void close() {
        try (ends) {
            if (channel != null) {
                channel.close();
            }
        } catch (IOException e) {
            throw new JobRefused(file + " cannot be closed: " + e);
        }
    }
}
