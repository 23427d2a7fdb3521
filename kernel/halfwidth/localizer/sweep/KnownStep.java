package halfwidth.localizer.sweep;

import halfwidth.localizer.uncertainty.Coverage;
import halfwidth.localizer.uncertainty.Estimate;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.hipparchus.distribution.continuous.FDistribution;

/**
 * How far a history stepped on a known day, told apart from a drift, which alone makes the values
 * from that day on differ from those before.
 *
 * <p>v(t) = level + step · [t ≥ day] + slope · max(0, t − start), by least squares over level,
 * step, slope and the start, from the first value's date, which makes a straight line, to that of
 * the last but one. The step is clear where the same curve without it has a sum of squares of more
 * than 1 + F/(n − 4) times that, F the 95 % quantile with 1 and n − 4 degrees of freedom. Where the
 * slope improves less than chance does (F with 2 and n − 4), the step is the difference of the two
 * means. These are the usual tests of nested models, approximate since the start is searched for
 * (G. A. F. Seber and C. J. Wild, Nonlinear Regression, Wiley 1989, section 5.8; from memory); the
 * uncertainty is that of an analysis of covariance with the start as found.
 *
 * @param size of the step, value after less value before (unit of the value)
 * @param clear whether no drift explains the values as well (95 %)
 */
public record KnownStep(Estimate size, boolean clear) {
    private static final double CONFIDENCE = 0.95;

    /** Level, step, slope and start are fitted. */
    private static final int FITTED = 4;

    private static final int FEWEST = 6;

    /** Two sums of squares that differ by less of all scatter differ by rounding. */
    private static final double ROUNDING = 1e-12;

    /**
     * Finds the step.
     *
     * @param history of at least 6 values
     * @param day of the change
     * @throws IllegalArgumentException if there are fewer than 6 values, or either side has fewer
     *     than 2
     */
    static KnownStep of(History history, LocalDate day) {
        List<Dated> values = history.values();
        if (values.size() < FEWEST) {
            throw new IllegalArgumentException(
                    "values must be at least "
                            + FEWEST
                            + " to tell a step from a drift, not "
                            + values.size());
        }
        Estimate means = history.stepAt(day);
        Fit drift = best(values, List.of(values));
        List<List<Dated>> sides =
                List.of(
                        values.stream().filter(v -> v.date().isBefore(day)).toList(),
                        values.stream().filter(v -> !v.date().isBefore(day)).toList());
        Fit both = best(values, sides);
        double level = Fit.level(sides).squares();
        double rounding = ROUNDING * Fit.level(List.of(values)).squares();
        int freedom = values.size() - FITTED;
        double t = Coverage.factor(CONFIDENCE, freedom);
        double f = new FDistribution(2, freedom).inverseCumulativeProbability(CONFIDENCE);
        boolean clear = drift.squares() > both.squares() * (1 + t * t / freedom) + rounding;
        boolean drifts = level > both.squares() * (1 + 2 * f / freedom) + rounding;
        return new KnownStep(drifts ? both.step(sides, freedom) : means, clear);
    }

    private static Fit best(List<Dated> values, List<List<Dated>> groups) {
        LocalDate last = values.get(values.size() - 2).date();
        return Stream.iterate(
                        values.get(0).date(), day -> !day.isAfter(last), day -> day.plusDays(1))
                .map(day -> Fit.from(day, groups))
                .min((one, other) -> Double.compare(one.squares(), other.squares()))
                .orElseThrow();
    }

    /**
     * A common slope from a day on, with a level for each group of values.
     *
     * @param spread sum of the squared distances of the years since that day from their means
     * @param squares sum of the squared distances of the values from the curve
     */
    private record Fit(LocalDate start, double slope, double spread, double squares) {

        static Fit level(List<List<Dated>> groups) {
            return from(LocalDate.MAX.minusDays(1), groups);
        }

        static Fit from(LocalDate start, List<List<Dated>> groups) {
            double spread = 0;
            double product = 0;
            double squares = 0;
            for (List<Dated> group : groups) {
                double years = meanYears(group, start);
                double mean = mean(group);
                for (Dated value : group) {
                    double x = yearsSince(start, value) - years;
                    double y = value.value() - mean;
                    spread += x * x;
                    product += x * y;
                    squares += y * y;
                }
            }
            double slope = spread > 0 ? product / spread : 0;
            return new Fit(start, slope, spread, Math.max(0, squares - slope * product));
        }

        Estimate step(List<List<Dated>> sides, int freedom) {
            List<Dated> before = sides.get(0);
            List<Dated> after = sides.get(1);
            double years = meanYears(after, start) - meanYears(before, start);
            double leverage = 1.0 / before.size() + 1.0 / after.size() + years * years / spread;
            return new Estimate(
                    mean(after) - mean(before) - slope * years,
                    Math.sqrt(squares / freedom * leverage));
        }

        private static double yearsSince(LocalDate start, Dated value) {
            return value.date().isAfter(start) ? value.yearsAfter(start) : 0;
        }

        private static double meanYears(List<Dated> group, LocalDate start) {
            double sum = 0;
            for (Dated value : group) {
                sum += yearsSince(start, value);
            }
            return sum / group.size();
        }

        private static double mean(List<Dated> group) {
            double sum = 0;
            for (Dated value : group) {
                sum += value.value();
            }
            return sum / group.size();
        }
    }
}
