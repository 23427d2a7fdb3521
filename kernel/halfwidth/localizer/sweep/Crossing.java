package halfwidth.localizer.sweep;

/**
 * Where the readings pass a value, straight from one reading to the next.
 *
 * @param azimuth where (deg)
 * @param acrossMissing whether a missing reading lies between the two that it is taken from, so
 *     that the curve in between was not seen
 */
public record Crossing(double azimuth, boolean acrossMissing) {}
