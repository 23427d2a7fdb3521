package halfwidth.localizer.site;

import halfwidth.localizer.Require;
import java.util.Locale;
import java.util.Optional;

/**
 * Where a lost mark may be, from tape distances to two recovered marks.
 *
 * <p>The two circles meet on either side of the line through the recovered marks; the tape cannot
 * tell which it is.
 *
 * @param first the candidate of the greater offset, the further out if the offsets are the same
 * @param second the other one
 * @param crossingAngle the angle at which the two tapes meet at either candidate (deg), 0 to 180
 */
public record LostMark(Candidate first, Candidate second, double crossingAngle) {
    /** Tapes that meet flatter than this fix a place poorly: common practice, no source. */
    private static final double FLATTEST_GOOD = 30;

    /**
     * One place where the mark may be.
     *
     * @param mark the place
     * @param ellipse how far off it may be by the uncertainty of the tapes, to first order
     */
    public record Candidate(Mark mark, ErrorEllipse ellipse) {}

    /**
     * Finds both candidates.
     *
     * @param one a tape distance to a recovered mark
     * @param other a tape distance to another recovered mark
     * @return the candidates
     * @throws IllegalArgumentException if the recovered marks are the same place, or the tapes do
     *     not meet or only just do, which leaves the place open
     */
    public static LostMark find(TapeReading one, TapeReading other) {
        double base = one.from().distanceTo(other.from());
        Require.above("distance between the recovered marks", base, 0, "m");
        double a = one.distance().value();
        double b = other.distance().value();
        if (base >= a + b || base <= Math.abs(a - b)) {
            throw new IllegalArgumentException(
                    "tape distances "
                            + a
                            + " m and "
                            + b
                            + " m must meet at an angle over marks "
                            + base
                            + " m apart: their sum must be above that, their difference below");
        }
        double x = (base * base + a * a - b * b) / (2 * base);
        double y = Math.sqrt(Math.max(0, a * a - x * x));
        Require.above("distance of the meeting point from the line of the marks", y, 0, "m");
        Candidate left = candidate(one, other, new double[] {x / base, y / base});
        Candidate right = candidate(one, other, new double[] {x / base, -y / base});
        double angle =
                Math.toDegrees(Math.acos(clamp((a * a + b * b - base * base) / (2 * a * b))));
        return inOrder(left, right)
                ? new LostMark(left, right, angle)
                : new LostMark(right, left, angle);
    }

    /**
     * Returns the candidate that is nearer to where the mark should be.
     *
     * @param expected where it should be
     * @return the nearer candidate; the first if neither is
     */
    public Candidate nearestTo(Mark expected) {
        return second.mark().distanceTo(expected) < first.mark().distanceTo(expected)
                ? second
                : first;
    }

    /**
     * Warns where the tapes meet so flat that small errors move the place far.
     *
     * @return the warning, empty if they meet well
     */
    public Optional<String> warning() {
        double flatness = Math.min(crossingAngle, 180 - crossingAngle);
        if (flatness >= FLATTEST_GOOD) {
            return Optional.empty();
        }
        return Optional.of(
                String.format(
                        Locale.ROOT,
                        "the tapes meet at only %.0f°: take a distance to a mark more to the side",
                        flatness));
    }

    /** The candidate at the given parts of the base line, along it and square to it. */
    private static Candidate candidate(TapeReading one, TapeReading other, double[] parts) {
        double dx = other.from().along() - one.from().along();
        double dy = other.from().offset() - one.from().offset();
        Mark mark =
                new Mark(
                        one.from().along() + parts[0] * dx - parts[1] * dy,
                        one.from().offset() + parts[0] * dy + parts[1] * dx);
        return new Candidate(mark, ellipse(mark, one, other));
    }

    /** d(place) = E⁻¹ d(distances), the rows of E being the directions of the two tapes. */
    private static ErrorEllipse ellipse(Mark mark, TapeReading one, TapeReading other) {
        double[] e = direction(one, mark);
        double[] f = direction(other, mark);
        double determinant = e[0] * f[1] - e[1] * f[0];
        double u = one.distance().standardUncertainty() / determinant;
        double v = other.distance().standardUncertainty() / determinant;
        return ErrorEllipse.of(
                sq(f[1] * u) + sq(e[1] * v),
                sq(f[0] * u) + sq(e[0] * v),
                -f[1] * f[0] * u * u - e[1] * e[0] * v * v);
    }

    private static double[] direction(TapeReading tape, Mark to) {
        double length = tape.from().distanceTo(to);
        return new double[] {
            (to.along() - tape.from().along()) / length,
            (to.offset() - tape.from().offset()) / length
        };
    }

    private static boolean inOrder(Candidate first, Candidate second) {
        double difference = first.mark().offset() - second.mark().offset();
        return difference == 0 ? first.mark().along() >= second.mark().along() : difference > 0;
    }

    private static double clamp(double cosine) {
        return Math.max(-1, Math.min(1, cosine));
    }

    private static double sq(double value) {
        return value * value;
    }
}
