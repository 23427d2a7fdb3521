package halfwidth.localizer.sweep;

import halfwidth.localizer.uncertainty.Estimate;
import halfwidth.localizer.uncertainty.LineFit;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.hipparchus.stat.StatUtils;

/**
 * A figure of one station over the years.
 *
 * @param values the values, at least 4, sorted by date here, no two of one date
 */
public record History(List<Dated> values) {
    private static final int FEWEST = 4;

    /**
     * @throws IllegalArgumentException if there are fewer than 4 values or two are of one date
     */
    public History {
        List<Dated> sorted = new ArrayList<>(values);
        sorted.sort(Comparator.comparing(Dated::date));
        if (sorted.size() < FEWEST) {
            throw new IllegalArgumentException(
                    "values must be at least " + FEWEST + " to show a trend, not " + sorted.size());
        }
        for (int i = 1; i < sorted.size(); i++) {
            if (sorted.get(i).date().equals(sorted.get(i - 1).date())) {
                throw new IllegalArgumentException(
                        "date " + sorted.get(i).date() + " must stand once");
            }
        }
        values = List.copyOf(sorted);
    }

    /**
     * Returns the trend by the median of all slopes between two values (Theil and Sen), which a
     * stray value or two do not move.
     *
     * @return the trend
     */
    public Trend trend() {
        return Trend.of(this);
    }

    /**
     * Returns the trend by least squares, which every value moves.
     *
     * @return the line of the value over the years since the first date; uncertainties from the
     *     scatter
     */
    public LineFit regression() {
        return LineFit.of(years(), numbers());
    }

    /**
     * Returns where the values most likely stepped.
     *
     * @return the step
     */
    public StepChange likeliestStep() {
        return StepChange.likeliest(this);
    }

    /**
     * Returns since when the values drift, after they had been level.
     *
     * @return the start of the drift; empty with fewer than 6 values, or where a straight line from
     *     the first value on is not clearly worse (95 %)
     */
    public Optional<DriftStart> driftStart() {
        return DriftStart.of(this);
    }

    /**
     * Returns how far the values stepped at a known date, as of a repair.
     *
     * @param date the day of the change, after the first value and at most the last
     * @return mean from that day on less mean before (unit of the history); the standard
     *     uncertainty from the scatter on both sides: u² = s₁²/n₁ + s₂²/n₂
     * @throws IllegalArgumentException if either side has fewer than 2 values
     */
    public Estimate stepAt(LocalDate date) {
        double[] before = part(value -> value.date().isBefore(date));
        double[] after = part(value -> !value.date().isBefore(date));
        if (before.length < 2 || after.length < 2) {
            throw new IllegalArgumentException(
                    "values before and after "
                            + date
                            + " must be at least 2 each, not "
                            + before.length
                            + " and "
                            + after.length);
        }
        return new Estimate(
                StatUtils.mean(after) - StatUtils.mean(before),
                Math.sqrt(
                        StatUtils.variance(before) / before.length
                                + StatUtils.variance(after) / after.length));
    }

    /**
     * Returns how far the values stepped at a known date, beside a drift that there may be.
     *
     * @param date the day of the change, after the first value and at most the last
     * @return the step (unit of the history), and whether no drift explains the values as well
     * @throws IllegalArgumentException if there are fewer than 6 values, or either side has fewer
     *     than 2
     */
    public KnownStep stepBesideDrift(LocalDate date) {
        return KnownStep.of(this, date);
    }

    double[] years() {
        LocalDate start = values.get(0).date();
        return values.stream().mapToDouble(value -> value.yearsAfter(start)).toArray();
    }

    double[] numbers() {
        return values.stream().mapToDouble(Dated::value).toArray();
    }

    private double[] part(Predicate<Dated> which) {
        return values.stream().filter(which).mapToDouble(Dated::value).toArray();
    }
}
