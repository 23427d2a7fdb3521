package halfwidth.localizer.site;

/**
 * How far off a position may be, one standard deviation each way.
 *
 * @param semiMajor standard deviation in the worst direction (m)
 * @param semiMinor standard deviation square to it (m)
 * @param direction of the worst, turned from the course line towards the 150 Hz side (deg), 0 to
 *     below 180
 */
public record ErrorEllipse(double semiMajor, double semiMinor, double direction) {

    /** The axes of a covariance of along and offset: its eigenvalues, in closed form. */
    static ErrorEllipse of(double varianceAlong, double varianceOffset, double covariance) {
        double middle = (varianceAlong + varianceOffset) / 2;
        double spread = Math.hypot((varianceAlong - varianceOffset) / 2, covariance);
        double turn =
                Math.toDegrees(Math.atan2(2 * covariance, varianceAlong - varianceOffset)) / 2;
        return new ErrorEllipse(
                Math.sqrt(middle + spread),
                Math.sqrt(Math.max(0, middle - spread)),
                turn < 0 ? turn + 180 : turn);
    }
}
