package halfwidth.localizer.station;

import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.localizer.uncertainty.Estimate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.DoublePredicate;
import org.hipparchus.stat.StatUtils;

/** What many stations gave of one figure. */
final class Figures {
    private final List<Double> values = new ArrayList<>();

    void add(double value) {
        values.add(value);
    }

    /** Adds how far off a stated value is, in units of its standard uncertainty. */
    void add(Estimate stated, double truth) {
        add((stated.value() - truth) / stated.standardUncertainty());
    }

    int number() {
        return values.size();
    }

    double percentile(double percent) {
        return StatUtils.percentile(array(), percent);
    }

    double greatest() {
        return StatUtils.max(array());
    }

    double share(DoublePredicate wanted) {
        return (double) count(wanted) / number();
    }

    long count(DoublePredicate wanted) {
        return values.stream().mapToDouble(Double::doubleValue).filter(wanted).count();
    }

    /** Prints the number of values, their median, 95th percentile and greatest. */
    void printSpread(String what, String unit) {
        System.out.printf(
                Locale.ROOT,
                "  %-34s n %4d  median %8.3g  95 %% %8.3g  greatest %8.3g %s%n",
                what,
                number(),
                percentile(50),
                percentile(95),
                greatest(),
                unit);
    }

    /**
     * Prints and checks errors in units of their stated uncertainty. For normal errors 95.4 % lie
     * within two and their root mean square is 1; 93 % is three binomial standard deviations below
     * for 500 values. A uniform error (the piece for phasing) has all of them within two, but the
     * same root mean square: 1, give or take 0.03 for 500 values. The step of a display that is
     * taken into account where a mean has lost it makes a stated uncertainty up to a quarter too
     * large, never too small.
     */
    void printAndCheckHonesty(String what) {
        double within = share(z -> Math.abs(z) <= 2);
        double rms = Math.sqrt(StatUtils.sumSq(array()) / number());
        System.out.printf(
                Locale.ROOT,
                "  %-34s n %4d  within 2 u: %5.1f %%  rms error/u %4.2f%n",
                what,
                number(),
                100 * within,
                rms);
        assertTrue(within >= 0.93, what + " within 2 u: " + within);
        assertTrue(rms > 0.75 && rms < 1.15, what + " rms: " + rms);
    }

    private double[] array() {
        return values.stream().mapToDouble(Double::doubleValue).toArray();
    }
}
