package halfwidth.localizer.transmit;

import halfwidth.localizer.Range;
import halfwidth.localizer.Require;
import halfwidth.localizer.signal.Decibel;
import halfwidth.localizer.uncertainty.Estimate;

/**
 * How the SBO amplitude has to change for a width.
 *
 * <p>The deflection at a point is proportional to the SBO amplitude at constant carrier (DDM = 2
 * S/C cos φ), so new/old amplitude = target/measured. Both sides together are the figure to set;
 * what they differ by no SBO setting changes, and {@link #centring()} reports it. For the course
 * the two points are the half-width points and the target 0.155; for the clearance they are points
 * of its own with a target of their own.
 *
 * @param measured DDM at the two points
 * @param target the deflection wanted at each of them (DDM), above 0
 */
public record WidthCorrection(BothSides measured, double target) {

    /**
     * @throws IllegalArgumentException if the target is not above 0 and at most 1, or the measured
     *     deflection is not above the receiver's resolution
     */
    public WidthCorrection {
        Require.above("target deflection", target, 0, "");
        Require.within("target deflection", target, new Range(0, 1), "");
        double deflection = measured.deflection().value();
        if (!(deflection > measured.resolution())) {
            throw new IllegalArgumentException(
                    String.format(
                            "deflection %.4g must be above the receiver's resolution %.4g: each"
                                    + " side has to read its own tone; is a sign mistyped, or the"
                                    + " SBO signal off or reversed?",
                            deflection, measured.resolution()));
        }
    }

    /**
     * Returns the amplitude to set over that now set: A = target/deflection, u(A) = A u(d)/d.
     *
     * @return A (1), above 1 to make the width narrower
     */
    public Estimate amplitudeRatio() {
        Estimate deflection = measured.deflection();
        double ratio = target / deflection.value();
        return new Estimate(ratio, ratio * deflection.standardUncertainty() / deflection.value());
    }

    /**
     * Returns the power to set over that now set: A², u = 2 A u(A).
     *
     * @return the power ratio (1)
     */
    public Estimate powerRatio() {
        Estimate a = amplitudeRatio();
        return new Estimate(a.value() * a.value(), 2 * a.value() * a.standardUncertainty());
    }

    /**
     * Returns the change in decibels: 20 log10 A, which is 10 log10 of the power ratio.
     *
     * @return the change (dB), positive = more SBO
     */
    public Estimate decibels() {
        Estimate a = amplitudeRatio();
        return new Estimate(
                Decibel.ofAmplitudeRatio(a.value()),
                20 / Math.log(10) * a.standardUncertainty() / a.value());
    }

    /**
     * Returns the width as it is over the width wanted, within the linear region:
     * target/deflection.
     *
     * @return the ratio (1), above 1 where the sector is too wide
     */
    public Estimate widthRatio() {
        return amplitudeRatio();
    }

    /**
     * Returns what the two sides have in common, which the SBO amplitude does not set: half their
     * sum, from the offset of the course line and from an asymmetric pattern.
     *
     * @return the centring (DDM), positive = 150 Hz predominates in the middle
     */
    public Estimate centring() {
        return measured.centring();
    }

    /**
     * Returns the part of the whole deflection that the 150 Hz side has: on150/(on150 − on90).
     *
     * @return the part (%), 50 when the sides are alike
     */
    public double partOf150Side() {
        return 100 * measured.on150() / (measured.on150() - measured.on90());
    }
}
