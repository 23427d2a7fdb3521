package halfwidth.localizer.sweep;

import halfwidth.localizer.uncertainty.Estimate;

/**
 * How the course changed from one sweep to another.
 *
 * @param shift of the course line (deg), positive towards the 150 Hz side
 * @param shiftDdm what that makes a receiver on the earlier course line read (DDM): of the opposite
 *     sign
 * @param widthPercent change of the width by regression in percent of the earlier one (%)
 */
public record CourseChange(Estimate shift, Estimate shiftDdm, Estimate widthPercent) {

    /**
     * Compares two courses, to first order and as independent.
     *
     * @param before the earlier course, or the predicted one
     * @param after the later course
     * @return the change
     */
    public static CourseChange between(CourseSector before, CourseSector after) {
        Estimate shift = SweepComparison.difference(before.centre(), after.centre());
        double slope = before.slope().value();
        Estimate old = before.widthByRegression();
        Estimate now = after.widthByRegression();
        double ratio = now.value() / old.value();
        double relative =
                Math.hypot(
                        old.standardUncertainty() / old.value(),
                        now.standardUncertainty() / now.value());
        return new CourseChange(
                shift,
                new Estimate(-shift.value() * slope, shift.standardUncertainty() * slope),
                new Estimate(100 * (ratio - 1), 100 * ratio * relative));
    }
}
