package halfwidth.localizer.tolerance;

import halfwidth.localizer.Range;
import halfwidth.localizer.Require;

/**
 * How far currents scatter about their design, normally distributed.
 *
 * @param amplitude standard deviation of 20 log10 of the amplitude over its design (dB), 0 to 10
 * @param phase standard deviation of the phase (deg), 0 to 90
 */
public record Spread(double amplitude, double phase) {
    /** No scatter at all. */
    public static final Spread NONE = new Spread(0, 0);

    /**
     * @throws IllegalArgumentException if a value is outside its range
     */
    public Spread {
        Require.within("amplitude spread", amplitude, new Range(0, 10), "dB");
        Require.within("phase spread", phase, new Range(0, 90), "deg");
    }

    /**
     * Returns a spread with the amplitude in decibels.
     *
     * @param amplitude standard deviation of the amplitude (dB), 0 to 10
     * @param phase standard deviation of the phase (deg), 0 to 90
     * @return the spread
     */
    public static Spread ofDecibels(double amplitude, double phase) {
        return new Spread(amplitude, phase);
    }

    /**
     * Returns a spread with the amplitude as a part of itself: the logarithm of the amplitude
     * scatters by as much, so that no amplitude turns negative. To 5 % there is no difference.
     *
     * @param amplitude standard deviation of the amplitude over its design (1), 0 to 1
     * @param phase standard deviation of the phase (deg), 0 to 90
     * @return the spread
     */
    public static Spread ofFraction(double amplitude, double phase) {
        Require.within("amplitude spread", amplitude, new Range(0, 1), "");
        return new Spread(20 / Math.log(10) * amplitude, phase);
    }

    /** Standard deviation of the natural logarithm of the amplitude (1). */
    double logarithm() {
        return amplitude * Math.log(10) / 20;
    }
}
