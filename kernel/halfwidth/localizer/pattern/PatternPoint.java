package halfwidth.localizer.pattern;

import halfwidth.localizer.array.CarrierField;
import halfwidth.localizer.array.Prediction;

/**
 * One point of a pattern.
 *
 * @param azimuth where (deg), positive on the 150 Hz side
 * @param prediction what a receiver reads there, and its parts
 * @param reference amplitude of what is received on azimuth 0 at the same distance (1)
 */
public record PatternPoint(double azimuth, Prediction prediction, double reference) {

    /**
     * Returns the DDM of all carriers together.
     *
     * @return the DDM (DDM)
     */
    public double ddm() {
        return prediction.ddm();
    }

    /**
     * Returns the sum of the depths of all carriers together.
     *
     * @return the sum (1)
     */
    public double sdm() {
        return prediction.sdm();
    }

    /**
     * Returns the level of all carriers together.
     *
     * @return 20 log10 of the detector's output over that on azimuth 0 at the same distance (dB)
     */
    public double level() {
        return decibels(prediction.amplitude());
    }

    /**
     * Returns the level of the course carrier alone.
     *
     * @return its level on the same scale as {@link #level()} (dB)
     */
    public double courseLevel() {
        return decibels(prediction.course().amplitude());
    }

    /**
     * Returns the level of the clearance carrier alone.
     *
     * @return its level on the same scale as {@link #level()} (dB)
     * @throws IllegalArgumentException if the array has no clearance carrier
     */
    public double clearanceLevel() {
        return decibels(clearance().amplitude());
    }

    /**
     * Returns the DDM of the course carrier alone.
     *
     * @return its DDM (DDM)
     */
    public double courseDdm() {
        return prediction.course().ddm();
    }

    /**
     * Returns the DDM of the clearance carrier alone.
     *
     * @return its DDM (DDM)
     * @throws IllegalArgumentException if the array has no clearance carrier
     */
    public double clearanceDdm() {
        return clearance().ddm();
    }

    private CarrierField clearance() {
        return prediction
                .clearance()
                .orElseThrow(
                        () -> new IllegalArgumentException("array must have a clearance carrier"));
    }

    private double decibels(double amplitude) {
        if (!(amplitude > 0 && reference > 0)) {
            throw new IllegalArgumentException(
                    "field at " + azimuth + " deg and at 0 deg must not vanish to have a level");
        }
        return 20 * Math.log10(amplitude / reference);
    }
}
