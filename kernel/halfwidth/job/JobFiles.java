package halfwidth.job;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Set;

/** Tells the files of a job from others, so that nothing else is written over them. */
public final class JobFiles {
    private static final Set<String> FOLDERS = Set.of("pages", "records");

    private JobFiles() {}

    /**
     * Whether a file, be it there already or not, is one that a job keeps: its heading, its
     * journal, a record or a page. A link counts as what it leads to.
     */
    public static boolean isOne(Path file) throws IOException {
        Path real = real(file);
        for (Path at = real; at != null && at.getParent() != null; at = at.getParent()) {
            if (Files.exists(at.resolveSibling("job.csv")) && isKept(at, real)) {
                return true;
            }
        }
        return false;
    }

    /** Whether something right in a job's folder is kept: all of a folder, or a file itself. */
    private static boolean isKept(Path at, Path file) {
        String name = at.getFileName().toString().toLowerCase(Locale.ROOT);
        return at.equals(file)
                ? name.startsWith("job.") || name.startsWith("journal")
                : FOLDERS.contains(name);
    }

    private static Path real(Path file) throws IOException {
        if (Files.exists(file)) {
            return file.toRealPath();
        }
        Path folder = file.toAbsolutePath().normalize().getParent();
        return folder != null && Files.exists(folder)
                ? folder.toRealPath().resolve(file.getFileName())
                : file.toAbsolutePath().normalize();
    }
}
