package halfwidth.localizer.line;

import halfwidth.localizer.Require;
import halfwidth.localizer.uncertainty.Estimate;
import halfwidth.localizer.uncertainty.LineFit;

/**
 * The straight line of phase over frequency, whose slope is the delay of a line without any turn
 * left open.
 *
 * <p>φ = −360 p f τ with p passes and the delay τ, so τ = −slope / (360 p). It holds for a line
 * without filters and with its reference planes at its ends: what the test leads add must be
 * calibrated out.
 */
public final class PhaseSlope {
    private static final double TURN = 360;

    private final LineFit fit;
    private final Measurement measurement;

    private PhaseSlope(LineFit fit, Measurement measurement) {
        this.fit = fit;
        this.measurement = measurement;
    }

    /**
     * Fits joined phases by linear regression.
     *
     * @param frequencies where the phases were read (Hz), at least 3, not all the same, in the
     *     order of the readings
     * @param readings what the analyser shows (deg); joined here, so neighbours must lie within
     *     half a turn: see {@link PhaseSequence#largestStep()}
     * @param measurement how the phases were measured
     * @return the slope
     * @throws IllegalArgumentException if the columns make no line, or the phase does not fall as
     *     the frequency rises: then steps were too wide, or the sign is turned over
     */
    public static PhaseSlope fit(double[] frequencies, double[] readings, Measurement measurement) {
        for (double frequency : frequencies) {
            Require.above("frequency", frequency, 0, "Hz");
        }
        LineFit fit = LineFit.of(frequencies, PhaseSequence.join(readings).joined());
        if (!(fit.slope().value() < 0)) {
            throw new IllegalArgumentException(
                    "phase slope "
                            + fit.slope().value()
                            + " deg/Hz must be below 0: a line delays, so its phase falls as the"
                            + " frequency rises");
        }
        return new PhaseSlope(fit, measurement);
    }

    /**
     * Returns the delay of the line: τ = −slope / (360 p).
     *
     * @return the delay with its standard uncertainty (s)
     */
    public Estimate delay() {
        return scaled(1 / (TURN * measurement.passes()));
    }

    /**
     * Returns the electrical length at a frequency, all its turns included: φ = 360 f τ.
     *
     * @param frequency f (Hz), above 0
     * @return the electrical length with its standard uncertainty (deg)
     * @throws IllegalArgumentException if {@code frequency} is not finite and above 0
     */
    public Estimate electricalLength(double frequency) {
        return scaled(Require.above("frequency", frequency, 0, "Hz") / measurement.passes());
    }

    /**
     * Returns the length of cable of a known velocity factor: L = τ c VF.
     *
     * @param velocityFactor VF (1), above 0, at most 1
     * @return the length with the standard uncertainty of the slope alone (m)
     * @throws IllegalArgumentException if the velocity factor is impossible
     */
    public Estimate length(double velocityFactor) {
        Line line = new Line(velocityFactor, 1);
        return scaled(Line.SPEED_OF_LIGHT * line.velocityFactor() / (TURN * measurement.passes()));
    }

    /**
     * Returns how far the phases scatter about the line.
     *
     * @return the standard deviation (deg)
     */
    public double residualDeviation() {
        return fit.residualDeviation();
    }

    /**
     * Counts the turns of a phase that was read at one frequency.
     *
     * @param frequency where it was read (Hz)
     * @param reading what the analyser showed, with its standard uncertainty (deg)
     * @param coverageFactor how many standard uncertainties to allow (1), above 0: 2 leaves one
     *     true count in twenty out, 3 one in three hundred
     * @return the count, and whether it can be told
     * @throws IllegalArgumentException if an argument is not finite or not above 0
     */
    public TurnCount count(double frequency, Estimate reading, double coverageFactor) {
        Require.above("coverage factor", coverageFactor, 0, "");
        Estimate slope = electricalLength(frequency);
        double ambiguity = measurement.ambiguity();
        double fine = -reading.value() / measurement.passes();
        double fineUncertainty = reading.standardUncertainty() / measurement.passes();
        return new TurnCount(
                fine - ambiguity * Math.floor(fine / ambiguity),
                ambiguity,
                new Estimate(
                        slope.value(), Math.hypot(slope.standardUncertainty(), fineUncertainty)),
                coverageFactor);
    }

    private Estimate scaled(double factor) {
        return new Estimate(
                -fit.slope().value() * factor, fit.slope().standardUncertainty() * factor);
    }
}
