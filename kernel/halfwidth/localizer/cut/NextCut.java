package halfwidth.localizer.cut;

import halfwidth.localizer.uncertainty.Estimate;
import java.util.Locale;

/**
 * The next cut of a line, or why there is none.
 *
 * @param verdict whether to cut, and if not, why
 * @param direction (1): +1 when the line whose cut counts as positive is to be cut, -1 when the
 *     other is, 0 when none is
 * @param length what to cut now (m), a whole number of the tool's steps, 0 when none is cut
 * @param remaining all that is left to cut on the line that {@code direction} names (m), with its
 *     standard uncertainty
 */
public record NextCut(CutVerdict verdict, int direction, double length, Estimate remaining) {

    /**
     * Returns the answer to a line that was cut since it was last read: nothing more is cut before
     * it is read again.
     *
     * @param remaining all that is left to cut by the readings so far (m), of either sign
     * @return no cut, {@link CutVerdict#READ_FIRST}
     */
    public static NextCut readFirst(Estimate remaining) {
        Estimate left = new Estimate(Math.abs(remaining.value()), remaining.standardUncertainty());
        return new NextCut(CutVerdict.READ_FIRST, 0, 0, left);
    }

    /**
     * Tells whether the crew is done.
     *
     * @return true when neither a cut nor a reading is to be made
     */
    public boolean finished() {
        return verdict == CutVerdict.AT_TARGET || verdict == CutVerdict.BELOW_SMALLEST_CUT;
    }

    /**
     * Says what to do in words.
     *
     * @param line what the line to cut is called, as in "SBO feed"
     * @return one or two sentences, lengths in millimetres
     */
    public String inWords(String line) {
        String cut =
                String.format(
                        Locale.ROOT,
                        "Cut %.1f mm off the %s, of %.1f mm (standard uncertainty %.1f mm) still to"
                                + " go.",
                        1000 * length,
                        line,
                        1000 * remaining.value(),
                        1000 * remaining.standardUncertainty());
        return switch (verdict) {
            case CUT -> cut;
            case OVERSHOT -> "Too much was cut, so the other line is next. " + cut;
            case READ_FIRST -> "Read again first: it was cut since the last reading.";
            case AT_TARGET -> "Stop: the phase is within the target.";
            case BELOW_SMALLEST_CUT ->
                    String.format(
                            Locale.ROOT,
                            "Stop: the %.1f mm left are less than the tool can cut.",
                            1000 * remaining.value());
        };
    }
}
