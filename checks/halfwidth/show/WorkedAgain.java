package halfwidth.show;

import halfwidth.engine.PageHere;
import halfwidth.localizer.uncertainty.Estimate;
import halfwidth.run.Shown;
import java.lang.reflect.Method;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;

/**
 * A result that was worked out again from what is shown for it.
 *
 * @param same whether the same comes of it, within the digits printed
 * @param handingOn the page's methods on the way that only hand on to another, and so are shown
 *     without a formula
 * @param asTheyAre the page's methods that were called as they are, since they have no formula
 * @param found what came of it, and how far the digits that are not printed may move it
 */
record WorkedAgain(boolean same, Set<String> handingOn, Set<Method> asTheyAre, String found) {
    /** One number, or a value with its uncertainty; empty for nothing. */
    private record Quantity(List<Double> numbers) {
        static Quantity of(Object value) {
            if (value == Printed.None.NONE
                    || value instanceof Optional<?> o && o.isEmpty()
                    || value instanceof OptionalDouble d && d.isEmpty()
                    || value instanceof OptionalInt i && i.isEmpty()) {
                return new Quantity(List.of());
            }
            Object one = value instanceof Optional<?> optional ? optional.get() : value;
            if (one instanceof Estimate estimate) {
                return new Quantity(List.of(estimate.value(), estimate.standardUncertainty()));
            }
            return new Quantity(
                    List.of(
                            Fit.number(one)
                                    .orElseThrow(() -> new NotSaid("a number", List.of(one)))));
        }

        static Quantity of(Shown value) {
            if (value instanceof Shown.Measured measured) {
                return new Quantity(List.of(measured.value(), measured.standardUncertainty()));
            }
            if (value instanceof Shown.Whole whole) {
                return new Quantity(List.of((double) whole.value()));
            }
            return new Quantity(
                    value instanceof Shown.Real real ? List.of(real.value()) : List.of());
        }
    }

    /**
     * Reads the formula's plain text.
     *
     * @return empty if there is more in it than every reader knows
     */
    static Optional<WorkedAgain> byText(Displayed display) {
        Quantity result = Quantity.of(display.value());
        try {
            List<SecondEvaluator.Worked> worked =
                    SecondEvaluator.of(display.text(), display.methods());
            return Optional.of(
                    verdict(
                            worked.stream().map(SecondEvaluator.Worked::value).toList(),
                            worked.stream().map(SecondEvaluator.Worked::within).toList(),
                            result,
                            Set.of(),
                            Set.of()));
        } catch (IllegalArgumentException more) {
            return Optional.empty();
        }
    }

    /**
     * Reads the formula's terms.
     *
     * @throws NotSaid if what is shown does not suffice
     * @throws IllegalArgumentException if a call refuses its arguments
     */
    static WorkedAgain byTerms(PageHere page, Displayed display) {
        TermEvaluator first = new TermEvaluator(page, display, null, 0);
        Quantity value = Quantity.of(first.of(display.last()));
        double[] within = new double[value.numbers().size()];
        for (Printed.Place place : Printed.places(display.putIn())) {
            double[] up = moved(page, display, place, 1, value);
            double[] down = moved(page, display, place, -1, value);
            for (int i = 0; i < within.length; i++) {
                within[i] += Math.max(up[i], down[i]);
            }
        }
        List<Double> all = new ArrayList<>();
        for (double one : within) {
            all.add(one);
        }
        return verdict(
                value.numbers(),
                all,
                Quantity.of(display.value()),
                first.calls().handingOn(),
                first.calls().asTheyAre());
    }

    /** How far each number of the value is moved; not at all where that is refused. */
    private static double[] moved(
            PageHere page, Displayed display, Printed.Place place, int way, Quantity value) {
        double[] apart = new double[value.numbers().size()];
        try {
            TermEvaluator evaluator = new TermEvaluator(page, display, place, way);
            List<Double> moved = Quantity.of(evaluator.of(display.last())).numbers();
            for (int i = 0; i < apart.length && moved.size() == apart.length; i++) {
                double far = Math.abs(moved.get(i) - value.numbers().get(i));
                apart[i] = Double.isNaN(far) ? 0 : far;
            }
        } catch (IllegalArgumentException refused) {
            return new double[apart.length];
        }
        return apart;
    }

    private static WorkedAgain verdict(
            List<Double> found,
            List<Double> within,
            Quantity result,
            Set<String> handingOn,
            Set<Method> asTheyAre) {
        boolean same = found.size() == result.numbers().size();
        for (int i = 0; same && i < found.size(); i++) {
            double shown = result.numbers().get(i);
            double allowed = 1.01 * within.get(i) + SecondEvaluator.halfUnit(shown);
            same = Math.abs(found.get(i) - shown) <= allowed;
        }
        return new WorkedAgain(
                same,
                handingOn,
                asTheyAre,
                "%s within %s for %s".formatted(found, within, result.numbers()));
    }
}
