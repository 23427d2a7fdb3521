package halfwidth.localizer.signal;

/** Difference in depth of modulation as a signed ratio, positive where 150 Hz predominates. */
public final class Ddm {
    /**
     * DDM of a course sector edge, and of each half-width point (DDM): ICAO Annex 10 Vol I, 3.1.1.
     * The full-scale indicator current of 150 µA belongs to it by convention.
     */
    public static final double COURSE_SECTOR_EDGE = 0.155;

    private static final double FULL_SCALE_MICROAMPS = 150;

    private Ddm() {}

    /**
     * Converts a DDM to the indicator current it gives: 150 µA for 0.155.
     *
     * @param ddm the DDM (DDM)
     * @return the current (µA), of the same sign
     */
    public static double toMicroamps(double ddm) {
        return ddm * FULL_SCALE_MICROAMPS / COURSE_SECTOR_EDGE;
    }

    /**
     * Converts an indicator current to the DDM that gives it: 0.155 for 150 µA.
     *
     * @param microamps the current (µA)
     * @return the DDM (DDM), of the same sign
     */
    public static double fromMicroamps(double microamps) {
        return microamps * COURSE_SECTOR_EDGE / FULL_SCALE_MICROAMPS;
    }
}
