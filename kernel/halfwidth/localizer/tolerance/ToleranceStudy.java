package halfwidth.localizer.tolerance;

import halfwidth.localizer.array.ArrayModel;
import halfwidth.localizer.pattern.ArrayPattern;
import halfwidth.localizer.pattern.PredictedCourse;
import halfwidth.localizer.uncertainty.Draws;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.CancellationException;
import java.util.stream.IntStream;

/** Draws random errors of all feeds of an array many times and tells what becomes of it. */
public final class ToleranceStudy {
    /** So few that an interruption is soon seen, so many that a block's memory costs nothing. */
    private static final int BLOCK = 64;

    private final ArrayModel array;
    private final Tolerances tolerances;
    private final List<Steering> steerings;

    private ToleranceStudy(ArrayModel array, Tolerances tolerances) {
        this.array = array;
        this.tolerances = tolerances;
        this.steerings =
                array.carriers().stream().map(c -> new Steering(array.positions(), c)).toList();
    }

    /**
     * Runs a study in the far field, every 0.1° out to ±35°, on all cores.
     *
     * <p>The same seed gives the same result on any number of cores: each draw has its own random
     * numbers, and the results are counted, not added. Half-width points are found between the
     * azimuths by a cubic through four of them; clearances are those at the azimuths.
     *
     * @param array the array without errors
     * @param tolerances how its feeds scatter
     * @param draws how many draws and from which seed
     * @return the distribution of each figure
     * @throws IllegalArgumentException if the array has no course sector without errors
     * @throws CancellationException if the thread is interrupted, which it stays
     */
    public static ToleranceResult run(ArrayModel array, Tolerances tolerances, Draws draws) {
        PredictedCourse nominal = ArrayPattern.farField(array).course();
        return new ToleranceStudy(array, tolerances).tally(draws, nominal).result(nominal);
    }

    private Tally tally(Draws draws, PredictedCourse nominal) {
        Thread caller = Thread.currentThread();
        int blocks = (draws.number() + BLOCK - 1) / BLOCK;
        return IntStream.range(0, blocks)
                .parallel()
                .collect(
                        () -> new Tally(nominal),
                        (tally, block) -> {
                            if (caller.isInterrupted()) {
                                throw new CancellationException("tolerance study interrupted");
                            }
                            drawBlock(tally, block, draws);
                        },
                        Tally::add);
    }

    private void drawBlock(Tally tally, int block, Draws draws) {
        ArrayDraw draw = new ArrayDraw(array, steerings, tolerances);
        int end = Math.min(draws.number(), (block + 1) * BLOCK);
        for (int i = block * BLOCK; i < end; i++) {
            tally.add(draw.draw(random(draws.seed(), i)));
        }
    }

    /** A generator of its own for each draw: the first one only scatters the seeds. */
    private static SplittableRandom random(long seed, int draw) {
        long own = new SplittableRandom(seed).nextLong() + draw;
        return new SplittableRandom(new SplittableRandom(own).nextLong());
    }
}
