package halfwidth.localizer.uncertainty;

import halfwidth.localizer.Range;
import halfwidth.localizer.Require;

/**
 * A value with its standard uncertainty, both in the same unit.
 *
 * @param value the best estimate (unit of the value)
 * @param standardUncertainty one standard deviation (unit of the value), at least 0
 */
public record Estimate(double value, double standardUncertainty) {

    /**
     * @throws IllegalArgumentException if either is not finite or the uncertainty is negative
     */
    public Estimate {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("value " + value + " must be finite");
        }
        if (!(standardUncertainty >= 0) || Double.isInfinite(standardUncertainty)) {
            throw new IllegalArgumentException(
                    "standard uncertainty " + standardUncertainty + " must be finite and >= 0");
        }
    }

    /**
     * Returns a value taken as known exactly.
     *
     * @param value the value (unit of the value)
     * @return the value with a standard uncertainty of 0 (unit of the value)
     */
    public static Estimate exact(double value) {
        return new Estimate(value, 0);
    }

    /**
     * Returns a reading whose only known fault is the step of the display: u = step / √12.
     *
     * <p>JCGM 100:2008, F.2.2.1: the true value lies anywhere within half a step of what is shown.
     *
     * @param value the value shown (unit of the value)
     * @param step the step of the display (unit of the value), at least 0
     * @return the value with its standard uncertainty (unit of the value)
     * @throws IllegalArgumentException if {@code step} is negative or not finite
     */
    public static Estimate readInSteps(double value, double step) {
        Require.within("step", step, new Range(0, Double.MAX_VALUE), "");
        return new Estimate(value, step / Math.sqrt(12));
    }

    /**
     * Returns a value known only to lie within ± a: u = a / √3 (JCGM 100:2008, 4.3.7).
     *
     * @param value the middle of the range (unit of the value)
     * @param halfRange a (unit of the value), at least 0
     * @return the value with its standard uncertainty (unit of the value)
     * @throws IllegalArgumentException if {@code halfRange} is negative or not finite
     */
    public static Estimate within(double value, double halfRange) {
        Require.within("half range", halfRange, new Range(0, Double.MAX_VALUE), "");
        return new Estimate(value, halfRange / Math.sqrt(3));
    }

    /**
     * Returns the range of value ± k u.
     *
     * @param coverageFactor k (1), at least 0
     * @return the range (unit of the value)
     * @throws IllegalArgumentException if {@code coverageFactor} is negative or not finite
     */
    public Range expanded(double coverageFactor) {
        Require.within("coverage factor", coverageFactor, new Range(0, Double.MAX_VALUE), "");
        double reach = coverageFactor * standardUncertainty;
        return new Range(value - reach, value + reach);
    }
}
