package halfwidth.localizer.uncertainty;

import halfwidth.localizer.Range;
import halfwidth.localizer.Require;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.function.ToDoubleFunction;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RectangularCholeskyDecomposition;
import org.hipparchus.stat.StatUtils;

/**
 * A result computed from many draws of its inputs, as in JCGM 101:2008 (GUM Supplement 1).
 *
 * <p>It needs no straightness of the function, so it checks {@link Propagation}.
 */
public final class MonteCarlo {
    /** Pivots of a correlation matrix below this are rounding, not a direction of their own. */
    private static final double SMALLEST_PIVOT = 1e-12;

    private final double[] sorted;

    private MonteCarlo(double[] results) {
        Arrays.sort(results);
        this.sorted = results;
    }

    /**
     * Draws independent inputs.
     *
     * @param function the model, taking the values in the order of the inputs
     * @param draws how many and from which seed
     * @param inputs the inputs, at least one
     * @return the spread of the results
     * @throws IllegalArgumentException if the function is not finite for a draw
     */
    public static MonteCarlo of(
            ToDoubleFunction<double[]> function, Draws draws, Distribution... inputs) {
        return of(function, draws, List.of(inputs), Correlations.none(inputs.length));
    }

    /**
     * Draws inputs of which the normal ones may be correlated.
     *
     * @param function the model, taking the values in the order of the inputs
     * @param draws how many and from which seed
     * @param inputs the inputs, at least one
     * @param correlations between them, in the same order
     * @return the spread of the results
     * @throws IllegalArgumentException if the function is not finite for a draw, the correlations
     *     are for another number of inputs, they touch an input that is not normal, or they are not
     *     possible together
     */
    public static MonteCarlo of(
            ToDoubleFunction<double[]> function,
            Draws draws,
            List<Distribution> inputs,
            Correlations correlations) {
        requireNormalWhereCorrelated(inputs, correlations);
        double[][] root = root(correlations);
        Random random = new Random(draws.seed());
        double[] results = new double[draws.number()];
        for (int draw = 0; draw < results.length; draw++) {
            double[] values = values(inputs, root, random);
            results[draw] = function.applyAsDouble(values.clone());
            if (!Double.isFinite(results[draw])) {
                throw new IllegalArgumentException(
                        "function must be finite; it gave "
                                + results[draw]
                                + " for "
                                + Arrays.toString(values));
            }
        }
        return new MonteCarlo(results);
    }

    /**
     * Returns the mean and the standard deviation of the draws.
     *
     * @return the result (unit of the function)
     */
    public Estimate estimate() {
        return new Estimate(StatUtils.mean(sorted), Math.sqrt(StatUtils.variance(sorted)));
    }

    /**
     * Returns the value that a given part of the draws do not exceed.
     *
     * @param percent the part (%), above 0, at most 100
     * @return the value (unit of the function)
     * @throws IllegalArgumentException if {@code percent} is outside (0, 100]
     */
    public double percentile(double percent) {
        Require.above("percentile", percent, 0, "%");
        Require.within("percentile", percent, new Range(0, 100), "%");
        return StatUtils.percentile(sorted, percent);
    }

    /**
     * Returns the interval that leaves an equal part of the draws out at each end.
     *
     * @param probability the part within (1), above 0 and below 1
     * @return the interval (unit of the function)
     * @throws IllegalArgumentException if {@code probability} is outside (0, 1)
     */
    public Range coverageInterval(double probability) {
        Require.above("probability", probability, 0, "");
        Require.above("part left out", 1 - probability, 0, "");
        double left = 50 * (1 - probability);
        return new Range(percentile(left), percentile(100 - left));
    }

    /**
     * Returns the part of the draws that a range holds.
     *
     * @param range the range (unit of the function)
     * @return the part (1), 0 to 1
     */
    public double partWithin(Range range) {
        return Arrays.stream(sorted).filter(range::contains).count() / (double) sorted.length;
    }

    /**
     * Returns the results of all draws, from the least up, for a histogram.
     *
     * @return the results (unit of the function)
     */
    public double[] sortedResults() {
        return sorted.clone();
    }

    private static void requireNormalWhereCorrelated(
            List<Distribution> inputs, Correlations correlations) {
        Require.sameLength("correlations and inputs", correlations.inputs(), inputs.size());
        correlations.requirePossible();
        for (int i = 0; i < inputs.size(); i++) {
            if (correlations.touch(i) && inputs.get(i).shape() != Distribution.Shape.NORMAL) {
                throw new IllegalArgumentException(
                        "input " + (i + 1) + " must be normal to be correlated");
            }
        }
    }

    private static double[][] root(Correlations correlations) {
        int inputs = correlations.inputs();
        double[][] matrix = new double[inputs][inputs];
        for (int i = 0; i < inputs; i++) {
            for (int j = 0; j < inputs; j++) {
                matrix[i][j] = correlations.between(i, j);
            }
        }
        return new RectangularCholeskyDecomposition(
                        MatrixUtils.createRealMatrix(matrix), SMALLEST_PIVOT)
                .getRootMatrix()
                .getData();
    }

    private static double[] values(List<Distribution> inputs, double[][] root, Random random) {
        double[] independent = new double[root[0].length];
        Arrays.setAll(independent, i -> random.nextGaussian());
        double[] values = new double[inputs.size()];
        for (int i = 0; i < values.length; i++) {
            double deviate = 0;
            for (int j = 0; j < independent.length; j++) {
                deviate += root[i][j] * independent[j];
            }
            values[i] = inputs.get(i).draw(random, deviate);
        }
        return values;
    }
}
