package halfwidth.localizer.transmit;

import halfwidth.localizer.uncertainty.Estimate;
import halfwidth.localizer.uncertainty.Propagation;
import halfwidth.localizer.uncertainty.Quantity;
import java.util.Locale;

/**
 * The setting to make for a width, and how finely control and receiver let it be made.
 *
 * @param width the width measured and wanted
 * @param control the control that sets it
 * @param present the present setting (unit of the control's scale)
 */
public record SboAdjustment(WidthCorrection width, SboControl control, double present) {

    /**
     * @throws IllegalArgumentException if the present setting is not finite, or not above 0 on a
     *     scale that is not of decibels
     */
    public SboAdjustment {
        control.scale().changed(present, 1);
    }

    /**
     * Returns the setting that the amplitude ratio asks for.
     *
     * @return the setting before rounding to the control's step (unit of the scale), with the
     *     standard uncertainty that the receiver's resolution leaves (JCGM 100:2008, equation (10))
     */
    public Estimate exactSetting() {
        return Propagation.of(
                        x -> control.scale().changed(present, x[0]),
                        Quantity.of("amplitude ratio", width.amplitudeRatio()))
                .result();
    }

    /**
     * Returns the setting to make: the exact one rounded to the nearest step, within the range.
     *
     * @return the setting (unit of the scale)
     */
    public double settingToMake() {
        return control.nearest(exactSetting().value());
    }

    /**
     * Tells whether the control reaches the setting asked for.
     *
     * @return false when {@link #settingToMake()} is only the end of the range
     */
    public boolean reachable() {
        return control.range().contains(exactSetting().value());
    }

    /**
     * Says what to do in words, and what is wrong when the control does not reach.
     *
     * @return one sentence
     */
    public String inWords() {
        String change =
                String.format(
                        Locale.ROOT,
                        "from %s to %s (exactly %.4g)",
                        number(present),
                        number(settingToMake()),
                        exactSetting().value());
        if (reachable()) {
            return "Set the SBO control " + change + ".";
        }
        return String.format(
                Locale.ROOT,
                "The SBO control reaches only %s to %s, and %.4g is needed: look for the loss or"
                        + " gain elsewhere before setting it to its end.",
                number(control.range().least()),
                number(control.range().most()),
                exactSetting().value());
    }

    /**
     * Returns the deflection to expect at each point after a setting: d × amplitude ratio.
     *
     * @param setting a setting (unit of the scale)
     * @return the deflection (DDM), centring apart
     * @throws IllegalArgumentException if the scale has no such setting
     */
    public double deflectionAt(double setting) {
        return width.measured().deflection().value()
                * control.scale().amplitudeRatio(present, setting);
    }

    /**
     * Returns what one step up from the setting to make does to the deflection at each point.
     *
     * @return the change (1), negative on a scale of attenuation
     */
    public double stepInDdm() {
        double setting = settingToMake();
        return deflectionAt(setting + control.step()) - deflectionAt(setting);
    }

    /**
     * Returns what one step up from the setting to make does to the width: 100 (d/(d + change) −
     * 1).
     *
     * @return the change (%), negative where the step makes the sector narrower
     */
    public double stepInWidth() {
        double setting = settingToMake();
        return 100 * (deflectionAt(setting) / deflectionAt(setting + control.step()) - 1);
    }

    /**
     * Returns the change of setting that moves each reading by one count of the receiver.
     *
     * @return the change from the setting to make (unit of the scale), positive
     */
    public double countInSetting() {
        double setting = settingToMake();
        double ratio = 1 + width.measured().resolution() / deflectionAt(setting);
        return Math.abs(control.scale().changed(setting, ratio) - setting);
    }

    /**
     * Returns one count of the receiver as a change of width: 100 (1 − d/(d + resolution)).
     *
     * @return the change (%), positive
     */
    public double countInWidth() {
        double d = deflectionAt(settingToMake());
        return 100 * (1 - d / (d + width.measured().resolution()));
    }

    /**
     * Tells whether the receiver shows a difference between two settings: whether the deflection
     * changes by at least one count.
     *
     * @param one a setting (unit of the scale)
     * @param other another setting (unit of the scale)
     * @return false when the readings cannot tell them apart
     * @throws IllegalArgumentException if the scale has no such setting
     */
    public boolean canTellApart(double one, double other) {
        double change = Math.abs(deflectionAt(one) - deflectionAt(other));
        return change >= width.measured().resolution();
    }

    private static String number(double setting) {
        return String.format(Locale.ROOT, "%.6g", setting).replaceAll("\\.?0+$", "");
    }
}
