package halfwidth.job;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/**
 * Puts the names in a folder on disk. Where the power is lost, a file that was made or renamed may
 * else be gone with all that is in it, though the file itself was forced.
 */
final class FolderSync {
    private FolderSync() {}

    /**
     * Forces the names in a folder.
     *
     * @throws IOException if that fails; not where the system has no such thing
     */
    static void of(Path folder) throws IOException {
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (AccessDeniedException noFolderIsOpened) {
            // As on Windows, where a file system keeps its names by itself.
        } catch (IOException e) {
            // Some file systems that are shared with another machine force no folder.
            if (!"Invalid argument".equals(e.getMessage())) {
                throw e;
            }
        }
    }
}
