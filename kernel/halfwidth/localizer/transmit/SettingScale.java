package halfwidth.localizer.transmit;

import halfwidth.localizer.Require;
import halfwidth.localizer.signal.Decibel;

/**
 * What a transmitter's SBO setting is a scale of.
 *
 * <p>A per cent scale may be of any full value: the full value is the same before and after and
 * cancels. Whether it counts power or amplitude does not cancel, and has to be known: 10 % more
 * power is 4.9 % more amplitude.
 */
public enum SettingScale {
    /** Watts of SBO power; amplitude is as its square root. */
    POWER_WATTS(2, 0),
    /** Per cent of a full SBO power. */
    POWER_PERCENT(2, 0),
    /** Per cent of a full SBO amplitude. */
    AMPLITUDE_PERCENT(1, 0),
    /** SBO amplitude relative to any reference, as a plain number. */
    RELATIVE_AMPLITUDE(1, 0),
    /** Decibels of SBO level, more is more: 20 log10 of amplitude. */
    LEVEL_DECIBELS(0, 1),
    /** Decibels of attenuation in the SBO path, more is less: −20 log10 of amplitude. */
    ATTENUATION_DECIBELS(0, -1);

    private final int power;
    private final int sense;

    SettingScale(int power, int sense) {
        this.power = power;
        this.sense = sense;
    }

    /**
     * Returns the setting that has another amplitude: setting Aⁿ with n = 2 for a scale of power
     * and 1 of amplitude, or setting ± 20 log10 A for decibels.
     *
     * @param setting the present setting (unit of the scale), above 0 but for decibels
     * @param amplitudeRatio A, the amplitude wanted over the present one (1), above 0
     * @return the setting (unit of the scale)
     * @throws IllegalArgumentException if the setting is not finite, or not above 0 on a scale that
     *     is not of decibels; or the ratio is not above 0
     */
    public double changed(double setting, double amplitudeRatio) {
        check(setting);
        Require.above("amplitude ratio", amplitudeRatio, 0, "");
        return power > 0
                ? setting * Math.pow(amplitudeRatio, power)
                : setting + sense * Decibel.ofAmplitudeRatio(amplitudeRatio);
    }

    /**
     * Returns what a change of setting does to the amplitude.
     *
     * @param from the setting before (unit of the scale)
     * @param to the setting after (unit of the scale)
     * @return amplitude after over amplitude before (1)
     * @throws IllegalArgumentException if a setting is not finite, or not above 0 on a scale that
     *     is not of decibels
     */
    public double amplitudeRatio(double from, double to) {
        check(from);
        check(to);
        return power > 0
                ? Math.pow(to / from, 1.0 / power)
                : Decibel.toAmplitudeRatio(sense * (to - from));
    }

    private void check(double setting) {
        if (power > 0) {
            Require.above("setting on the scale " + this, setting, 0, "");
        } else {
            Require.finite("setting on the scale " + this, setting, "dB");
        }
    }
}
