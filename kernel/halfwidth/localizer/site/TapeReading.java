package halfwidth.localizer.site;

import halfwidth.localizer.Require;
import halfwidth.localizer.uncertainty.Estimate;

/**
 * The distance of a lost mark from a recovered one.
 *
 * @param from the recovered mark
 * @param distance the tape distance with its standard uncertainty (m), above 0
 */
public record TapeReading(Mark from, Estimate distance) {

    /**
     * @throws IllegalArgumentException if the distance is not above 0
     */
    public TapeReading {
        Require.above("tape distance", distance.value(), 0, "m");
    }
}
