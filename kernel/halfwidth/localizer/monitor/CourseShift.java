package halfwidth.localizer.monitor;

import halfwidth.localizer.Range;
import halfwidth.localizer.Require;
import halfwidth.localizer.signal.Ddm;

/**
 * A shift of the course line at which the monitor has to alarm, as a reading.
 *
 * @param metres the shift at the reference datum (m), above 0
 * @param displacementSensitivity DDM for each metre at the datum (DDM/m), above 0
 * @param mostDdm a DDM that the alarm must not exceed whatever the metres give (DDM), above 0
 */
public record CourseShift(double metres, double displacementSensitivity, double mostDdm) {
    /** Far beyond any sector: tells a slip of the unit. */
    private static final Range METRES = new Range(0, 200);

    private static final Range SENSITIVITIES = new Range(0, 0.1);

    /**
     * @throws IllegalArgumentException if the shift is not above 0 and at most 200 m, the
     *     sensitivity not above 0 and at most 0.1 DDM/m, or the greatest DDM not above 0 and at
     *     most 1
     */
    public CourseShift {
        Require.above("course shift", metres, 0, "m");
        Require.within("course shift", metres, METRES, "m");
        Require.above("displacement sensitivity", displacementSensitivity, 0, "DDM/m");
        Require.within("displacement sensitivity", displacementSensitivity, SENSITIVITIES, "DDM/m");
        Require.above("greatest DDM", mostDdm, 0, "");
        Require.within("greatest DDM", mostDdm, new Range(0, 1), "");
    }

    /**
     * Takes a limit that is stated in metres only.
     *
     * @param metres the shift at the reference datum (m)
     * @param displacementSensitivity DDM for each metre at the datum (DDM/m)
     * @return the shift
     * @throws IllegalArgumentException as the record does
     */
    public static CourseShift inMetres(double metres, double displacementSensitivity) {
        return new CourseShift(metres, displacementSensitivity, 1);
    }

    /**
     * Returns the shift as a DDM on the course line: metres × displacement sensitivity, or the
     * greatest DDM where that is smaller.
     *
     * @return the DDM to induce either way (DDM), positive
     */
    public double ddm() {
        return Math.min(metres * displacementSensitivity, mostDdm);
    }

    /**
     * Returns the shift as an indicator current.
     *
     * @return the current (µA), positive
     */
    public double microamps() {
        return Ddm.toMicroamps(ddm());
    }

    /**
     * Returns the shift in metres that {@link #ddm()} stands for.
     *
     * @return the shift (m), smaller than the limit in metres where the greatest DDM counts
     */
    public double metresInduced() {
        return ddm() / displacementSensitivity;
    }

    /**
     * Returns the readings of the course monitor at the two alarm points: normal ± {@link #ddm()}.
     *
     * @param normalReading the monitor's reading on the normal course (DDM)
     * @return the reading shifted towards 90 Hz, and that shifted towards 150 Hz (DDM)
     * @throws IllegalArgumentException if the reading is not -1 to 1
     */
    public Range readings(double normalReading) {
        Require.within("normal reading", normalReading, new Range(-1, 1), "");
        return new Range(normalReading - ddm(), normalReading + ddm());
    }
}
