package halfwidth.demo;

import halfwidth.page.Page;
import halfwidth.page.Result;
import halfwidth.run.Outcome;
import halfwidth.run.Run;
import halfwidth.run.Shown;
import java.math.BigDecimal;
import java.math.RoundingMode;

/** What a page came to on one visit. */
record Visit(String place, Page page, Run run) {

    Visit {
        run.steps().stream()
                .filter(ran -> ran.outcome() instanceof Outcome.Failed)
                .findFirst()
                .ifPresent(
                        ran -> {
                            throw new AssertionError(place + ": " + ran);
                        });
    }

    private Shown value(String name) {
        Shown value = run.finals().get(name);
        if (value == null) {
            value =
                    run.steps().stream()
                            .filter(ran -> ran.step().name().equals(name))
                            .map(Run.Ran::outcome)
                            .filter(Outcome.Done.class::isInstance)
                            .map(outcome -> ((Outcome.Done) outcome).value())
                            .reduce((earlier, later) -> later)
                            .orElseThrow(() -> new AssertionError(place + " has no " + name));
        }
        return value;
    }

    double number(String name) {
        Shown value = value(name);
        if (value instanceof Shown.Whole whole) {
            return whole.value();
        }
        return value instanceof Shown.Measured measured
                ? measured.value()
                : ((Shown.Real) value).value();
    }

    String words(String name) {
        Shown value = value(name);
        if (value instanceof Shown.Advice advice) {
            return advice.action().words();
        }
        return value instanceof Shown.Words words ? words.text() : "";
    }

    Shown.Grid grid(String name) {
        return (Shown.Grid) value(name);
    }

    /** The standard uncertainty that the page states for a result. */
    double uncertainty(String name) {
        return number(result(name).uncertainty().orElseThrow());
    }

    private Result result(String name) {
        return page.results().stream()
                .filter(result -> result.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new AssertionError(place + " has no result " + name));
    }

    /** A result as the sheet prints it and the next page takes it. */
    String printed(String name) {
        Result result = result(name);
        String unit = result.unit().equals("1") || result.unit().equals("DDM") ? "" : result.unit();
        return (Typed.number(number(name), result.decimals()) + " " + unit).strip();
    }

    /** The standard uncertainty of a result, with two figures and the result's unit. */
    String printedUncertainty(String name) {
        BigDecimal two =
                new BigDecimal(uncertainty(name))
                        .round(new java.math.MathContext(2, RoundingMode.HALF_EVEN));
        String unit = result(name).unit();
        return (two.toPlainString() + " " + (unit.equals("DDM") ? "" : unit)).strip();
    }
}
