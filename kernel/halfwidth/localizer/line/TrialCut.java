package halfwidth.localizer.line;

import halfwidth.localizer.Require;
import halfwidth.localizer.uncertainty.Estimate;
import halfwidth.localizer.uncertainty.LineFit;
import halfwidth.localizer.uncertainty.Propagation;
import halfwidth.localizer.uncertainty.Quantity;

/**
 * What a cut of known length tells of a line: its phase constant, β = Δφ / (p ΔL).
 *
 * @param phaseConstant the phase constant with its standard uncertainty (deg/m)
 * @param frequency where the phases were read (Hz)
 */
public record TrialCut(Estimate phaseConstant, double frequency) {

    /**
     * @throws IllegalArgumentException if the phase constant or the frequency is not above 0
     */
    public TrialCut {
        Require.above("phase constant", phaseConstant.value(), 0, "deg/m");
        Require.above("frequency", frequency, 0, "Hz");
    }

    /**
     * Takes the phase constant from one cut.
     *
     * @param removed the length cut off, with the uncertainty of the rule (m), above 0
     * @param readingChange how far the reading rose by it, with its uncertainty (deg), above 0:
     *     whole turns must be included
     * @param measurement how the phases were measured
     * @param frequency where they were read (Hz)
     * @return the phase constant
     * @throws IllegalArgumentException if a value is not above 0
     */
    public static TrialCut ofOne(
            Estimate removed, Estimate readingChange, Measurement measurement, double frequency) {
        Require.above("length removed", removed.value(), 0, "m");
        Require.above("change of reading", readingChange.value(), 0, "deg");
        Estimate found =
                Propagation.of(
                                x -> x[1] / (measurement.passes() * x[0]),
                                Quantity.of("length removed", removed),
                                Quantity.of("change of reading", readingChange))
                        .result();
        return new TrialCut(found, frequency);
    }

    /**
     * Takes the phase constant from several cuts of one piece, by least squares.
     *
     * @param removed the total cut off before each reading (m), at least 3, not all the same; 0 for
     *     the reading before the first cut
     * @param readings what the analyser showed (deg); joined here
     * @param measurement how the phases were measured
     * @param frequency where they were read (Hz)
     * @return the phase constant, its uncertainty from the scatter
     * @throws IllegalArgumentException if the columns make no line or the phase does not rise as
     *     the line gets shorter
     */
    public static TrialCut ofSeveral(
            double[] removed, double[] readings, Measurement measurement, double frequency) {
        Estimate slope = LineFit.of(removed, PhaseSequence.join(readings).joined()).slope();
        return new TrialCut(
                new Estimate(
                        slope.value() / measurement.passes(),
                        slope.standardUncertainty() / measurement.passes()),
                frequency);
    }

    /**
     * Returns the velocity factor: VF = 360 f / (c β).
     *
     * @return the velocity factor with its standard uncertainty (1)
     * @throws IllegalArgumentException if it is above 1, which no line reaches
     */
    public Estimate velocityFactor() {
        double factor = line().velocityFactor();
        double relative = phaseConstant.standardUncertainty() / phaseConstant.value();
        return new Estimate(factor, factor * relative);
    }

    /**
     * Returns the line of this phase constant.
     *
     * @return the line, at the frequency of the readings
     * @throws IllegalArgumentException if its velocity factor is above 1, which no line reaches
     */
    public Line line() {
        return Line.ofPhaseConstant(phaseConstant.value(), frequency);
    }
}
