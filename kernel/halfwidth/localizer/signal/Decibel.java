package halfwidth.localizer.signal;

import halfwidth.localizer.Range;
import halfwidth.localizer.Require;

/**
 * Decibels, always of a named ratio: 10 log₁₀ of powers or 20 log₁₀ of amplitudes.
 *
 * <p>On one impedance the two give the same number for one change of level.
 */
public final class Decibel {
    private static final Range LEVELS = new Range(-300, 300);

    private Decibel() {}

    /**
     * Converts a ratio of powers: 10 log₁₀ P₂/P₁.
     *
     * @param powerRatio the ratio (1), above 0
     * @return the level difference (dB)
     * @throws IllegalArgumentException if the ratio is not finite and above 0
     */
    public static double ofPowerRatio(double powerRatio) {
        return 10 * Math.log10(Require.above("power ratio", powerRatio, 0, ""));
    }

    /**
     * Converts a ratio of amplitudes (field, voltage, current): 20 log₁₀ A₂/A₁.
     *
     * @param amplitudeRatio the ratio (1), above 0
     * @return the level difference (dB)
     * @throws IllegalArgumentException if the ratio is not finite and above 0
     */
    public static double ofAmplitudeRatio(double amplitudeRatio) {
        return 20 * Math.log10(Require.above("amplitude ratio", amplitudeRatio, 0, ""));
    }

    /**
     * Converts a level difference to the ratio of powers: 10^(dB/10).
     *
     * @param decibels the level difference (dB), -300 to 300
     * @return the ratio (1)
     * @throws IllegalArgumentException if the difference is outside its range
     */
    public static double toPowerRatio(double decibels) {
        return Math.pow(10, Require.within("level", decibels, LEVELS, "dB") / 10);
    }

    /**
     * Converts a level difference to the ratio of amplitudes: 10^(dB/20).
     *
     * @param decibels the level difference (dB), -300 to 300
     * @return the ratio (1)
     * @throws IllegalArgumentException if the difference is outside its range
     */
    public static double toAmplitudeRatio(double decibels) {
        return Math.pow(10, Require.within("level", decibels, LEVELS, "dB") / 20);
    }
}
