package halfwidth.localizer.uncertainty;

import halfwidth.localizer.Require;

/**
 * One input of a measurement, by name.
 *
 * @param name what it is called where its contribution is shown, not blank
 * @param estimate the value and its standard uncertainty (unit of the quantity)
 * @param degreesOfFreedom how well the uncertainty itself is known (1), above 0; infinite where it
 *     is taken as known exactly
 */
public record Quantity(String name, Estimate estimate, double degreesOfFreedom) {

    /**
     * @throws IllegalArgumentException if the name is blank or the degrees of freedom are not above
     *     0
     */
    public Quantity {
        if (name.isBlank()) {
            throw new IllegalArgumentException("name of a quantity must not be blank");
        }
        if (degreesOfFreedom != Double.POSITIVE_INFINITY) {
            Require.above("degrees of freedom of " + name, degreesOfFreedom, 0, "");
        }
    }

    /**
     * Returns an input whose uncertainty is taken as known exactly.
     *
     * @param name what it is called
     * @param estimate the value and its standard uncertainty (unit of the quantity)
     * @return the input, of infinite degrees of freedom
     */
    public static Quantity of(String name, Estimate estimate) {
        return new Quantity(name, estimate, Double.POSITIVE_INFINITY);
    }

    /**
     * Returns the mean of repeated readings, with the standard uncertainty of that mean.
     *
     * <p>s(mean) = s / √n with n − 1 degrees of freedom: JCGM 100:2008, 4.2.3.
     *
     * @param name what it is called
     * @param readings the readings (unit of the quantity), at least two
     * @return the mean as an input
     * @throws IllegalArgumentException if there are fewer than two readings or one is not finite
     */
    public static Quantity ofReadings(String name, double... readings) {
        Readings of = new Readings(readings);
        return new Quantity(
                name, new Estimate(of.mean(), of.deviationOfMean()), readings.length - 1.0);
    }
}
