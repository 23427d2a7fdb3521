package halfwidth.localizer.monitor;

import halfwidth.localizer.Range;
import halfwidth.localizer.Require;
import halfwidth.localizer.uncertainty.Estimate;

/**
 * An adapter or short line of known electrical length, put into one side's return for a moment.
 *
 * @param side the side it is put into
 * @param length ε, its electrical length (deg), above 0 and at most 120
 */
public record Adapter(ArraySide side, Estimate length) {

    /**
     * @throws IllegalArgumentException if the side is NEITHER, or the length is not above 0 and at
     *     most 120 deg
     */
    public Adapter {
        ArraySide.checked(side, "side of the adapter");
        Require.above("length of the adapter", length.value(), 0, "deg");
        Require.within("length of the adapter", length.value(), new Range(0, 120), "deg");
    }

    /**
     * Returns what the adapter adds to the excess of the pair.
     *
     * @return +ε in the 150 Hz side, −ε in the 90 Hz side (deg)
     */
    public double excess() {
        return side.direction() * length.value();
    }
}
