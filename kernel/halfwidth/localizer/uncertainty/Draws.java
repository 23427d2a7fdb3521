package halfwidth.localizer.uncertainty;

import halfwidth.localizer.Range;
import halfwidth.localizer.Require;

/**
 * How many times to draw, and from which start, so that the same page gives the same figures.
 *
 * @param number how many draws (1), 1000 to 10 million
 * @param seed where the random numbers start
 */
public record Draws(int number, long seed) {
    private static final Range NUMBERS = new Range(1_000, 10_000_000);

    /**
     * @throws IllegalArgumentException if {@code number} is outside its range
     */
    public Draws {
        Require.within("number of draws", number, NUMBERS, "");
    }
}
