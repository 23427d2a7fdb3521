package halfwidth.job;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;

/**
 * Who may write in a job folder: one process at a time. The file says who; the operating system's
 * lock on it is what counts, and ends with the process however that ends.
 */
final class WriterLock implements AutoCloseable {
    /** Far behind the text: Windows lets nobody read what is locked. */
    private static final long LOCKED_BYTE = 1L << 40;

    private static final String BEGINNING = "process ";

    private final FileChannel channel;

    private WriterLock(FileChannel channel) {
        this.channel = channel;
    }

    /**
     * Takes the lock.
     *
     * @throws JobHeld if another has it, saying who
     * @throws JobRefused if the folder cannot be written
     */
    static WriterLock take(Path file, String who) {
        FileChannel channel = null;
        boolean taken = false;
        try {
            channel = OwnFile.open(file, BEGINNING);
            if (!locks(channel)) {
                throw held(file);
            }
            write(channel, who);
            taken = true;
            return new WriterLock(channel);
        } catch (IOException e) {
            throw new JobRefused(
                    file.getParent()
                            + " cannot be written: "
                            + e
                            + "; it can only be read, and nothing is kept");
        } finally {
            if (!taken && channel != null) {
                OwnFile.close(channel);
            }
        }
    }

    /** Whether it takes a file for this process alone, until the channel is closed. */
    static boolean locks(FileChannel channel) throws IOException {
        try {
            FileLock lock = channel.tryLock(LOCKED_BYTE, 1, false);
            return lock != null;
        } catch (OverlappingFileLockException withinThisProcess) {
            return false;
        }
    }

    private static void write(FileChannel channel, String who) throws IOException {
        String text =
                BEGINNING
                        + ProcessHandle.current().pid()
                        + " of "
                        + who
                        + ", since "
                        + DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(
                                OffsetDateTime.now().withNano(0));
        channel.truncate(0);
        channel.write(ByteBuffer.wrap((text + "\n").getBytes(StandardCharsets.UTF_8)), 0);
    }

    private static JobHeld held(Path file) throws IOException {
        String by = Files.readString(file).strip();
        return new JobHeld(
                file.getParent()
                        + " is being written by "
                        + (by.isEmpty() ? "another process" : by)
                        + "; meanwhile it can only be read");
    }

    @Override
    public void close() {
        try {
            channel.close();
        } catch (IOException e) {
            throw new JobRefused("the lock of the job folder cannot be given back: " + e);
        }
    }
}
