package halfwidth.plot;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.DoubleSummaryStatistics;
import java.util.stream.DoubleStream;

/**
 * The stretch of an axis: the step is 1, 2 or 5 times a power of ten, and both ends are whole
 * multiples of half a step.
 */
record Span(double low, double high, double step) {
    /** Room between the outermost values and the ends, in parts of their spread. */
    private static final double MARGIN = 0.02;

    /** A spread smaller than this part of the values is the noise of their arithmetic. */
    private static final double NO_SPREAD = 1e-9;

    /**
     * Returns the stretch that shows all values with a little room.
     *
     * @param values what to show; NaN is ignored
     * @param steps about how many steps to divide it into
     */
    static Span around(DoubleStream values, int steps) {
        DoubleSummaryStatistics seen =
                values.filter(value -> !Double.isNaN(value)).summaryStatistics();
        if (seen.getCount() == 0) {
            return new Span(0, 1, 0.2);
        }
        double least = seen.getMin();
        double most = seen.getMax();
        double size = Math.max(Math.abs(least), Math.abs(most));
        double spread = most - least;
        if (spread <= NO_SPREAD * size || spread == 0) {
            double room = size == 0 ? 1 : size / 10;
            return of(least - room, most + room, steps);
        }
        return of(least - MARGIN * spread, most + MARGIN * spread, steps);
    }

    private static Span of(double least, double most, int steps) {
        double step = round((most - least) / steps);
        double half = step / 2;
        return new Span(
                tidy(Math.floor(least / half), half), tidy(Math.ceil(most / half), half), step);
    }

    /** A multiple of the step without the noise that 3 × 0.1 has. */
    private static double tidy(double times, double step) {
        return new BigDecimal(times * step).round(new MathContext(12)).doubleValue();
    }

    /** The next of 1, 2, 5 × 10ⁿ that is not smaller. */
    private static double round(double step) {
        int power = (int) Math.floor(Math.log10(step));
        double lead = step / Math.pow(10, power);
        int nice = lead <= 1 ? 1 : lead <= 2 ? 2 : lead <= 5 ? 5 : 10;
        return BigDecimal.valueOf(nice).scaleByPowerOfTen(power).doubleValue();
    }

    double length() {
        return high - low;
    }

    /** How the ends of the steps are written, as a {@link java.text.DecimalFormat} pattern. */
    String pattern() {
        double size = Math.max(Math.abs(low), Math.abs(high));
        if (size >= 1e7 || step < 1e-6) {
            return "0.###E0";
        }
        int decimals = (int) Math.max(0, -Math.floor(Math.log10(step) + 1e-9));
        return decimals == 0 ? "0" : "0." + "0".repeat(decimals);
    }
}
