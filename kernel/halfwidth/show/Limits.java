package halfwidth.show;

import halfwidth.page.Result;
import halfwidth.run.Run;
import halfwidth.run.Shown;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A result's limits as numbers.
 *
 * @param unknown what could not be resolved, with the reason; "" if nothing
 */
public record Limits(Optional<Limit> least, Optional<Limit> most, String unknown) {

    /**
     * One limit.
     *
     * @param at its value
     * @param typed how the page writes it where it is a number, "" where a variable holds it
     */
    public record Limit(double at, String typed) {
        /** The limit to be shown beside a value of so many decimals. */
        String shown(int decimals) {
            return typed.isEmpty() ? Numbers.fixed(at, decimals) : typed;
        }

        private BigDecimal written(int decimals) {
            return new BigDecimal(shown(decimals));
        }
    }

    static Limits of(Result result, Run run) {
        Optional<Limit> least = result.least().flatMap(text -> resolve(text, run));
        Optional<Limit> most = result.most().flatMap(text -> resolve(text, run));
        String unknown =
                Stream.of(
                                unresolved(result.least(), least, run),
                                unresolved(result.most(), most, run))
                        .filter(text -> !text.isEmpty())
                        .findFirst()
                        .orElse("");
        return new Limits(least, most, unknown);
    }

    boolean declared() {
        return least.isPresent() || most.isPresent() || !unknown.isEmpty();
    }

    /** How far a number is inside the nearest limit; negative if outside. */
    double margin(double number) {
        double above = least.map(limit -> number - limit.at()).orElse(Double.POSITIVE_INFINITY);
        double below = most.map(limit -> limit.at() - number).orElse(Double.POSITIVE_INFINITY);
        return Math.min(above, below);
    }

    /**
     * Whether a number and the limits, all written with so many decimals, say that it is inside.
     */
    boolean seemMet(double number, int decimals) {
        BigDecimal shown = new BigDecimal(Numbers.fixed(number, decimals));
        return least.map(limit -> shown.compareTo(limit.written(decimals)) >= 0).orElse(true)
                && most.map(limit -> shown.compareTo(limit.written(decimals)) <= 0).orElse(true);
    }

    boolean contradictory() {
        return least.isPresent() && most.isPresent() && least.get().at() > most.get().at();
    }

    private static Optional<Limit> resolve(String text, Run run) {
        try {
            BigDecimal typed = new BigDecimal(text.strip());
            return Optional.of(new Limit(typed.doubleValue(), typed.toPlainString()));
        } catch (NumberFormatException isAName) {
            return number(run.finals().get(text)).map(at -> new Limit(at, ""));
        }
    }

    private static String unresolved(Optional<String> declared, Optional<Limit> resolved, Run run) {
        if (declared.isEmpty() || resolved.isPresent()) {
            return "";
        }
        String name = declared.get();
        Shown value = run.finals().get(name);
        return value == null
                ? "its limit %s is %s".formatted(name, Absence.of(name, run))
                : "its limit %s is not a number".formatted(name);
    }

    /** The number that a value is, if it is one. */
    static Optional<Double> number(Shown value) {
        if (value instanceof Shown.Real real) {
            return Optional.of(real.value());
        }
        if (value instanceof Shown.Measured measured) {
            return Optional.of(measured.value());
        }
        if (value instanceof Shown.Whole whole) {
            return Optional.of((double) whole.value());
        }
        return Optional.empty();
    }
}
