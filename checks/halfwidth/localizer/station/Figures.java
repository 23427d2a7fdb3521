package halfwidth.localizer.station;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.DoublePredicate;
import org.hipparchus.stat.descriptive.rank.Percentile;

/** What many stations gave of one figure. */
final class Figures {
    private final List<Double> values = new ArrayList<>();

    void add(double value) {
        values.add(value);
    }

    int number() {
        return values.size();
    }

    double percentile(double percent) {
        return new Percentile(percent)
                .evaluate(values.stream().mapToDouble(Double::doubleValue).toArray());
    }

    double greatest() {
        return values.stream().mapToDouble(Double::doubleValue).max().orElseThrow();
    }

    double share(DoublePredicate wanted) {
        return (double) count(wanted) / number();
    }

    long count(DoublePredicate wanted) {
        return values.stream().mapToDouble(Double::doubleValue).filter(wanted).count();
    }

    double rootMeanSquare() {
        return Math.sqrt(values.stream().mapToDouble(v -> v * v).average().orElseThrow());
    }

    /** Median, 95th percentile and greatest, times a factor for the unit shown. */
    String spread(double factor) {
        return String.format(
                Locale.ROOT,
                "%9.3g %9.3g %9.3g",
                factor * percentile(50),
                factor * percentile(95),
                factor * greatest());
    }

    /** For errors in units of their stated uncertainty: the share within 2, and their RMS. */
    String honesty() {
        return String.format(
                Locale.ROOT,
                "%5.1f %% %6.2f",
                100 * share(z -> Math.abs(z) <= 2),
                rootMeanSquare());
    }
}
