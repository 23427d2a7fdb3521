package halfwidth.localizer.sweep;

import halfwidth.localizer.uncertainty.Coverage;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.hipparchus.stat.regression.SimpleRegression;

/**
 * Since when a history drifts: level until a day, a straight line from that day on.
 *
 * <p>v(t) = level + slope · max(0, t − start), by least squares over the days from the second value
 * to the last but one. The interval holds the days at which the sum of squares is at most 1 +
 * F/(n−3) times the least one, F the 95 % quantile with 1 and n − 3 degrees of freedom, which is
 * the square of Student's t: the usual region of a nonlinear fit, approximate (G. A. F. Seber and
 * C. J. Wild, Nonlinear Regression, Wiley 1989, section 5.4; from memory).
 *
 * @param start the day from which on it drifts
 * @param earliest the earliest day that the values allow with 95 % confidence
 * @param latest the latest one
 * @param level before that day (unit of the value)
 * @param slope from that day on (unit of the value per year)
 * @param squares sum of the squared distances of the values from this curve (unit of the squared
 *     value)
 */
public record DriftStart(
        LocalDate start,
        LocalDate earliest,
        LocalDate latest,
        double level,
        double slope,
        double squares) {
    private static final double CONFIDENCE = 0.95;

    /** Level, slope and day are fitted; there must be more values than these. */
    private static final int FITTED = 3;

    private static final int FEWEST = 6;

    /** Finds the day; empty where a straight line from the first value on is as good. */
    static Optional<DriftStart> of(History history) {
        List<Dated> values = history.values();
        if (values.size() < FEWEST) {
            return Optional.empty();
        }
        LocalDate last = values.get(values.size() - 2).date();
        List<DriftStart> days = new ArrayList<>();
        for (LocalDate day = values.get(1).date(); !day.isAfter(last); day = day.plusDays(1)) {
            days.add(from(day, values));
        }
        DriftStart best =
                days.stream().min(Comparator.comparing(DriftStart::squares)).orElseThrow();
        double most = best.squares() * (1 + excess(values.size()));
        boolean bends = from(values.get(0).date(), values).squares() > most;
        return bends ? Optional.of(best.among(days, most)) : Optional.empty();
    }

    private static double excess(int values) {
        double t = Coverage.factor(CONFIDENCE, values - FITTED);
        return t * t / (values - FITTED);
    }

    private static DriftStart from(LocalDate day, List<Dated> values) {
        SimpleRegression line = new SimpleRegression();
        values.forEach(value -> line.addData(Math.max(0, value.yearsAfter(day)), value.value()));
        return new DriftStart(
                day,
                day,
                day,
                line.getIntercept(),
                line.getSlope(),
                Math.max(0, line.getSumSquaredErrors()));
    }

    private DriftStart among(List<DriftStart> days, double most) {
        List<LocalDate> allowed =
                days.stream().filter(day -> day.squares() <= most).map(DriftStart::start).toList();
        return new DriftStart(
                start, allowed.get(0), allowed.get(allowed.size() - 1), level, slope, squares);
    }

    /**
     * Returns the curve's value at a date.
     *
     * @param date the date
     * @return the value (unit of the value)
     */
    public double at(LocalDate date) {
        return level + slope * Math.max(0, new Dated(date, 0).yearsAfter(start));
    }

    /**
     * Returns when the drift reaches a limit, if it goes on as it did.
     *
     * @param limit the limit (unit of the value)
     * @param from the day to count from, usually that of the last value
     * @return the date, empty if the drift leads away from the limit, has passed it, or needs more
     *     than 200 years
     * @throws IllegalArgumentException if {@code limit} is not finite
     */
    public Optional<LocalDate> reaches(double limit, LocalDate from) {
        return Trend.dateAt(slope, limit - at(from), from);
    }
}
