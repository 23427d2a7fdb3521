package halfwidth.run;

import java.io.Closeable;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.time.Instant;
import java.util.concurrent.atomic.AtomicBoolean;

/**
 * The file in which a worker says which statement it runs, so that it is known even after its JVM
 * is gone. The program holds a lock on it, which ends with the program however that ends: a file
 * that nobody holds was left by one that was killed.
 */
final class StepMarker implements Closeable {
    private static final String BEGINNING = "halfwidth-";
    private static final String END = ".step";

    /** Far behind the index: Windows lets nobody else write what is locked. */
    private static final long LOCKED_BYTE = 1L << 40;

    /** A file so young may be one that another program is about to lock. */
    private static final Duration YOUNG = Duration.ofMinutes(1);

    private static final AtomicBoolean SWEPT = new AtomicBoolean();

    private final Path file;
    private final FileChannel channel;

    private StepMarker(Path file, FileChannel channel) {
        this.file = file;
        this.channel = channel;
    }

    /**
     * Makes one in the folder for temporary files, after removing what dead programs left there.
     */
    static StepMarker create() throws IOException {
        Path folder = Path.of(System.getProperty("java.io.tmpdir"));
        // Once, before there is one of this program: closing it anywhere here ends its lock.
        if (SWEPT.compareAndSet(false, true)) {
            sweep(folder, Instant.now());
        }
        return in(folder);
    }

    static StepMarker in(Path folder) throws IOException {
        Path file = Files.createTempFile(folder, BEGINNING, END);
        file.toFile().deleteOnExit();
        FileChannel channel =
                FileChannel.open(file, StandardOpenOption.READ, StandardOpenOption.WRITE);
        channel.lock(LOCKED_BYTE, 1, false);
        channel.write(ByteBuffer.allocate(Integer.BYTES).putInt(0, -1), 0);
        return new StepMarker(file, channel);
    }

    /** Removes those that no program holds. */
    static void sweep(Path folder, Instant now) {
        try (DirectoryStream<Path> files =
                Files.newDirectoryStream(folder, BEGINNING + "*" + END)) {
            for (Path file : files) {
                removeIfLeft(file, now.minus(YOUNG));
            }
        } catch (IOException e) {
            // Without the folder there is nothing to remove.
        }
    }

    private static void removeIfLeft(Path file, Instant old) {
        try {
            if (Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)
                    && Files.getLastModifiedTime(file).toInstant().isBefore(old)
                    && !isHeld(file)) {
                Files.delete(file);
            }
        } catch (IOException e) {
            // Somebody else's, or another program was faster.
        }
    }

    private static boolean isHeld(Path file) throws IOException {
        try (FileChannel channel =
                FileChannel.open(file, StandardOpenOption.WRITE, LinkOption.NOFOLLOW_LINKS)) {
            FileLock lock = channel.tryLock(LOCKED_BYTE, 1, false);
            return lock == null;
        } catch (OverlappingFileLockException withinThisProgram) {
            return true;
        }
    }

    Path file() {
        return file;
    }

    /** The index of the statement the worker is, or was last, running; below 0 if none. */
    int statement() {
        ByteBuffer index = ByteBuffer.allocate(Integer.BYTES);
        try {
            return channel.read(index, 0) == Integer.BYTES ? index.getInt(0) : -1;
        } catch (IOException e) {
            return -1;
        }
    }

    @Override
    public void close() throws IOException {
        channel.close();
        Files.deleteIfExists(file);
    }
}
