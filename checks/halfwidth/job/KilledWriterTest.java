package halfwidth.job;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Duration;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Kills a writer again and again in one job, for as long as the suite can spare; the benchmark
 * {@code halfwidth.bench.KillBench} does it a thousand times.
 */
@Tag("long")
class KilledWriterTest {
    private static final Duration SPARED = Duration.ofSeconds(30);

    @TempDir Path folder;

    @Test
    void keepsEveryAcknowledgedValueAndNoHalfBlock() throws Exception {
        Job.create(folder, Map.of()).close();
        KilledWriter killed = new KilledWriter(folder, 6);
        long end = System.nanoTime() + SPARED.toNanos();
        int kills = 0;
        long blocks = 0;
        while (kills < 3 || System.nanoTime() < end) {
            long now = killed.kill();
            assertTrue(now > blocks, "what an earlier writer had entered is still there");
            blocks = now;
            kills++;
        }
    }
}
