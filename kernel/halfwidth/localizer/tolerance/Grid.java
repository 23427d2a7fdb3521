package halfwidth.localizer.tolerance;

/** The azimuths of the study: evenly spaced, as many on either side of 0. */
final class Grid {
    static final double LIMIT = 35;
    static final double STEP = 0.1;

    /** Points on each side besides the one on azimuth 0. */
    static final int SIDE = (int) Math.round(LIMIT / STEP);

    static final int POINTS = 2 * SIDE + 1;

    private Grid() {}

    /** Azimuth of a place among the points, which may lie between two (deg). */
    static double azimuth(double place) {
        return (place - SIDE) * STEP;
    }

    /** The place of an angle on the side of positive azimuths. */
    static int place(double angle) {
        return SIDE + (int) Math.round(angle / STEP);
    }
}
