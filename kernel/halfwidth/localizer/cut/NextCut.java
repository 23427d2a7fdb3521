package halfwidth.localizer.cut;

import halfwidth.localizer.uncertainty.Estimate;

/**
 * The next cut of a line, or why there is none.
 *
 * @param verdict whether to cut, and if not, why
 * @param direction +1 when the line whose cut counts as positive is to be cut, -1 when the other
 *     is, 0 when none is
 * @param length what to cut now (m), a whole number of the tool's steps, 0 when none is cut
 * @param remaining all that is left to cut on the line that {@code direction} names (m), with its
 *     standard uncertainty
 */
public record NextCut(Verdict verdict, int direction, double length, Estimate remaining) {

    /**
     * Tells whether the crew is done.
     *
     * @return true when no cut is to be made
     */
    public boolean finished() {
        return verdict == Verdict.AT_TARGET || verdict == Verdict.BELOW_SMALLEST_CUT;
    }
}
