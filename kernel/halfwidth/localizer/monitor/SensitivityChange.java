package halfwidth.localizer.monitor;

import halfwidth.localizer.Range;
import halfwidth.localizer.Require;
import halfwidth.localizer.signal.Decibel;

/**
 * A change of displacement sensitivity at which the monitor has to alarm.
 *
 * <p>Sensitivity is proportional to the SBO amplitude at constant carrier, and the width between
 * two fixed DDM to its inverse, so a limit on one is another number on the other: sensitivity −17 %
 * is width +20.5 %, while width +17 % is sensitivity −14.5 %.
 *
 * @param fraction change of sensitivity over normal sensitivity (1), above -1, positive = narrower
 */
public record SensitivityChange(double fraction) {
    private static final Range FRACTIONS = new Range(-0.99, 10);

    /**
     * @throws IllegalArgumentException if the fraction is not -0.99 to 10
     */
    public SensitivityChange {
        Require.within("change of sensitivity", fraction, FRACTIONS, "");
    }

    /**
     * Takes a limit on displacement sensitivity.
     *
     * @param percent change of sensitivity (%), negative = wider
     * @return the change
     * @throws IllegalArgumentException if the change is not -99 to 1000 %
     */
    public static SensitivityChange ofSensitivityPercent(double percent) {
        return new SensitivityChange(percent / 100);
    }

    /**
     * Takes a limit on width: sensitivity = 1/(1 + w) − 1.
     *
     * @param percent w, change of width (%), positive = wider
     * @return the change
     * @throws IllegalArgumentException if the change is not -90 to 1000 %
     */
    public static SensitivityChange ofWidthPercent(double percent) {
        Require.within("change of width", percent, new Range(-90, 1000), "%");
        return new SensitivityChange(1 / (1 + percent / 100) - 1);
    }

    /**
     * Returns the SBO amplitude to set over the normal one: 1 + fraction.
     *
     * @return the ratio (1)
     */
    public double sboAmplitudeRatio() {
        return 1 + fraction;
    }

    /**
     * Returns the SBO power to set over the normal one: (1 + fraction)².
     *
     * @return the ratio (1)
     */
    public double sboPowerRatio() {
        return sboAmplitudeRatio() * sboAmplitudeRatio();
    }

    /**
     * Returns the change of SBO level: 20 log10 (1 + fraction) of amplitude.
     *
     * @return the change (dB), positive = more SBO
     */
    public double sboDecibels() {
        return Decibel.ofAmplitudeRatio(sboAmplitudeRatio());
    }

    /**
     * Returns the change of width: 100 (1/(1 + fraction) − 1).
     *
     * @return the change (%), positive = wider
     */
    public double widthPercent() {
        return 100 * (1 / sboAmplitudeRatio() - 1);
    }

    /**
     * Returns the width at the alarm, for a sector small enough that DDM is linear in it.
     *
     * @param normalWidth the width of the normal sector (deg), above 0
     * @return the width (deg)
     * @throws IllegalArgumentException if the width is not above 0 and at most 20 deg
     */
    public double width(double normalWidth) {
        Require.above("normal width", normalWidth, 0, "deg");
        Require.within("normal width", normalWidth, new Range(0, 20), "deg");
        return normalWidth / sboAmplitudeRatio();
    }

    /**
     * Returns the reading of the width monitor at the alarm: normal × (1 + fraction).
     *
     * @param normalReading its reading on the normal width, without centring (DDM)
     * @return the reading (DDM)
     * @throws IllegalArgumentException if the reading is not -1 to 1
     */
    public double widthMonitorReading(double normalReading) {
        Require.within("normal reading", normalReading, new Range(-1, 1), "");
        return normalReading * sboAmplitudeRatio();
    }
}
