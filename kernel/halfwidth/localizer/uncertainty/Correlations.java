package halfwidth.localizer.uncertainty;

import halfwidth.localizer.Range;
import halfwidth.localizer.Require;
import org.hipparchus.linear.EigenDecompositionSymmetric;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.stat.correlation.PearsonsCorrelation;

/** Correlation coefficients between the inputs of a measurement, in the order of the inputs. */
public final class Correlations {
    /** What rounding leaves below zero in an eigenvalue of a matrix that is only just possible. */
    private static final double ROUNDING = 1e-9;

    private final double[][] coefficients;

    private Correlations(double[][] coefficients) {
        this.coefficients = coefficients;
    }

    /**
     * Returns inputs that have nothing to do with each other.
     *
     * @param inputs how many inputs (1), at least 1
     * @return no correlation between any two
     * @throws IllegalArgumentException if {@code inputs} is below 1
     */
    public static Correlations none(int inputs) {
        Require.within("number of inputs", inputs, new Range(1, Integer.MAX_VALUE), "");
        return new Correlations(MatrixUtils.createRealIdentityMatrix(inputs).getData());
    }

    /**
     * Returns the correlations of inputs that were read together, row by row.
     *
     * <p>JCGM 100:2008, 5.2.3: the coefficient of the means is that of the readings.
     *
     * @param readings one row for each time the inputs were read, one column for each input (unit
     *     of the input); at least two columns and three rows
     * @return their correlations
     * @throws IllegalArgumentException if the rows are too few or an input did not vary
     */
    public static Correlations ofReadings(double[][] readings) {
        if (readings.length < 3) {
            throw new IllegalArgumentException(
                    "rows must be at least 3 to show a correlation, not " + readings.length);
        }
        double[][] found =
                new PearsonsCorrelation(readings.clone()).getCorrelationMatrix().getData();
        for (double[] row : found) {
            for (double coefficient : row) {
                Require.finite("correlation of inputs that must vary", coefficient, "");
            }
        }
        return new Correlations(found);
    }

    /**
     * Returns the same correlations with one of them set.
     *
     * <p>Whether all of them are possible together is asked only where they are used, since a set
     * may pass through an impossible state while it is built.
     *
     * @param first the place of one input (1), counted from 0
     * @param second the place of another (1), counted from 0
     * @param coefficient their correlation coefficient (1), -1 to 1
     * @return the correlations with that one
     * @throws IllegalArgumentException if a place does not exist, the two are the same, or the
     *     coefficient is outside [-1, 1]
     */
    public Correlations with(int first, int second, double coefficient) {
        Range places = new Range(0, coefficients.length - 1.0);
        Require.within("place of the first input", first, places, "");
        Require.within("place of the second input", second, places, "");
        Require.within("correlation", coefficient, new Range(-1, 1), "");
        if (first == second) {
            throw new IllegalArgumentException(
                    "place " + first + " must differ: an input correlates with itself by 1");
        }
        double[][] changed = MatrixUtils.createRealMatrix(coefficients).getData();
        changed[first][second] = coefficient;
        changed[second][first] = coefficient;
        return new Correlations(changed);
    }

    /**
     * Returns the correlation of two inputs.
     *
     * @param first the place of one input (1), counted from 0
     * @param second the place of the other (1), counted from 0
     * @return their correlation coefficient (1)
     */
    public double between(int first, int second) {
        return coefficients[first][second];
    }

    /**
     * Returns how many inputs these are for.
     *
     * @return the number of inputs (1)
     */
    public int inputs() {
        return coefficients.length;
    }

    boolean touch(int input) {
        for (int other = 0; other < coefficients.length; other++) {
            if (other != input && coefficients[input][other] != 0) {
                return true;
            }
        }
        return false;
    }

    void requirePossible() {
        double[] eigenvalues =
                new EigenDecompositionSymmetric(MatrixUtils.createRealMatrix(coefficients))
                        .getEigenvalues();
        for (double eigenvalue : eigenvalues) {
            if (eigenvalue < -ROUNDING) {
                throw new IllegalArgumentException(
                        "correlations must be possible together; these make a negative variance");
            }
        }
    }
}
