package halfwidth.localizer.transmit;

import java.util.List;
import org.hipparchus.stat.StatUtils;

/**
 * Straight lines of one slope, each with its own intercept, fitted by least squares.
 *
 * <p>With means taken line by line, slope = Σ (x−x̄)(y−ȳ) / Σ (x−x̄)² over all points: the
 * within-group estimate of the analysis of covariance.
 */
final class CommonSlope {
    private final List<Group> groups;
    private final double spread;
    private final double slope;

    /** One line's points; {@code x} and {@code y} of one length, at least one. */
    record Group(double[] x, double[] y) {
        double meanX() {
            return StatUtils.mean(x);
        }

        double meanY() {
            return StatUtils.mean(y);
        }

        /** Σ (x−x̄)². */
        double spread() {
            return products(x, x);
        }

        /** The slope of this line alone, where {@link #spread()} is above 0. */
        double slope() {
            return products(x, y) / spread();
        }

        /** Σ (a−ā)(b−b̄), shifted by the first values so that equal ones give exactly 0. */
        private static double products(double[] a, double[] b) {
            double sumA = 0;
            double sumB = 0;
            double sum = 0;
            for (int i = 0; i < a.length; i++) {
                sumA += a[i] - a[0];
                sumB += b[i] - b[0];
                sum += (a[i] - a[0]) * (b[i] - b[0]);
            }
            return sum - sumA * sumB / a.length;
        }
    }

    CommonSlope(List<Group> groups) {
        this.groups = List.copyOf(groups);
        spread = groups.stream().mapToDouble(Group::spread).sum();
        double products = groups.stream().mapToDouble(g -> Group.products(g.x(), g.y())).sum();
        slope = spread > 0 ? products / spread : 0;
    }

    /** Whether two points of one line differ in x, without which there is no slope. */
    boolean determined() {
        return spread > 0;
    }

    double slope() {
        return slope;
    }

    /** Standard deviation of y about the lines, at least {@code floor}. */
    double deviation(double floor) {
        int points = groups.stream().mapToInt(g -> g.x().length).sum();
        int free = points - groups.size() - (determined() ? 1 : 0);
        return free > 0 ? Math.max(floor, Math.sqrt(squares() / free)) : floor;
    }

    /** Standard uncertainty of the slope for a standard deviation of y: s/√Σ(x−x̄)². */
    double slopeUncertainty(double deviation) {
        return deviation / Math.sqrt(spread);
    }

    /** Mean over the lines of their mean x. */
    double centreX() {
        return groups.stream().mapToDouble(Group::meanX).average().orElseThrow();
    }

    /** Mean over the lines of their mean y. */
    double centreY() {
        return groups.stream().mapToDouble(Group::meanY).average().orElseThrow();
    }

    /** Standard uncertainty of {@link #centreY()} for a standard deviation of y. */
    double centreUncertainty(double deviation) {
        double sum = groups.stream().mapToDouble(g -> 1.0 / g.x().length).sum();
        return deviation * Math.sqrt(sum) / groups.size();
    }

    private double squares() {
        double sum = 0;
        for (Group group : groups) {
            for (int i = 0; i < group.x().length; i++) {
                double fitted = group.meanY() + slope * (group.x()[i] - group.meanX());
                sum += (group.y()[i] - fitted) * (group.y()[i] - fitted);
            }
        }
        return sum;
    }
}
