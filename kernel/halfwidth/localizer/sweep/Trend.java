package halfwidth.localizer.sweep;

import halfwidth.localizer.Range;
import halfwidth.localizer.Require;
import halfwidth.localizer.uncertainty.Coverage;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Optional;
import org.hipparchus.stat.StatUtils;

/**
 * A trend by the median of all slopes between two values.
 *
 * <p>P. K. Sen, Estimates of the regression coefficient based on Kendall's tau, J. Am. Stat. Assoc.
 * 63 (1968) 1379; the interval by its normal approximation, which is rough for fewer than about ten
 * values.
 *
 * @param slope the median slope (unit of the value per year)
 * @param slopeInterval where the slope lies with 95 % confidence (unit of the value per year)
 * @param start the date of the first value
 * @param atStart the trend's value on that date (unit of the value)
 */
public record Trend(double slope, Range slopeInterval, LocalDate start, double atStart) {
    private static final double CONFIDENCE = 0.95;

    /** Beyond this a straight line says nothing any more. */
    private static final double FURTHEST_YEARS = 200;

    static Trend of(History history) {
        double[] years = history.years();
        double[] values = history.numbers();
        double[] slopes = slopes(years, values);
        double slope = StatUtils.percentile(slopes, 50);
        double[] starts = new double[values.length];
        Arrays.setAll(starts, i -> values[i] - slope * years[i]);
        return new Trend(
                slope,
                interval(slopes, values.length),
                history.values().get(0).date(),
                StatUtils.percentile(starts, 50));
    }

    /** All slopes between two values, sorted. */
    private static double[] slopes(double[] years, double[] values) {
        int n = values.length;
        double[] slopes = new double[n * (n - 1) / 2];
        int next = 0;
        for (int i = 0; i < n; i++) {
            for (int j = i + 1; j < n; j++) {
                slopes[next++] = (values[j] - values[i]) / (years[j] - years[i]);
            }
        }
        Arrays.sort(slopes);
        return slopes;
    }

    /** The slopes that stand C/2 from the middle, C = z √(n (n−1) (2n+5) / 18). */
    private static Range interval(double[] sorted, int n) {
        double z = Coverage.factor(CONFIDENCE, Double.POSITIVE_INFINITY);
        double reach = z * Math.sqrt(n * (n - 1.0) * (2 * n + 5) / 18);
        int below = (int) Math.floor((sorted.length - reach) / 2);
        int low = Math.max(0, below - 1);
        return new Range(sorted[low], sorted[sorted.length - 1 - low]);
    }

    /**
     * Tells whether the interval of the slope leaves out 0.
     *
     * @return true if the values drift, with 95 % confidence
     */
    public boolean isDrift() {
        return !slopeInterval.contains(0);
    }

    /**
     * Returns the trend's value at a date.
     *
     * @param date the date
     * @return the value (unit of the value)
     */
    public double at(LocalDate date) {
        return atStart + slope * new Dated(date, 0).yearsAfter(start);
    }

    /**
     * Returns when the trend reaches a limit, if the drift goes on as it did.
     *
     * @param limit the limit (unit of the value)
     * @param from the day to count from, usually that of the last value
     * @return the date, empty if the trend leads away from the limit, has passed it, or needs more
     *     than 200 years
     * @throws IllegalArgumentException if {@code limit} is not finite
     */
    public Optional<LocalDate> reaches(double limit, LocalDate from) {
        return dateAt(slope, limit - at(from), from);
    }

    /**
     * Returns the earliest date that the interval of the slope allows, from the trend's value of
     * the day.
     *
     * @param limit the limit (unit of the value)
     * @param from the day to count from, usually that of the last value
     * @return the date, empty if no slope of the interval reaches the limit within 200 years
     * @throws IllegalArgumentException if {@code limit} is not finite
     */
    public Optional<LocalDate> reachesEarliest(double limit, LocalDate from) {
        double steepest = limit > at(from) ? slopeInterval.most() : slopeInterval.least();
        return dateAt(steepest, limit - at(from), from);
    }

    /** The day on which a distance from a limit is gone. */
    static Optional<LocalDate> dateAt(double withSlope, double toLimit, LocalDate from) {
        Require.finite("distance to the limit", toLimit, "");
        double years = toLimit / withSlope;
        return years > 0 && years <= FURTHEST_YEARS
                ? Optional.of(from.plusDays(Math.round(years * Dated.DAYS_OF_A_YEAR)))
                : Optional.empty();
    }
}
