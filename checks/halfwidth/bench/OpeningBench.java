package halfwidth.bench;

import halfwidth.page.Filled;
import halfwidth.page.Page;
import halfwidth.page.Pages;
import halfwidth.run.Budget;
import halfwidth.run.OpenPage;
import halfwidth.run.Script;
import halfwidth.run.Values;
import halfwidth.run.Workshop;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;

/**
 * How long a page that was compiled before takes to open and run in a fresh worker that has had
 * time to get ready. Prints medians of wall time.
 */
public final class OpeningBench {
    private static final int RUNS = 15;

    private OpeningBench() {}

    /** Measures the pages named, by default three of different length. */
    public static void main(String[] arguments) throws Exception {
        String[] names =
                arguments.length > 0
                        ? arguments
                        : new String[] {
                            "site/lost-mark", "transmit/feed-trim", "record/facility-reference"
                        };
        for (String name : names) {
            Page page = new Pages(Path.of("notebooks")).find(name);
            opened(page); // compiles it
            double[] times = new double[RUNS];
            for (int i = 0; i < RUNS; i++) {
                times[i] = opened(page);
            }
            Arrays.sort(times);
            System.out.printf(
                    Locale.ROOT,
                    "%8.1f ms (least %.1f, most %.1f)  %s opened and run%n",
                    times[RUNS / 2],
                    times[0],
                    times[RUNS - 1],
                    name);
        }
    }

    private static double opened(Page page) throws InterruptedException {
        Values values = Values.of(Filled.example(page));
        try (Workshop workshop = Workshop.withoutSpare(Budget.USUAL);
                OpenPage open = workshop.open(Script.of(page))) {
            Thread.sleep(1500); // less than a spare waits before it warms up
            long start = System.nanoTime();
            open.run(values);
            return (System.nanoTime() - start) / 1e6;
        }
    }
}
