package halfwidth.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** What is left of the files in which workers say which statement they run. */
@Timeout(60)
class StepMarkerTest {
    private static final Duration HOUR = Duration.ofHours(1);

    @TempDir Path folder;

    private List<String> left() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    private Process holder() throws IOException {
        Process holder =
                new ProcessBuilder(
                                System.getProperty("java.home") + "/bin/java",
                                "-cp",
                                System.getProperty("java.class.path"),
                                Holder.class.getName(),
                                folder.toString())
                        .redirectErrorStream(true)
                        .start();
        assertEquals('r', holder.getInputStream().read(), "the program has its file");
        return holder;
    }

    /** A program that has such a file. */
    static final class Holder {
        public static void main(String[] arguments) throws Exception {
            StepMarker marker = StepMarker.in(Path.of(arguments[0]));
            System.out.print("r");
            System.out.flush();
            Thread.sleep(60_000);
            marker.close();
        }
    }

    @Test
    void thatOfAKilledProgramGoesAndThatOfALivingOneStays() throws Exception {
        Process lives = holder();
        List<String> living = left();
        Process killed = holder();
        killed.destroyForcibly().waitFor(10, TimeUnit.SECONDS);
        assertEquals(2, left().size());
        StepMarker.sweep(folder, Instant.now().plus(HOUR));
        assertEquals(living, left());
        lives.destroyForcibly().waitFor(10, TimeUnit.SECONDS);
        StepMarker.sweep(folder, Instant.now().plus(HOUR));
        assertEquals(List.of(), left());
    }

    @Test
    void youngOnesAndFilesOfOthersStay() throws IOException {
        Files.writeString(folder.resolve("halfwidth-1.step"), "x");
        Path other = Files.writeString(folder.resolve("other.step"), "x");
        Files.setLastModifiedTime(other, FileTime.from(Instant.now().minus(HOUR)));
        StepMarker.sweep(folder, Instant.now());
        assertEquals(List.of("halfwidth-1.step", "other.step"), left());
    }

    @Test
    void nothingBehindALinkGoes() throws IOException {
        Path kept = Files.writeString(folder.resolve("kept"), "x");
        Files.createSymbolicLink(folder.resolve("halfwidth-1.step"), kept);
        StepMarker.sweep(folder, Instant.now().plus(HOUR));
        assertTrue(Files.exists(kept));
    }

    @Test
    void itGoesWithItsWorker() throws IOException {
        StepMarker marker = StepMarker.in(folder);
        assertEquals(-1, marker.statement());
        marker.close();
        assertEquals(List.of(), left());
    }
}
