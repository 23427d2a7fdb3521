package halfwidth.localizer.monitor;

import halfwidth.localizer.Range;
import halfwidth.localizer.Require;
import halfwidth.localizer.signal.Decibel;

/**
 * A fall of carrier power at which the monitor has to alarm; with two frequencies, of one carrier.
 *
 * @param fraction power at the alarm over normal power (1), above 0 and at most 1
 */
public record PowerReduction(double fraction) {

    /**
     * @throws IllegalArgumentException if the fraction is not above 0 and at most 1
     */
    public PowerReduction {
        Require.above("part of normal power", fraction, 0, "");
        Require.within("part of normal power", fraction, new Range(0, 1), "");
    }

    /**
     * Takes a limit in per cent of normal power.
     *
     * @param percent power at the alarm (%), above 0 and at most 100
     * @return the reduction
     * @throws IllegalArgumentException if the power is not above 0 and at most 100 %
     */
    public static PowerReduction toPercentOfNormal(double percent) {
        return new PowerReduction(percent / 100);
    }

    /**
     * Returns the change of level: 10 log10 of the power ratio.
     *
     * @return the change (dB), negative
     */
    public double decibels() {
        return Decibel.ofPowerRatio(fraction);
    }

    /**
     * Returns the power to set.
     *
     * @param normalWatts the normal power (W), above 0
     * @return the power (W)
     * @throws IllegalArgumentException if the normal power is not above 0
     */
    public double watts(double normalWatts) {
        return fraction * Require.above("normal power", normalWatts, 0, "W");
    }

    /**
     * Returns what happens to every DDM if the carrier falls and the SBO does not: sensitivity ×
     * 1/√ fraction. Lower both together and no DDM changes.
     *
     * @return the change of sensitivity that comes with it
     */
    public SensitivityChange ifSidebandsStay() {
        return new SensitivityChange(1 / Math.sqrt(fraction) - 1);
    }

    /**
     * Returns the level of the course over the clearance carrier after one of the two has fallen.
     *
     * @param normalDecibels course over clearance in the normal state, of field or power (dB)
     * @param ofCourse whether it is the course carrier that falls
     * @return the ratio (dB)
     * @throws IllegalArgumentException if the normal ratio is beyond ±100 dB
     */
    public double carrierRatio(double normalDecibels, boolean ofCourse) {
        Require.within("ratio of the carriers", normalDecibels, new Range(-100, 100), "dB");
        return normalDecibels + (ofCourse ? decibels() : -decibels());
    }
}
