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

    private Journal(Path file, JournalText text) {
        this.file = file;
        this.end = text.whole();
        this.before = text.chain();
        this.ends = EndFile.of(file, text.missing());
    }

    /** Reads a journal without touching it; a file that is not there is an empty one. */
    static JournalText read(Path file) {
        try {
            if (Files.isSymbolicLink(file)) {
                throw new JobRefused("is a link; put the journal itself into its place");
            }
            // Before the journal: who writes in it meanwhile may note a later end.
            List<JournalEnd> ends = EndFile.read(file);
            byte[] bytes = Files.exists(file) ? Files.readAllBytes(file) : new byte[0];
            return JournalText.read(bytes, ends);
        } catch (IOException e) {
            throw new JobRefused(file + " cannot be read: " + e);
        } catch (JobRefused refusal) {
            throw new JobRefused(file + ": " + refusal.getMessage());
        }
    }

    /**
     * Opens a journal for appending; what was torn off at its end is set aside in a file.
     *
     * @param said takes what is to be said of the set-aside end
     */
    static Journal open(Path file, JournalText text, List<String> said) {
        Journal journal = new Journal(file, text);
        journal.ends.hindrance().ifPresent(said::add);
        if (Files.exists(file)) {
            try {
                byte[] bytes = Files.readAllBytes(file); // first: closing a file ends its locks
                journal.openChannel();
                journal.setAside(bytes, said, !text.missing().isEmpty());
            } catch (IOException e) {
                journal.close();
                throw new JobRefused(file + " cannot be written: " + e + "; nothing new is kept");
            } catch (JobRefused refusal) {
                journal.close();
                throw refusal;
            }
        }
        return journal;
    }

    /**
     * Opens the file, and locks it besides the folder: the file that holds the folder's lock may be
     * deleted while a program runs.
     *
     * @throws JobHeld if another process has it open
     */
    private void openChannel() throws IOException {
        channel = OwnFile.open(file, JournalText.HEADER);
        if (!WriterLock.locks(channel)) {
            channel.close();
            channel = null;
            throw new JobHeld(file + " is being written by another process; nothing is kept here");
        }
        key = attributes().fileKey();
    }

    private BasicFileAttributes attributes() throws IOException {
        return Files.readAttributes(file, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
    }

    private void setAside(byte[] bytes, List<String> said, boolean known) throws IOException {
        breakFirst = end > 0 && bytes[(int) end - 1] != '\n';
        if (bytes.length > end) {
            byte[] torn = Arrays.copyOfRange(bytes, (int) end, bytes.length);
            Path aside = free();
            Files.write(aside, torn, StandardOpenOption.CREATE_NEW, StandardOpenOption.SYNC);
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
     * @throws JobRefused if that fails: then none of them is in the file
     */
    void append(List<Line> lines) {
        if (channel != null && !channel.isOpen()) {
            throw new JobRefused(file + " was given up after a fault; open the job again");
        }
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
        write(ByteBuffer.wrap(bytes), lost(lines.get(0).fact()));
        end += bytes.length;
        tail = tail(bytes, bytes.length);
        before = tie;
        breakFirst = false;
        ends.note(new JournalEnd(lines.get(lines.size() - 1).number(), tie));
    }

    /** What its last line ends with, and the next is tied to. */
    String tie() {
        return before;
    }

    private static String lost(Fact first) {
        return first instanceof Fact.Ran
                ? "The results of this run are not kept for other pages; the values entered are"
                : "What was just entered is NOT kept; what was kept before is whole";
    }

    private void write(ByteBuffer bytes, String lost) {
        String consequence = "";
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
                consequence = takenOff();
                throw e;
            }
        } catch (IOException e) {
            throw new JobRefused(
                    file + " cannot be written: " + e.getMessage() + ". " + lost + consequence);
        }
    }

    /** Takes off what was written in part, and returns what else follows. */
    private String takenOff() {
        try {
            channel.truncate(end);
            channel.force(true);
            return "";
        } catch (IOException worse) {
            close();
            return "; the job must be opened again";
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
