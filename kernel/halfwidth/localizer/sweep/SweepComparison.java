package halfwidth.localizer.sweep;

import halfwidth.localizer.Range;
import halfwidth.localizer.Require;
import halfwidth.localizer.uncertainty.Estimate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.hipparchus.stat.StatUtils;

/**
 * A sweep against an earlier one, the other transmitter's, or a prediction.
 *
 * @param changes the azimuths that both have a reading at, at least one
 * @param notCompared the azimuths of either that the other has no reading at (deg), sorted
 */
public record SweepComparison(List<SweepChange> changes, List<Double> notCompared) {

    /**
     * @throws IllegalArgumentException if there is nothing to compare
     */
    public SweepComparison {
        changes = List.copyOf(changes);
        notCompared = List.copyOf(notCompared);
        if (changes.isEmpty()) {
            throw new IllegalArgumentException(
                    "sweeps must share at least one azimuth that both have a reading at");
        }
    }

    /**
     * Compares two sweeps where their azimuths match.
     *
     * @param before the earlier sweep, or the prediction
     * @param after the later sweep
     * @param tolerance how far apart matching azimuths may be (deg), 0 to 1
     * @return the comparison
     * @throws IllegalArgumentException if no azimuth matches or the tolerance is outside its range
     */
    public static SweepComparison of(Sweep before, Sweep after, double tolerance) {
        Require.within("tolerance of azimuth", tolerance, new Range(0, 1), "deg");
        List<SweepChange> changes = new ArrayList<>();
        List<SweepReading> open = new ArrayList<>(after.readings());
        List<SweepReading> lone = new ArrayList<>();
        for (SweepReading first : before.readings()) {
            SweepReading second = nearest(open, first.azimuth(), tolerance);
            open.remove(second);
            if (second == null || first.isMissing() || second.isMissing()) {
                lone.add(first);
            } else {
                changes.add(new SweepChange(first.azimuth(), first.value(), second.value()));
            }
        }
        lone.addAll(open);
        return new SweepComparison(
                changes, lone.stream().map(SweepReading::azimuth).distinct().sorted().toList());
    }

    private static SweepReading nearest(
            List<SweepReading> readings, double azimuth, double tolerance) {
        return readings.stream()
                .filter(one -> Math.abs(one.azimuth() - azimuth) <= tolerance)
                .min(Comparator.comparingDouble(one -> Math.abs(one.azimuth() - azimuth)))
                .orElse(null);
    }

    /**
     * Returns the root of the mean square of the changes.
     *
     * @return the size of a typical change (DDM)
     */
    public double rootMeanSquare() {
        return Math.sqrt(StatUtils.sumSq(values()) / changes.size());
    }

    /**
     * Returns the mean change.
     *
     * @return the mean (DDM): what a common offset would give
     */
    public double meanChange() {
        return StatUtils.mean(values());
    }

    /**
     * Returns the azimuth of the greatest change by size.
     *
     * @return the change there
     */
    public SweepChange worst() {
        return changes.stream()
                .max(Comparator.comparingDouble(one -> Math.abs(one.change())))
                .orElseThrow();
    }

    /**
     * Returns how large a change is beside what the readings allow: t = change / (√2 u).
     *
     * @param change one of the changes
     * @param readingUncertainty u, the standard uncertainty of a single reading (DDM), above 0
     * @return t (1); beyond ±2 a lone change is unlikely to be chance, but of many compared one in
     *     twenty passes that by chance
     * @throws IllegalArgumentException if {@code readingUncertainty} is not above 0
     */
    public static double significance(SweepChange change, double readingUncertainty) {
        Require.above("reading uncertainty", readingUncertainty, 0, "");
        return change.change() / (Math.sqrt(2) * readingUncertainty);
    }

    /**
     * Returns the change of a figure that two sweeps gave, with the uncertainties of both.
     *
     * @param before the figure of the earlier sweep (unit of the figure)
     * @param after the figure of the later sweep (unit of the figure)
     * @return after less before (unit of the figure); the two taken as independent
     */
    public static Estimate difference(Estimate before, Estimate after) {
        return new Estimate(
                after.value() - before.value(),
                Math.hypot(before.standardUncertainty(), after.standardUncertainty()));
    }

    /**
     * Returns how large a difference is beside its uncertainty: t = value / u.
     *
     * @param difference the difference (unit of the figure)
     * @return t (1)
     * @throws IllegalArgumentException if the difference has no uncertainty
     */
    public static double significance(Estimate difference) {
        Require.above("standard uncertainty", difference.standardUncertainty(), 0, "");
        return difference.value() / difference.standardUncertainty();
    }

    private double[] values() {
        return changes.stream().mapToDouble(SweepChange::change).toArray();
    }
}
