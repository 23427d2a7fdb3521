package halfwidth.localizer.uncertainty;

import halfwidth.localizer.Require;
import org.hipparchus.stat.StatUtils;
import org.hipparchus.stat.regression.OLSMultipleLinearRegression;

/** Points for a straight line, each row scaled by the square root of its weight. */
final class Points {
    private final double[] x;
    private final double[] y;
    private final double[] weights;

    Points(double[] x, double[] y, double[] weights) {
        Require.sameLength("x and y", x.length, y.length);
        Require.sameLength("points and uncertainties", x.length, weights.length);
        this.x = x.clone();
        this.y = y.clone();
        this.weights = weights;
        for (int i = 0; i < x.length; i++) {
            Require.finite("x", x[i], "");
            Require.finite("y", y[i], "");
        }
    }

    int number() {
        return x.length;
    }

    void requireMoreThan(int parameters) {
        if (x.length <= parameters) {
            throw new IllegalArgumentException(
                    "points must be at least "
                            + (parameters + 1)
                            + " for a line with its uncertainty, not "
                            + x.length);
        }
    }

    void requireDifferentX() {
        double first = x[0];
        for (double other : x) {
            if (other != first) {
                return;
            }
        }
        throw new IllegalArgumentException("x must differ between points; all are " + first);
    }

    /** The weighted mean of x, which the fit is centred on so that steep axes lose no digits. */
    double centre() {
        double sum = 0;
        double weighted = 0;
        for (int i = 0; i < x.length; i++) {
            sum += weights[i];
            weighted += weights[i] * x[i];
        }
        return weighted / sum;
    }

    /** The fit of y on the columns 1 and x − centre, or on x alone. */
    OLSMultipleLinearRegression regression(boolean throughOrigin, double centre) {
        double[][] rows = new double[x.length][];
        double[] scaled = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            double root = Math.sqrt(weights[i]);
            rows[i] =
                    throughOrigin
                            ? new double[] {root * x[i]}
                            : new double[] {root, root * (x[i] - centre)};
            scaled[i] = root * y[i];
        }
        OLSMultipleLinearRegression regression = new OLSMultipleLinearRegression();
        regression.setNoIntercept(true);
        regression.newSampleData(scaled, rows);
        return regression;
    }

    /** Σ w (y − reference)², the reference being the weighted mean, or 0 for a line through 0. */
    double totalSquares(boolean throughOrigin) {
        double reference = throughOrigin ? 0 : weightedMeanOfY();
        double sum = 0;
        for (int i = 0; i < y.length; i++) {
            sum += weights[i] * (y[i] - reference) * (y[i] - reference);
        }
        return sum;
    }

    private double weightedMeanOfY() {
        double sum = 0;
        for (int i = 0; i < y.length; i++) {
            sum += weights[i] * y[i];
        }
        return sum / StatUtils.sum(weights);
    }
}
