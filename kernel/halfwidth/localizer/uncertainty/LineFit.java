package halfwidth.localizer.uncertainty;

import halfwidth.localizer.Range;
import halfwidth.localizer.Require;
import java.util.Arrays;
import org.hipparchus.stat.regression.OLSMultipleLinearRegression;

/**
 * A straight line y = intercept + slope x fitted by least squares.
 *
 * @param slope the slope (unit of y over unit of x)
 * @param intercept the value at x = 0 (unit of y); 0 exactly for a line through the origin
 * @param covariance of slope and intercept (unit of slope times unit of intercept)
 * @param residualDeviation the standard deviation of the points about the line (unit of y); of a
 *     weighted fit, in units of the stated uncertainties, near 1 if they tell the truth
 * @param rSquared the part of the variance that the line explains (1); about zero instead of the
 *     mean for a line through the origin
 * @param degreesOfFreedom points less fitted parameters (1)
 */
public record LineFit(
        Estimate slope,
        Estimate intercept,
        double covariance,
        double residualDeviation,
        double rSquared,
        int degreesOfFreedom) {

    /**
     * Fits a line to points of equal but unknown uncertainty, which their scatter gives.
     *
     * @param x where the points are (unit of x), at least 3, not all the same
     * @param y the points (unit of y)
     * @return the line
     * @throws IllegalArgumentException if the columns differ in length, are too short, hold a
     *     number that is not finite, or every x is the same
     */
    public static LineFit of(double[] x, double[] y) {
        return fit(new Points(x, y, equalWeights(x.length)), Scale.FROM_SCATTER);
    }

    /**
     * Fits a line to points of known uncertainty: weights 1/u².
     *
     * <p>The uncertainties of slope and intercept follow from those stated, not from the scatter;
     * {@link #residualDeviation()} compares the two.
     *
     * @param x where the points are (unit of x), at least 3, not all the same
     * @param y the points (unit of y)
     * @param standardUncertainties of each y (unit of y), above 0
     * @return the line
     * @throws IllegalArgumentException as {@link #of}, or if an uncertainty is not above 0
     */
    public static LineFit weighted(double[] x, double[] y, double[] standardUncertainties) {
        double[] weights = new double[standardUncertainties.length];
        for (int i = 0; i < weights.length; i++) {
            double u = Require.above("standard uncertainty", standardUncertainties[i], 0, "");
            weights[i] = 1 / (u * u);
        }
        return fit(new Points(x, y, weights), Scale.AS_STATED);
    }

    /**
     * Fits a line through the origin to points of equal but unknown uncertainty.
     *
     * @param x where the points are (unit of x), at least 2, not all 0
     * @param y the points (unit of y)
     * @return the line, its intercept exactly 0
     * @throws IllegalArgumentException if the columns differ in length, are too short, hold a
     *     number that is not finite, or every x is 0
     */
    public static LineFit throughOrigin(double[] x, double[] y) {
        Points points = new Points(x, y, equalWeights(x.length));
        points.requireMoreThan(1);
        if (Arrays.stream(x).allMatch(value -> value == 0)) {
            throw new IllegalArgumentException("x must not be 0 for every point");
        }
        OLSMultipleLinearRegression found = points.regression(true, 0);
        double squares = found.calculateResidualSumOfSquares();
        int degrees = points.number() - 1;
        double deviation = Math.sqrt(squares / degrees);
        double unscaled = Math.sqrt(found.estimateRegressionParametersVariance()[0][0]);
        return new LineFit(
                new Estimate(found.estimateRegressionParameters()[0], deviation * unscaled),
                Estimate.exact(0),
                0,
                deviation,
                explained(squares, points.totalSquares(true)),
                degrees);
    }

    /**
     * Returns the line's value at a place, with the uncertainty of the line alone.
     *
     * @param x the place (unit of x)
     * @return the value (unit of y)
     */
    public Estimate at(double x) {
        Require.finite("x", x, "");
        return new Estimate(intercept.value() + slope.value() * x, Math.sqrt(variance(x)));
    }

    /**
     * Returns what one more reading at a place would be, with the scatter of a single reading.
     *
     * @param x the place (unit of x)
     * @param readingUncertainty the standard deviation of one reading (unit of y): {@link
     *     #residualDeviation()} for a fit that is not weighted
     * @return the value (unit of y)
     * @throws IllegalArgumentException if {@code readingUncertainty} is negative or not finite
     */
    public Estimate newReadingAt(double x, double readingUncertainty) {
        Require.within(
                "reading uncertainty", readingUncertainty, new Range(0, Double.MAX_VALUE), "");
        return new Estimate(
                at(x).value(), Math.hypot(at(x).standardUncertainty(), readingUncertainty));
    }

    /**
     * Returns where the line reaches a value, to first order: u(x) = u(line there) / |slope|.
     *
     * @param y the value (unit of y)
     * @return the place (unit of x)
     * @throws IllegalArgumentException if {@code y} is not finite or the line is level
     */
    public Estimate reaches(double y) {
        Require.finite("y", y, "");
        if (slope.value() == 0) {
            throw new IllegalArgumentException("slope 0 must differ from 0 to reach " + y);
        }
        double x = (y - intercept.value()) / slope.value();
        return new Estimate(x, Math.sqrt(variance(x)) / Math.abs(slope.value()));
    }

    /**
     * Returns how far a point lies above the line.
     *
     * @param x the place (unit of x)
     * @param y the point (unit of y)
     * @return y less the line's value (unit of y)
     */
    public double residual(double x, double y) {
        return y - at(x).value();
    }

    private double variance(double x) {
        double u = intercept.standardUncertainty();
        double v = slope.standardUncertainty();
        return Math.max(0, u * u + 2 * x * covariance + x * x * v * v);
    }

    private enum Scale {
        FROM_SCATTER,
        AS_STATED
    }

    private static LineFit fit(Points points, Scale scale) {
        points.requireMoreThan(2);
        points.requireDifferentX();
        double centre = points.centre();
        OLSMultipleLinearRegression found = points.regression(false, centre);
        double squares = found.calculateResidualSumOfSquares();
        int degrees = points.number() - 2;
        double deviation = Math.sqrt(squares / degrees);
        double[][] unscaled = found.estimateRegressionParametersVariance();
        double factor = scale == Scale.FROM_SCATTER ? deviation : 1;
        double uMiddle = factor * Math.sqrt(unscaled[0][0]);
        double uSlope = factor * Math.sqrt(unscaled[1][1]);
        double middle = found.estimateRegressionParameters()[0];
        double slope = found.estimateRegressionParameters()[1];
        // About the centre, middle and slope are independent.
        return new LineFit(
                new Estimate(slope, uSlope),
                new Estimate(middle - slope * centre, Math.hypot(uMiddle, centre * uSlope)),
                -centre * uSlope * uSlope,
                deviation,
                explained(squares, points.totalSquares(false)),
                degrees);
    }

    private static double explained(double residualSquares, double totalSquares) {
        return totalSquares == 0 ? 1 : 1 - residualSquares / totalSquares;
    }

    private static double[] equalWeights(int points) {
        double[] weights = new double[points];
        Arrays.fill(weights, 1);
        return weights;
    }
}
