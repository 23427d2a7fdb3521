package halfwidth.localizer.monitor;

import halfwidth.localizer.Range;
import halfwidth.localizer.Require;
import java.util.OptionalDouble;

/**
 * One line of the cutting record of a pair: what has been cut so far, and the reading then.
 *
 * @param cut150 all that has been cut from the 150 Hz side's return so far (m), at least 0
 * @param cut90 all that has been cut from the 90 Hz side's return so far (m), at least 0
 * @param reading the pair's DDM then (DDM), positive where 150 Hz predominates; empty if it was not
 *     read, which leaves what was cut as it is
 */
public record PairCutRow(double cut150, double cut90, OptionalDouble reading) {
    /** Several turns of any line: a larger number is a slip of the unit (m). */
    private static final Range CUTS = new Range(0, 10);

    /**
     * @throws IllegalArgumentException if a cut is not 0 to 10 m, or the reading not -1 to 1
     */
    public PairCutRow {
        Require.within("cut of the 150 Hz side", cut150, CUTS, "m");
        Require.within("cut of the 90 Hz side", cut90, CUTS, "m");
        reading.ifPresent(read -> Require.within("reading", read, AdapterTrial.READINGS, ""));
    }

    /**
     * Takes a row that was read.
     *
     * @param cut150 all that has been cut from the 150 Hz side's return so far (m), at least 0
     * @param cut90 all that has been cut from the 90 Hz side's return so far (m), at least 0
     * @param reading the pair's DDM then (DDM)
     * @throws IllegalArgumentException as the record does, or if the reading is NaN
     */
    public PairCutRow(double cut150, double cut90, double reading) {
        this(cut150, cut90, OptionalDouble.of(reading));
    }

    /**
     * Takes a row of a table, in which NaN stands for a reading left blank.
     *
     * @param cut150 all that has been cut from the 150 Hz side's return so far (m), at least 0
     * @param cut90 all that has been cut from the 90 Hz side's return so far (m), at least 0
     * @param reading the pair's DDM then (DDM), NaN if it was not read
     * @return the row
     * @throws IllegalArgumentException as the record does
     */
    public static PairCutRow after(double cut150, double cut90, double reading) {
        return new PairCutRow(
                cut150,
                cut90,
                Double.isNaN(reading) ? OptionalDouble.empty() : OptionalDouble.of(reading));
    }

    /**
     * Takes a row of a record in which only one side is cut.
     *
     * @param side the side that was cut
     * @param totalCut all that has been cut from it so far (m)
     * @param reading the pair's DDM then (DDM)
     * @return the row, with nothing cut from the other side
     * @throws IllegalArgumentException if the side is NEITHER, or as the record does
     */
    public static PairCutRow onSide(ArraySide side, double totalCut, double reading) {
        return ArraySide.checked(side, "side that was cut") == ArraySide.ON_150
                ? new PairCutRow(totalCut, 0, reading)
                : new PairCutRow(0, totalCut, reading);
    }

    /** Cut that brings the excess down (m): that of the 150 Hz less that of the 90 Hz side. */
    double netCut() {
        return cut150 - cut90;
    }
}
