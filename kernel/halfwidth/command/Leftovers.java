package halfwidth.command;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** What programs that were killed left in the folder for scratch files. */
final class Leftovers {
    /** Longer than any program of this kind runs. */
    private static final Duration OLD = Duration.ofDays(14);

    private static final String NAMES = "halfwidth{*.step,-demo-*}";

    private Leftovers() {}

    /** Removes what is old; what cannot be removed stays. */
    static void sweep(Path folder, Instant now) {
        try (DirectoryStream<Path> files = Files.newDirectoryStream(folder, NAMES)) {
            for (Path file : files) {
                if (Files.getLastModifiedTime(file, LinkOption.NOFOLLOW_LINKS)
                        .toInstant()
                        .isBefore(now.minus(OLD))) {
                    remove(file);
                }
            }
        } catch (IOException e) {
            // Another program was faster, or it belongs to somebody else.
        }
    }

    /** Removes a file, or a folder with all in it; a link and not what it leads to. */
    static void remove(Path file) throws IOException {
        List<Path> all;
        try (Stream<Path> within = Files.walk(file)) {
            all = within.sorted(Comparator.reverseOrder()).toList();
        }
        for (Path one : all) {
            Files.delete(one);
        }
    }
}
