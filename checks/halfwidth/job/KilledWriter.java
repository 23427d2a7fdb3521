package halfwidth.job;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/** Kills a {@link StreamingWriter} at a random moment, and looks at what the job holds then. */
public final class KilledWriter {
    private static final int MOST_BLOCKS = 40;
    private static final int MOST_NANOS = 3_000_000;

    private static final String UNACKNOWLEDGED = "torn off while it was written, before it was";

    private final Path folder;
    private final Random random;
    private int torn;

    /** Kills writers in a job folder. */
    public KilledWriter(Path folder, long seed) {
        this.folder = folder;
        this.random = new Random(seed);
    }

    /** How many of the kills left a torn end. */
    public int torn() {
        return torn;
    }

    /**
     * Starts a writer, kills it, opens the job.
     *
     * @return how many blocks the job holds
     * @throws AssertionError if an acknowledged block is missing, or half a block is there
     */
    public long kill() throws IOException, InterruptedException {
        Process writer = start();
        long acknowledged = 0;
        try (BufferedReader lines = writer.inputReader()) {
            int wanted = 1 + random.nextInt(MOST_BLOCKS);
            String line = lines.readLine();
            while (line != null) {
                acknowledged = Long.parseLong(line);
                if (--wanted == 0) {
                    // From a block to within the next ones, at any instant of them.
                    long until = System.nanoTime() + random.nextInt(MOST_NANOS);
                    while (System.nanoTime() < until) {
                        Thread.onSpinWait();
                    }
                    writer.toHandle().destroyForcibly(); // unlike the process, leaves its pipe open
                }
                line = lines.readLine(); // what was acknowledged before the kill is in the pipe
            }
        }
        writer.waitFor();
        return blocks(acknowledged);
    }

    private Process start() throws IOException {
        return new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xshare:auto",
                        "-XX:TieredStopAtLevel=1",
                        "-XX:+UseSerialGC",
                        "-XX:-UsePerfData",
                        "-cp",
                        System.getProperty("java.class.path"),
                        "halfwidth.job.StreamingWriter",
                        folder.toString())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
    }

    private long blocks(long acknowledged) {
        if (acknowledged == 0) {
            throw new AssertionError("the writer acknowledged nothing");
        }
        try (Job job = Job.open(folder)) {
            long ends = job.warnings().stream().filter(w -> w.contains(UNACKNOWLEDGED)).count();
            if (ends < job.warnings().size()) {
                throw new AssertionError("a false alarm: " + job.warnings());
            }
            torn += (int) ends;
            List<String> cells =
                    job.filled(StreamingWriter.PAGE, "").filled().readings().get("cuts").stream()
                            .map(row -> row.get(0).map(entry -> entry.typed()))
                            .flatMap(Optional::stream)
                            .toList();
            if (cells.size() != StreamingWriter.ROWS || cells.stream().distinct().count() != 1) {
                throw new AssertionError("half a block: " + cells);
            }
            long blocks = Long.parseLong(cells.get(0));
            if (blocks < acknowledged || job.last() != blocks * StreamingWriter.ROWS) {
                throw new AssertionError(
                        acknowledged + " acknowledged, " + blocks + " there of " + job.last());
            }
            return blocks;
        }
    }
}
