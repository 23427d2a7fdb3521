package halfwidth.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What stays in the folder for scratch files. */
class LeftoversTest {
    private static final Instant NOW = Instant.parse("2026-06-12T10:00:00Z");

    @TempDir Path folder;

    private void file(String name, int days) throws IOException {
        Path file = folder.resolve(name);
        Files.createDirectories(file.getParent());
        Files.writeString(file, "x");
        FileTime time = FileTime.from(NOW.minus(Duration.ofDays(days)));
        for (Path at = file; !at.equals(folder); at = at.getParent()) {
            Files.setLastModifiedTime(at, time);
        }
    }

    @Test
    void oldOnesOfOursGoAndNothingElse() throws IOException {
        file("halfwidth1.step", 15);
        file("halfwidth2.step", 1);
        file("halfwidth-demo-1/records/a.html", 15);
        file("halfwidth-demo-2/journal.csv", 1);
        file("other.step", 400);
        file("demo/halfwidth3.step", 400);
        Leftovers.sweep(folder, NOW);
        try (Stream<Path> files = Files.list(folder)) {
            assertEquals(
                    List.of("demo", "halfwidth-demo-2", "halfwidth2.step", "other.step"),
                    files.map(file -> file.getFileName().toString()).sorted().toList());
        }
    }

    @Test
    void nothingBehindALinkGoes() throws IOException {
        file("kept/a.csv", 15);
        file("halfwidth-demo-1/b.csv", 15);
        Path demo = folder.resolve("halfwidth-demo-1");
        Files.createSymbolicLink(demo.resolve("link"), folder.resolve("kept"));
        Leftovers.remove(demo);
        assertTrue(Files.notExists(demo));
        assertTrue(Files.exists(folder.resolve("kept/a.csv")));
    }
}
