package halfwidth.localizer.cut;

import halfwidth.localizer.uncertainty.Estimate;
import java.util.Locale;

/** Refusals of a record of cuts that cannot be true, before anything is fitted to it. */
public final class CutRecord {
    /** A line is never this many times faster or slower than its data sheet says. */
    private static final double FACTOR = 2;

    /**
     * Standard uncertainties of slack. Rounding alone moves a difference of two readings by 2.45 of
     * them at most, but a receiver is unsteady as well, and after a cut of a step or two that is
     * all there is to see: three would refuse a true record now and then. Slips of a sign, a line
     * or a unit are far beyond five on any cut worth the name.
     */
    private static final double SURE = 5;

    /** The inch in metres, exact by definition. */
    private static final double INCH = 0.0254;

    private static final double MILLIMETRE = 1000;

    private CutRecord() {}

    /**
     * Refuses a total that shrinks from one row to the next.
     *
     * @param line what the line is called
     * @param before all that was cut from it at the row before (m)
     * @param now all that was cut from it at this row (m)
     * @param row the number of this row (1), from 1
     * @throws IllegalArgumentException if {@code now} is below {@code before}
     */
    public static void checkGrows(String line, double before, double now, int row) {
        if (now < before) {
            throw new IllegalArgumentException(
                    String.format(
                            Locale.ROOT,
                            "row %d: total cut of the %s must not shrink, but goes from %.1f mm"
                                    + " (%.3f in) to %.1f mm (%.3f in); enter all that was cut so"
                                    + " far, not the last cut",
                            row,
                            line,
                            MILLIMETRE * before,
                            before / INCH,
                            MILLIMETRE * now,
                            now / INCH));
        }
    }

    /**
     * Refuses a phase that moved the wrong way, less than half or more than twice as far as the
     * data sheet says, by more than five standard uncertainties.
     *
     * @param found the phase taken away by each metre cut (deg/m)
     * @param dataSheet β as the data sheet has it (deg/m), above 0
     * @param reading what was read, for the message
     * @throws IllegalArgumentException if no line of this type moves the phase like that
     */
    public static void checkMovement(Estimate found, Estimate dataSheet, String reading) {
        double slack = SURE * found.standardUncertainty();
        String moved =
                String.format(
                        Locale.ROOT,
                        "%s changed by %.4g deg for each metre cut (%.3g deg for each inch), where"
                                + " the data sheet says %.4g (%.3g)",
                        reading,
                        found.value(),
                        found.value() * INCH,
                        dataSheet.value(),
                        dataSheet.value() * INCH);
        if (found.value() + slack < 0) {
            throw new IllegalArgumentException(
                    moved + ": it moved the wrong way; wrong line cut, or a sign mistyped?");
        }
        if (found.value() + slack < dataSheet.value() / FACTOR) {
            throw new IllegalArgumentException(
                    moved + ": it moved too little; was another line cut, or a unit mistaken?");
        }
        if (found.value() - slack > dataSheet.value() * FACTOR) {
            throw new IllegalArgumentException(
                    moved + ": it moved too much; is a unit or a reading mistaken?");
        }
    }
}
