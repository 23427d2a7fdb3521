package halfwidth.job;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;

/**
 * Opens the files of a job folder to write. A folder that came from elsewhere may hold links under
 * their names, or other files: neither is written into.
 */
final class OwnFile {
    private static final int MARK = "\ufeff".getBytes(StandardCharsets.UTF_8).length;

    /** More than is written at once by far; what is longer was not left so by a loss of power. */
    private static final int LONGEST_BLANK = 1 << 16;

    private OwnFile() {}

    /**
     * Opens a file, or makes it.
     *
     * @param beginning what it begins with if this program wrote it; less of it is a torn one, and
     *     zeros are one whose length was on disk before what is in it when the power was lost
     * @throws IOException if it is a link, no plain file, or begins otherwise
     */
    static FileChannel open(Path file, String beginning) throws IOException {
        if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
            return opened(file, StandardOpenOption.CREATE_NEW);
        }
        if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
            throw new IOException(
                    file.getFileName()
                            + " is a link or no plain file, and nothing is written through it; take"
                            + " it out of the folder");
        }
        FileChannel channel = opened(file, StandardOpenOption.READ);
        boolean ours = false;
        try {
            ours = begins(channel, beginning.getBytes(StandardCharsets.UTF_8)) || isBlank(channel);
        } finally {
            if (!ours) {
                close(channel);
            }
        }
        if (!ours) {
            throw new IOException(
                    file.getFileName()
                            + " does not begin as this program's does, and nothing is written into"
                            + " it; take it out of the folder, or put the right one back");
        }
        return channel;
    }

    private static FileChannel opened(Path file, StandardOpenOption how) throws IOException {
        return FileChannel.open(
                file,
                how,
                StandardOpenOption.READ,
                StandardOpenOption.WRITE,
                LinkOption.NOFOLLOW_LINKS);
    }

    /** Closes a file that is of no use any more, whatever comes of it. */
    static void close(FileChannel channel) {
        try {
            channel.close();
        } catch (IOException e) {
            // Nothing rests on it; what went wrong before is what is told.
        }
    }

    private static boolean isBlank(FileChannel channel) throws IOException {
        long size = channel.size();
        return size <= LONGEST_BLANK && isBlank(first(channel, (int) size));
    }

    /** Whether nothing but zeros is there. */
    static boolean isBlank(byte[] bytes) {
        return Arrays.equals(bytes, new byte[bytes.length]);
    }

    private static byte[] first(FileChannel channel, int count) throws IOException {
        ByteBuffer first = ByteBuffer.allocate(count);
        while (first.hasRemaining() && channel.read(first, first.position()) > 0) {
            // It reads on until it has all, or the file ends.
        }
        return Arrays.copyOf(first.array(), first.position());
    }

    private static boolean begins(FileChannel channel, byte[] beginning) throws IOException {
        byte[] there = first(channel, MARK + beginning.length);
        return begins(there, 0, beginning)
                || new String(there, StandardCharsets.UTF_8).startsWith("\ufeff")
                        && begins(there, MARK, beginning);
    }

    private static boolean begins(byte[] there, int from, byte[] beginning) {
        int length = Math.min(there.length - from, beginning.length);
        return Arrays.equals(there, from, from + length, beginning, 0, length);
    }
}
