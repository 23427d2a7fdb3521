package halfwidth.localizer.uncertainty;

import halfwidth.localizer.Require;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * A result computed from uncertain inputs, to first order.
 *
 * <p>u² = Σᵢ Σⱼ cᵢ cⱼ uᵢ uⱼ rᵢⱼ with cᵢ = ∂f/∂xᵢ: JCGM 100:2008, equations (13) and (16). First
 * order is enough only where the function is nearly straight over the uncertainties; {@link
 * MonteCarlo} tells.
 */
public final class Propagation {
    private final double value;
    private final double[] sensitivities;
    private final List<Quantity> inputs;
    private final Correlations correlations;

    private Propagation(
            double value,
            double[] sensitivities,
            List<Quantity> inputs,
            Correlations correlations) {
        this.value = Require.finite("result", value, "");
        this.sensitivities = sensitivities;
        this.inputs = inputs;
        this.correlations = correlations;
    }

    /**
     * Propagates independent inputs through a function.
     *
     * @param function the model, taking the values in the order of the inputs
     * @param inputs the inputs, at least one
     * @return the result
     * @throws IllegalArgumentException if the function is not finite at or near the inputs
     */
    public static Propagation of(ToDoubleFunction<double[]> function, Quantity... inputs) {
        return of(function, List.of(inputs), Correlations.none(inputs.length));
    }

    /**
     * Propagates correlated inputs through a function, with sensitivities by central differences.
     *
     * @param function the model, taking the values in the order of the inputs
     * @param inputs the inputs, at least one
     * @param correlations between them, in the same order
     * @return the result
     * @throws IllegalArgumentException if the correlations are for another number of inputs, or the
     *     function is not finite at or near the inputs
     */
    public static Propagation of(
            ToDoubleFunction<double[]> function, List<Quantity> inputs, Correlations correlations) {
        Require.sameLength("correlations and inputs", correlations.inputs(), inputs.size());
        correlations.requirePossible();
        double[] at = inputs.stream().mapToDouble(input -> input.estimate().value()).toArray();
        double[] sensitivities = new double[at.length];
        for (int i = 0; i < at.length; i++) {
            double sensitivity = new Sensitivity(function, at, i).near(inputs.get(i).estimate());
            sensitivities[i] =
                    Require.finite("sensitivity to " + inputs.get(i).name(), sensitivity, "");
        }
        return new Propagation(
                function.applyAsDouble(at.clone()),
                sensitivities,
                List.copyOf(inputs),
                correlations);
    }

    /**
     * Returns the result with its combined standard uncertainty.
     *
     * @return the result (unit of the function)
     */
    public Estimate result() {
        return new Estimate(value, Math.sqrt(Math.max(0, covariance(this))));
    }

    /**
     * Returns what each input adds, the largest first.
     *
     * @return one contribution for each input
     */
    public List<Contribution> contributions() {
        List<Contribution> list = new ArrayList<>();
        for (int i = 0; i < inputs.size(); i++) {
            list.add(
                    new Contribution(
                            inputs.get(i).name(), sensitivities[i], Math.abs(contribution(i))));
        }
        list.sort(Comparator.comparingDouble(Contribution::standardUncertainty).reversed());
        return List.copyOf(list);
    }

    /**
     * Returns the input that adds most.
     *
     * @return the largest contribution
     */
    public Contribution largest() {
        return contributions().get(0);
    }

    /**
     * Returns the effective degrees of freedom of the result, by Welch and Satterthwaite.
     *
     * <p>ν = u⁴ / Σ uᵢ⁴ / νᵢ: JCGM 100:2008, G.4.1, which holds for independent inputs only.
     *
     * @return the degrees of freedom (1), infinite if those of every input that adds are
     * @throws IllegalStateException if any two inputs are correlated
     */
    public double effectiveDegreesOfFreedom() {
        double[] adds = new double[inputs.size()];
        double[] degrees = new double[inputs.size()];
        for (int i = 0; i < adds.length; i++) {
            if (correlations.touch(i)) {
                throw new IllegalStateException(
                        inputs.get(i).name()
                                + " is correlated: effective degrees of freedom need independent"
                                + " inputs (JCGM 100:2008, G.4.1)");
            }
            adds[i] = contribution(i);
            degrees[i] = inputs.get(i).degreesOfFreedom();
        }
        return Coverage.effectiveDegreesOfFreedom(adds, degrees);
    }

    /**
     * Returns how far this result and another one of the same inputs go together.
     *
     * @param other a result of the same inputs and correlations
     * @return their correlation coefficient (1)
     * @throws IllegalArgumentException if the other has other inputs, or one of the two has no
     *     uncertainty
     */
    public double correlationWith(Propagation other) {
        if (!inputs.equals(other.inputs)) {
            throw new IllegalArgumentException("results must come from the same inputs");
        }
        double product = result().standardUncertainty() * other.result().standardUncertainty();
        Require.above("product of the two uncertainties", product, 0, "");
        return Math.max(-1, Math.min(1, covariance(other) / product));
    }

    private double covariance(Propagation other) {
        double sum = 0;
        for (int i = 0; i < inputs.size(); i++) {
            for (int j = 0; j < inputs.size(); j++) {
                sum += contribution(i) * other.contribution(j) * correlations.between(i, j);
            }
        }
        return sum;
    }

    private double contribution(int input) {
        return sensitivities[input] * inputs.get(input).estimate().standardUncertainty();
    }
}
