package halfwidth.localizer.pattern;

import halfwidth.localizer.Range;
import halfwidth.localizer.signal.Tone;

/**
 * The weakest guidance in a sector on one side of the course line.
 *
 * @param side which side, by the tone that should predominate there
 * @param sector between which angles off the course line's azimuth 0 (deg), both positive
 * @param leastDdm the least DDM there (DDM), positive where the side's own tone predominates and
 *     negative where guidance is reversed
 * @param azimuth where it is (deg), positive on the 150 Hz side
 */
public record SideClearance(Tone side, Range sector, double leastDdm, double azimuth) {}
