package halfwidth.job;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** A journal's file: read once, then appended to. What is appended is on disk, all or nothing. */
final class Journal implements AutoCloseable {
    private final Path file;
    private final Chain chain = new Chain();
    private final EndFile ends;
    private FileChannel channel;
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
        if (Files.exists(file)) {
            try {
                journal.setAside(said, !text.missing().isEmpty());
            } catch (IOException e) {
                throw new JobRefused(file + " cannot be written: " + e + "; nothing new is kept");
            }
        }
        return journal;
    }

    private FileChannel channel() throws IOException {
        if (channel == null) {
            channel = FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        }
        return channel;
    }

    private void setAside(List<String> said, boolean known) throws IOException {
        byte[] bytes = Files.readAllBytes(file);
        breakFirst = end > 0 && bytes[(int) end - 1] != '\n';
        if (bytes.length > end) {
            byte[] torn = Arrays.copyOfRange(bytes, (int) end, bytes.length);
            Path aside = free();
            Files.write(aside, torn, StandardOpenOption.CREATE_NEW, StandardOpenOption.SYNC);
            channel().truncate(end);
            channel().force(true);
            said.add(
                    "the end of journal.csv was torn off"
                            + (known ? "" : " while it was written, before it was acknowledged")
                            + "; its "
                            + torn.length
                            + " bytes are set aside in "
                            + aside.getFileName());
        }
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
        ByteBuffer bytes = ByteBuffer.wrap(text.toString().getBytes(StandardCharsets.UTF_8));
        write(bytes);
        end += bytes.limit();
        before = tie;
        breakFirst = false;
        ends.note(new JournalEnd(lines.get(lines.size() - 1).number(), tie));
    }

    private void write(ByteBuffer bytes) {
        try {
            long at = end;
            while (bytes.hasRemaining()) {
                at += channel().write(bytes, at);
            }
            channel().force(false);
        } catch (IOException e) {
            List<String> consequence = new ArrayList<>();
            try {
                channel().truncate(end);
                channel().force(true);
            } catch (IOException worse) {
                close();
                consequence.add("; the job must be opened again");
            }
            throw new JobRefused(
                    file
                            + " cannot be written: "
                            + e.getMessage()
                            + ". What was just entered is NOT kept; what was kept before is whole"
                            + String.join("", consequence));
        }
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
