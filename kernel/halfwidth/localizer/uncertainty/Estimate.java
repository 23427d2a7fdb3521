package halfwidth.localizer.uncertainty;

/**
 * A value with its standard uncertainty, both in the same unit.
 *
 * @param value the best estimate
 * @param standardUncertainty one standard deviation, at least 0
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
}
