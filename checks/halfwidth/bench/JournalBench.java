package halfwidth.bench;

import halfwidth.job.Change;
import halfwidth.job.Job;
import halfwidth.job.Place;
import halfwidth.page.Column;
import halfwidth.page.Page;
import halfwidth.page.Part;
import halfwidth.value.Kind;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;

/**
 * How opening and appending grow with a job: 20,000 readings are five years of a station. Visits
 * hold 200 readings each, entered in blocks of 40 as sweeps are; a job is opened in a JVM that has
 * opened none before by running this with the folder as argument.
 */
public final class JournalBench {
    private static final int[] READINGS = {20_000, 100_000, 500_000, 1_000_000};
    private static final int PER_VISIT = 200;
    private static final int BLOCK = 40;
    private static final Part.Readings TABLE =
            new Part.Readings(
                    1,
                    "sweep",
                    List.of(
                            new Column("azimuth", new Kind.Number(), "\u00b0"),
                            new Column("ddm", new Kind.Ddm(), "DDM")),
                    List.of());
    private static final Page PAGE =
            new Page("sweep/bench", Path.of("bench.md"), "Bench", List.of(TABLE));

    private JournalBench() {}

    /** Prints a table; with a folder as argument, how long that takes to open. */
    public static void main(String[] arguments) throws Exception {
        if (arguments.length == 1) {
            open(Path.of(arguments[0]));
            return;
        }
        Path folder = Files.createTempDirectory("journal");
        Job.create(folder, Map.of()).close();
        int have = 0;
        for (int readings : READINGS) {
            try (Job job = Job.open(folder)) {
                while (have < readings) {
                    job.enter(PAGE, "visit " + have / PER_VISIT, block(have));
                    have += BLOCK;
                }
                printAppends(job, readings);
            }
            openElsewhere(folder);
        }
    }

    /** Times of one thread's processor as well, since another process may keep it waiting. */
    private static void open(Path folder) {
        double before = processor();
        long start = System.nanoTime();
        try (Job job = Job.open(folder)) {
            double took = (System.nanoTime() - start) / 1e6;
            double busy = processor();
            System.out.printf(
                    "%9d lines: Job.open alone %5.0f ms, %4.0f ms of a processor; since the JVM's"
                            + " start %5d ms, %4.0f ms of a processor%n",
                    job.last(),
                    took,
                    busy - before,
                    System.currentTimeMillis()
                            - ManagementFactory.getRuntimeMXBean().getStartTime(),
                    busy);
        }
    }

    private static double processor() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() / 1e6;
    }

    private static List<Change> block(int first) {
        List<Change> changes = new ArrayList<>();
        for (int i = 0; i < BLOCK; i++) {
            int reading = (first + i) % PER_VISIT;
            boolean azimuth = reading % 2 == 0;
            Place place = Place.cell("sweep", 1 + reading / 2, azimuth ? "azimuth" : "ddm");
            changes.add(Change.to(place, azimuth ? reading / 10.0 + "" : "0." + (100 + reading)));
        }
        return changes;
    }

    private static void printAppends(Job job, int readings) {
        double[] millis = new double[300];
        for (int i = 0; i < millis.length; i++) {
            long start = System.nanoTime();
            job.enter(
                    PAGE,
                    "append",
                    List.of(Change.to(Place.cell("sweep", 1, "ddm"), "0." + i + 1)));
            millis[i] = (System.nanoTime() - start) / 1e6;
        }
        Arrays.sort(millis);
        System.out.printf(
                "%9d readings: one more appended in %.2f ms (median), %.2f ms (of 100 the slowest)%n",
                readings, millis[150], millis[296]);
    }

    private static void openElsewhere(Path folder) throws IOException, InterruptedException {
        new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        JournalBench.class.getName(),
                        folder.toString())
                .inheritIO()
                .start()
                .waitFor();
    }
}
