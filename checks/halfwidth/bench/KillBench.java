package halfwidth.bench;

import halfwidth.job.Job;
import halfwidth.job.KilledWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;

/** Kills a writer at random moments, a thousand times or as often as the first argument says. */
public final class KillBench {
    private KillBench() {}

    /** Prints how much was acknowledged and kept; ends with an error if anything was lost. */
    public static void main(String[] arguments) throws Exception {
        int kills = arguments.length == 0 ? 1000 : Integer.parseInt(arguments[0]);
        Path folder = Files.createTempDirectory("killed");
        Job.create(folder, Map.of()).close();
        KilledWriter killed = new KilledWriter(folder, System.nanoTime());
        long start = System.nanoTime();
        long blocks = 0;
        for (int i = 1; i <= kills; i++) {
            blocks = killed.kill();
            if (i % 100 == 0 || i == kills) {
                System.out.printf(
                        "%d kills, %d blocks of 5 values, all acknowledged ones there, %d torn ends"
                                + " set aside, %.0f s%n",
                        i, blocks, killed.torn(), (System.nanoTime() - start) / 1e9);
            }
        }
    }
}
