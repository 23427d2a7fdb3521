package halfwidth.bench;

import halfwidth.job.Job;
import halfwidth.job.KilledWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;

/**
 * Kills a writer at random moments, a thousand times or as often as the first argument says; after
 * every 50 in another job, since a long one is mostly read again.
 */
public final class KillBench {
    private static final int PER_JOB = 50;

    private KillBench() {}

    /** Prints how much was acknowledged and kept; ends with an error if anything was lost. */
    public static void main(String[] arguments) throws Exception {
        int kills = arguments.length == 0 ? 1000 : Integer.parseInt(arguments[0]);
        long start = System.nanoTime();
        long blocks = 0;
        int torn = 0;
        for (int done = 0; done < kills; done += PER_JOB) {
            Path folder = Files.createTempDirectory("killed");
            Job.create(folder, Map.of()).close();
            KilledWriter killed = new KilledWriter(folder, System.nanoTime());
            long kept = 0;
            int of = Math.min(PER_JOB, kills - done);
            for (int i = 0; i < of; i++) {
                kept = killed.kill();
            }
            blocks += kept;
            torn += killed.torn();
            System.out.printf(
                    "%d kills, %d blocks of 5 values, all acknowledged ones there, %d torn ends set"
                            + " aside, %.0f s%n",
                    done + of, blocks, torn, (System.nanoTime() - start) / 1e9);
        }
    }
}
