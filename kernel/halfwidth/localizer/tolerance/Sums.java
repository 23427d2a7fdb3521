package halfwidth.localizer.tolerance;

import java.util.Arrays;

/**
 * The field of one set of currents at all azimuths of the grid.
 *
 * <p>With w the currents of a row's elements at x and v those at −x, the field at ±θ is the sum
 * over the rows of (w + v) cos(k x sin θ) ± j (w − v) sin(k x sin θ). The loops run along plain
 * arrays, one row at a time, so that the compiler can do several azimuths at once.
 */
final class Sums {
    private final Steering steering;
    private final double[] even;
    private final double[] odd;
    private final double[] evenReal = new double[Grid.SIDE + 1];
    private final double[] evenImaginary = new double[Grid.SIDE + 1];
    private final double[] oddReal = new double[Grid.SIDE + 1];
    private final double[] oddImaginary = new double[Grid.SIDE + 1];

    Sums(Steering steering) {
        this.steering = steering;
        this.even = new double[2 * steering.cosines.length];
        this.odd = new double[2 * steering.cosines.length];
    }

    void clear() {
        Arrays.fill(even, 0);
        Arrays.fill(odd, 0);
    }

    void add(int element, double real, double imaginary) {
        int at = 2 * steering.rows[element];
        double sign = steering.signs[element];
        even[at] += real;
        even[at + 1] += imaginary;
        odd[at] += sign * real;
        odd[at + 1] += sign * imaginary;
    }

    /** Writes the real and imaginary parts of the field from one end of the grid to the other. */
    void fields(double[] real, double[] imaginary) {
        sumRows();
        for (int i = 0; i <= Grid.SIDE; i++) {
            real[Grid.SIDE + i] = evenReal[i] - oddImaginary[i];
            imaginary[Grid.SIDE + i] = evenImaginary[i] + oddReal[i];
            real[Grid.SIDE - i] = evenReal[i] + oddImaginary[i];
            imaginary[Grid.SIDE - i] = evenImaginary[i] - oddReal[i];
        }
    }

    private void sumRows() {
        Arrays.fill(evenReal, 0);
        Arrays.fill(evenImaginary, 0);
        Arrays.fill(oddReal, 0);
        Arrays.fill(oddImaginary, 0);
        for (int row = 0; row < steering.cosines.length; row++) {
            if (even[2 * row] != 0 || even[2 * row + 1] != 0) {
                addScaled(evenReal, even[2 * row], steering.cosines[row]);
                addScaled(evenImaginary, even[2 * row + 1], steering.cosines[row]);
            }
            if (odd[2 * row] != 0 || odd[2 * row + 1] != 0) {
                addScaled(oddReal, odd[2 * row], steering.sines[row]);
                addScaled(oddImaginary, odd[2 * row + 1], steering.sines[row]);
            }
        }
    }

    private static void addScaled(double[] sum, double factor, double[] column) {
        for (int i = 0; i < sum.length; i++) {
            sum[i] += factor * column[i];
        }
    }
}
