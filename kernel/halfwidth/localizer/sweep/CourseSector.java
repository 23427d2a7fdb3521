package halfwidth.localizer.sweep;

import halfwidth.localizer.Require;
import halfwidth.localizer.signal.Ddm;
import halfwidth.localizer.signal.Tone;
import halfwidth.localizer.uncertainty.Estimate;
import halfwidth.localizer.uncertainty.LineFit;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The course of one sweep.
 *
 * <p>Centre and slope come from a straight line through all readings within the sector; the
 * half-width points come also from the readings next to them, which alone tell the two sides apart.
 *
 * @param fit the line of DDM over azimuth (DDM/deg), with standard errors from the scatter
 * @param crossing where the readings pass 0 nearest to the fitted centre
 * @param edge90 where they pass 0.155 in the 90, empty if they do not
 * @param edge150 where they pass 0.155 in the 150, empty if they do not
 */
public record CourseSector(
        LineFit fit, Crossing crossing, Optional<Crossing> edge90, Optional<Crossing> edge150) {

    /**
     * Finds the course of a sweep.
     *
     * @param sweep the sweep
     * @param halfWidth the nominal half width (deg), above 0: readings up to it on both sides make
     *     the line. Chosen by azimuth and not by reading, which would bend the line
     * @return the course
     * @throws IllegalArgumentException if fewer than 3 readings lie within the sector, the readings
     *     do not pass 0, or DDM falls from the 90 Hz side to the 150 Hz side
     */
    public static CourseSector of(Sweep sweep, double halfWidth) {
        List<SweepReading> inside = inside(sweep, halfWidth);
        LineFit fit =
                LineFit.of(
                        inside.stream().mapToDouble(SweepReading::azimuth).toArray(),
                        inside.stream().mapToDouble(SweepReading::value).toArray());
        if (!(fit.slope().value() > 0)) {
            throw new IllegalArgumentException(
                    "150 Hz must grow with azimuth, but falls: tone sides or azimuths are turned"
                            + " over");
        }
        CurveWalk walk = new CurveWalk(sweep, fit.reaches(0).value());
        Crossing crossing =
                walk.crossingNearestCentre()
                        .orElseThrow(
                                () ->
                                        new IllegalArgumentException(
                                                "readings must pass 0 to have a course line"));
        return new CourseSector(
                fit,
                crossing,
                walk.outwardCrossing(Tone.HZ_90, Ddm.COURSE_SECTOR_EDGE),
                walk.outwardCrossing(Tone.HZ_150, Ddm.COURSE_SECTOR_EDGE));
    }

    /**
     * Tells why a sweep has no course line.
     *
     * @param sweep the sweep
     * @param halfWidth the nominal half width (deg), above 0
     * @return the reason in words, "" if {@link #of} finds a course
     * @throws IllegalArgumentException if the half width is not above 0
     */
    public static String whyNone(Sweep sweep, double halfWidth) {
        if (inside(sweep, halfWidth).size() < 3) {
            return "fewer than 3 readings in the course sector";
        }
        try {
            of(sweep, halfWidth);
            return "";
        } catch (IllegalArgumentException none) {
            return none.getMessage();
        }
    }

    private static List<SweepReading> inside(Sweep sweep, double halfWidth) {
        Require.above("half width", halfWidth, 0, "deg");
        return sweep.present().stream()
                .filter(reading -> Math.abs(reading.azimuth()) <= halfWidth)
                .toList();
    }

    /**
     * Returns the azimuth of the course line, by regression.
     *
     * @return the centre with its standard error (deg), positive towards the 150 Hz side
     */
    public Estimate centre() {
        return fit.reaches(0);
    }

    /**
     * Returns the angular sensitivity, by regression.
     *
     * @return the slope with its standard error (DDM/deg)
     */
    public Estimate slope() {
        return fit.slope();
    }

    /**
     * Returns the course width, by regression: 2 · 0.155 / slope.
     *
     * @return the width with its standard error, to first order (deg)
     */
    public Estimate widthByRegression() {
        double width = 2 * Ddm.COURSE_SECTOR_EDGE / slope().value();
        return new Estimate(width, width * slope().standardUncertainty() / slope().value());
    }

    /**
     * Returns the course width between the two half-width points that were read.
     *
     * @return the width (deg), empty if a point was not reached
     */
    public OptionalDouble widthByInterpolation() {
        if (edge90.isEmpty() || edge150.isEmpty()) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(edge150.get().azimuth() - edge90.get().azimuth());
    }

    /**
     * Returns the angle from the course line to a half-width point that was read.
     *
     * @param side which side
     * @return the angle (deg), positive on either side; empty if the point was not reached
     */
    public OptionalDouble halfWidth(Tone side) {
        Optional<Crossing> edge = side == Tone.HZ_90 ? edge90 : edge150;
        return edge.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(side.sign() * (edge.get().azimuth() - crossing.azimuth()));
    }

    /**
     * Returns the part of the course width on one side of the course line, the symmetry by the
     * definition of FAA Order 8200.1 (from memory).
     *
     * @param side which side
     * @return the part (%), 50 for a symmetrical course; the two sides make 100; empty if a
     *     half-width point was not reached
     */
    public OptionalDouble symmetry(Tone side) {
        OptionalDouble width = widthByInterpolation();
        return width.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(100 * halfWidth(side).getAsDouble() / width.getAsDouble());
    }
}
