package halfwidth.localizer.receiver;

import halfwidth.localizer.Range;
import halfwidth.localizer.Require;
import halfwidth.localizer.uncertainty.Coverage;
import halfwidth.localizer.uncertainty.Estimate;
import halfwidth.localizer.uncertainty.LineFit;
import java.util.OptionalDouble;
import org.hipparchus.stat.StatUtils;

/**
 * A portable receiver checked against a source of known DDM.
 *
 * <p>The readings are taken as a straight line over the settings: reading = zero error + (1 + gain
 * error) · DDM. The source is taken as exact; what it is uncertain by comes on top.
 *
 * @param fit the line of reading over setting, both in DDM
 * @param checked from the least to the greatest setting (DDM)
 * @param repeatability standard deviation of readings at one setting, pooled over all settings that
 *     were repeated (DDM); empty if none was
 * @param step the step of the display (DDM)
 */
public record ReceiverCheck(LineFit fit, Range checked, OptionalDouble repeatability, double step) {
    private static final int FEWEST_READINGS = 5;
    private static final int FEWEST_SETTINGS = 3;
    private static final double CONFIDENCE = 0.95;

    /** What the errors call for. */
    public enum Finding {
        /** With 95 % confidence no error reaches half a step of the display. */
        WITHIN_RESOLUTION,
        /** With 95 % confidence an error is beyond half a step: correct the readings. */
        CORRECT_READINGS,
        /** The readings are too few or scatter too much to say either. */
        CANNOT_BE_TOLD
    }

    /**
     * Evaluates a check.
     *
     * @param settings DDM of the source at each reading (DDM), -1 to 1, at least 3 different ones;
     *     repeat some to learn the repeatability
     * @param readings what the receiver showed (DDM), -1 to 1, at least 5
     * @param step the step of the display (DDM), above 0
     * @return the check
     * @throws IllegalArgumentException if there are too few readings or settings, the columns
     *     differ in length, a value is outside its range, or the readings do not rise with the
     *     settings
     */
    public static ReceiverCheck of(double[] settings, double[] readings, double step) {
        Require.sameLength("settings and readings", settings.length, readings.length);
        Require.above("step of the display", step, 0, "");
        for (int i = 0; i < settings.length; i++) {
            Require.within("setting", settings[i], new Range(-1, 1), "");
            Require.within("reading", readings[i], new Range(-1, 1), "");
        }
        Repeats repeats = new Repeats(settings, readings);
        requireAtLeast("readings", readings.length, FEWEST_READINGS);
        requireAtLeast("different settings", repeats.settings(), FEWEST_SETTINGS);
        LineFit fit = LineFit.of(settings, readings);
        Require.above("slope of reading over setting", fit.slope().value(), 0, "");
        return new ReceiverCheck(
                fit,
                new Range(StatUtils.min(settings), StatUtils.max(settings)),
                repeats.pooledDeviation(),
                step);
    }

    private static void requireAtLeast(String what, int number, int fewest) {
        if (number < fewest) {
            throw new IllegalArgumentException(
                    what + " must be at least " + fewest + " for a check, not " + number);
        }
    }

    /**
     * Returns what the receiver reads when DDM is 0.
     *
     * @return the zero error with its standard uncertainty (DDM)
     */
    public Estimate zeroError() {
        return fit.intercept();
    }

    /**
     * Returns by how much the receiver reads too high for its deflection.
     *
     * @return the gain error with its standard uncertainty (%)
     */
    public Estimate gainErrorPercent() {
        return new Estimate(
                100 * (fit.slope().value() - 1), 100 * fit.slope().standardUncertainty());
    }

    /**
     * Returns the error of the receiver at a DDM: reading less DDM, by the line.
     *
     * @param ddm the DDM (DDM)
     * @return the error with the standard uncertainty of the line (DDM)
     * @throws IllegalArgumentException if {@code ddm} is not finite
     */
    public Estimate errorAt(double ddm) {
        Estimate reading = fit.at(ddm);
        return new Estimate(reading.value() - ddm, reading.standardUncertainty());
    }

    /**
     * Returns the uncertainty of a single reading: the greater of its scatter and the step / √12.
     *
     * <p>The scatter is the repeatability, or that about the line if no setting was repeated.
     *
     * @return the standard uncertainty (DDM)
     */
    public double readingUncertainty() {
        double scatter = repeatability.orElse(fit.residualDeviation());
        return Math.max(scatter, Estimate.readInSteps(0, step).standardUncertainty());
    }

    /**
     * Corrects a reading: DDM = (reading − zero error) / (1 + gain error).
     *
     * @param reading what the receiver shows (DDM)
     * @return the DDM with the standard uncertainty of line and reading together (DDM)
     * @throws IllegalArgumentException if {@code reading} is not finite
     */
    public Estimate correct(double reading) {
        Estimate byLine = fit.reaches(reading);
        return new Estimate(
                byLine.value(),
                Math.hypot(
                        byLine.standardUncertainty(), readingUncertainty() / fit.slope().value()));
    }

    /**
     * Tells whether a reading lies within what was checked, so that its correction is no guess.
     *
     * @param reading what the receiver shows (DDM)
     * @return true if its corrected value lies within the settings
     * @throws IllegalArgumentException if {@code reading} is not finite
     */
    public boolean covers(double reading) {
        return checked.contains(fit.reaches(reading).value());
    }

    /**
     * Says what the errors within the checked range call for.
     *
     * <p>A straight line errs most at an end of the range, so both ends are judged.
     *
     * @return the finding
     */
    public Finding finding() {
        double factor = Coverage.factor(CONFIDENCE, fit.degreesOfFreedom());
        Range low = errorAt(checked.least()).expanded(factor);
        Range high = errorAt(checked.most()).expanded(factor);
        Range half = new Range(-step / 2, step / 2);
        if (isBeyond(low, half) || isBeyond(high, half)) {
            return Finding.CORRECT_READINGS;
        }
        return isWithin(low, half) && isWithin(high, half)
                ? Finding.WITHIN_RESOLUTION
                : Finding.CANNOT_BE_TOLD;
    }

    private static boolean isBeyond(Range error, Range half) {
        return error.least() > half.most() || error.most() < half.least();
    }

    private static boolean isWithin(Range error, Range half) {
        return half.contains(error.least()) && half.contains(error.most());
    }
}
