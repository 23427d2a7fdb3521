package halfwidth.localizer.uncertainty;

import halfwidth.localizer.Require;
import java.util.function.ToDoubleFunction;

/** The partial derivative of a model with respect to one of its inputs. */
final class Sensitivity {
    /** Balances rounding (ε/h) against what the differences leave out (h⁴) where u says nothing. */
    private static final double SMALLEST_STEP = 1e-5;

    private final ToDoubleFunction<double[]> function;
    private final double[] at;
    private final int input;

    Sensitivity(ToDoubleFunction<double[]> function, double[] at, int input) {
        this.function = function;
        this.at = at;
        this.input = input;
    }

    /** Central differences over h and h/2, extrapolated to a step of zero (Richardson). */
    double near(Estimate estimate) {
        double scale = estimate.value() == 0 ? 1 : Math.abs(estimate.value());
        double u = estimate.standardUncertainty();
        // An input around zero tells its scale only by its uncertainty.
        double step =
                u > 0 && estimate.value() == 0 ? u / 8 : Math.max(u / 8, scale * SMALLEST_STEP);
        return (4 * difference(step / 2) - difference(step)) / 3;
    }

    private double difference(double step) {
        double above = at[input] + step;
        double below = at[input] - step;
        return (with(above) - with(below)) / (above - below);
    }

    private double with(double value) {
        double[] moved = at.clone();
        moved[input] = value;
        return Require.finite("function near its inputs", function.applyAsDouble(moved), "");
    }
}
