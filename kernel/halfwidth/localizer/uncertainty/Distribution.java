package halfwidth.localizer.uncertainty;

import halfwidth.localizer.Range;
import halfwidth.localizer.Require;
import java.util.Random;

/**
 * What is known of an input: where it lies and how it is spread there.
 *
 * @param shape how it is spread
 * @param centre the middle (unit of the value)
 * @param spread the standard deviation of a normal, the half range of the others (unit of the
 *     value); at least 0
 */
public record Distribution(Shape shape, double centre, double spread) {

    /** How an input is spread about its middle. */
    public enum Shape {
        /** Bell-shaped: a mean of readings, a stated standard uncertainty. */
        NORMAL,
        /** Equally likely anywhere within ± the half range: the step of a display, a data sheet. */
        RECTANGULAR,
        /** Dwelling at the ends of ± the half range: a quantity that swings, like a temperature. */
        ARCSINE
    }

    /**
     * @throws IllegalArgumentException if a number is not finite or {@code spread} is negative
     */
    public Distribution {
        Require.finite("centre", centre, "");
        Require.within("spread", spread, new Range(0, Double.MAX_VALUE), "");
    }

    /**
     * Returns a normal distribution.
     *
     * @param estimate its mean and standard deviation (unit of the value)
     * @return the distribution
     */
    public static Distribution normal(Estimate estimate) {
        return new Distribution(Shape.NORMAL, estimate.value(), estimate.standardUncertainty());
    }

    /**
     * Returns a rectangular distribution.
     *
     * @param centre the middle (unit of the value)
     * @param halfRange half its length (unit of the value), at least 0
     * @return the distribution
     */
    public static Distribution rectangular(double centre, double halfRange) {
        return new Distribution(Shape.RECTANGULAR, centre, halfRange);
    }

    /**
     * Returns an arcsine (U-shaped) distribution.
     *
     * @param centre the middle (unit of the value)
     * @param halfRange the amplitude of the swing (unit of the value), at least 0
     * @return the distribution
     */
    public static Distribution arcsine(double centre, double halfRange) {
        return new Distribution(Shape.ARCSINE, centre, halfRange);
    }

    /**
     * Returns its mean and standard deviation: a/√3 rectangular, a/√2 arcsine.
     *
     * <p>JCGM 101:2008, 6.4.2.4 and 6.4.6.3.
     *
     * @return the two as an estimate (unit of the value)
     */
    public Estimate estimate() {
        double divisor =
                switch (shape) {
                    case NORMAL -> 1;
                    case RECTANGULAR -> Math.sqrt(3);
                    case ARCSINE -> Math.sqrt(2);
                };
        return new Estimate(centre, spread / divisor);
    }

    /** One value; a normal one from the standard deviate given, which may be a correlated one. */
    double draw(Random random, double standardDeviate) {
        double unit =
                switch (shape) {
                    case NORMAL -> standardDeviate;
                    case RECTANGULAR -> 2 * random.nextDouble() - 1;
                    case ARCSINE -> Math.sin(2 * Math.PI * random.nextDouble());
                };
        return centre + spread * unit;
    }
}
