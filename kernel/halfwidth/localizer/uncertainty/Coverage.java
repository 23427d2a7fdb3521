package halfwidth.localizer.uncertainty;

import halfwidth.localizer.Range;
import halfwidth.localizer.Require;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.distribution.continuous.TDistribution;

/** Degrees of freedom and the coverage factors that go with them: JCGM 100:2008, annex G. */
public final class Coverage {
    private static final Range PROBABILITIES = new Range(0.5, 0.999999);

    private Coverage() {}

    /**
     * Returns the coverage factor of a two-sided interval, by Student's t.
     *
     * @param probability p, how often the interval holds the true value (1), 0.5 to 0.999999
     * @param degreesOfFreedom ν (1), at least 1; infinite gives the normal distribution's factor
     * @return k = t_p(ν) (1)
     * @throws IllegalArgumentException if an argument is outside its range
     */
    public static double factor(double probability, double degreesOfFreedom) {
        Require.within("probability", probability, PROBABILITIES, "");
        double upper = (1 + probability) / 2;
        if (degreesOfFreedom == Double.POSITIVE_INFINITY) {
            return new NormalDistribution().inverseCumulativeProbability(upper);
        }
        Require.within("degrees of freedom", degreesOfFreedom, new Range(1, Double.MAX_VALUE), "");
        return new TDistribution(degreesOfFreedom).inverseCumulativeProbability(upper);
    }

    /**
     * Combines degrees of freedom by Welch and Satterthwaite: ν = (Σ uᵢ²)² / Σ (uᵢ⁴ / νᵢ).
     *
     * <p>JCGM 100:2008, equation (G.2b); for independent inputs.
     *
     * @param contributions uᵢ, what each input adds (unit of the result)
     * @param degreesOfFreedom νᵢ of each (1), above 0, may be infinite
     * @return ν (1), infinite if no input with finite degrees of freedom adds anything
     * @throws IllegalArgumentException if the two are not of one length or a value is impossible
     */
    public static double effectiveDegreesOfFreedom(
            double[] contributions, double[] degreesOfFreedom) {
        Require.sameLength(
                "contributions and degrees of freedom",
                contributions.length,
                degreesOfFreedom.length);
        double variance = 0;
        double sum = 0;
        for (int i = 0; i < contributions.length; i++) {
            double square = Math.pow(Require.finite("contribution", contributions[i], ""), 2);
            if (degreesOfFreedom[i] != Double.POSITIVE_INFINITY) {
                Require.above("degrees of freedom", degreesOfFreedom[i], 0, "");
            }
            variance += square;
            sum += square * square / degreesOfFreedom[i];
        }
        return sum == 0 ? Double.POSITIVE_INFINITY : variance * variance / sum;
    }
}
