package halfwidth.laws;

import java.util.Optional;
import java.util.SplittableRandom;
import org.opentest4j.TestAbortedException;

/**
 * How often a law is tried.
 *
 * @param count the draws it must hold for
 * @param only the one seed to try instead, which repeats a failure
 */
record Tries(int count, Optional<Seed> only) {
    /** A law that turns down more than these for each that it takes says too little. */
    private static final int TURNED_DOWN = 5;

    interface Trial {
        void with(Draw draw);
    }

    /**
     * @throws AssertionError where the law does not hold, with the draws, the seed and the cause;
     *     or where it turned nearly all draws down
     * @throws TestAbortedException where it turned down the only seed asked for
     */
    void of(Trial law) {
        if (only.isPresent()) {
            attempt(law, only.get(), "the only try");
            return;
        }
        // New ones in each run: what no run has tried yet may fail in the next.
        SplittableRandom seeds = new SplittableRandom();
        int held = 0;
        for (int number = 0; held < count; number++) {
            if (number - held > TURNED_DOWN * count) {
                throw new AssertionError(
                        "Turned down %d of %d draws; draw from what the law is about"
                                .formatted(number - held, number));
            }
            try {
                attempt(
                        law,
                        Seed.of(seeds.nextLong(), number),
                        "try " + (held + 1) + " of " + count);
                held++;
            } catch (TestAbortedException turnedDown) {
                // Drawn again.
            }
        }
    }

    private static void attempt(Trial law, Seed seed, String which) {
        Draw draw = new Draw(seed);
        try {
            law.with(draw);
        } catch (TestAbortedException turnedDown) {
            throw turnedDown;
        } catch (Throwable cause) {
            throw new AssertionError(
                    "%s%n  in %s, with %s%n  again by -D%s=%s"
                            .formatted(cause, which, draw, Seed.PROPERTY, seed),
                    cause);
        }
    }
}
