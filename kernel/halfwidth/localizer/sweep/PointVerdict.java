package halfwidth.localizer.sweep;

/**
 * What the limit of its sector says of one reading.
 *
 * @param reading the reading
 * @param verdict met, not met or not judged
 * @param why the limit in words, or why there is nothing to judge
 */
public record PointVerdict(SweepReading reading, Verdict verdict, String why) {}
