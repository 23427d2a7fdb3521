package halfwidth.show;

import halfwidth.run.Drawn;
import halfwidth.run.OpenPage;
import halfwidth.run.Step;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The uncertainty and the trace of results as a section of a reviewer's sheet. */
record TraceHtml(Traced traced, Html html) {

    void write() {
        html.element("h2", "Uncertainty and trace", "id", "trace").line();
        Map<String, String> inputs = traced.uncertainInputs();
        if (inputs.isEmpty()) {
            html.element(
                    "p",
                    "No input has a standard uncertainty. One is typed behind its value, as in"
                            + " 0.83 ± 0.02.",
                    "class",
                    "absent");
        } else {
            html.element(
                    "p",
                    "Standard uncertainties, to first order (JCGM 100:2008, 5.1.2), by running the"
                            + " steps again with each input changed. "
                            + TraceText.LIMITS);
            html.open("ul").line();
            inputs.forEach(this::uncertain);
            html.close().line();
        }
        if (!traced.shortfall().isEmpty()) {
            html.element("p", traced.shortfall(), "class", "absent");
        }
        traced.results().forEach(this::result);
        forward();
    }

    private void uncertain(String source, String words) {
        html.element("li", traced.sheet().known(source) + ": " + words).line();
    }

    private void result(Traced.Of result) {
        html.open("div", "class", "trace", "id", "trace-" + result.name());
        html.open("h3").text(result.answer().result().label() + " ");
        html.open("code").name(result.name()).close().close();
        html.open("p").text(value(result)).close();
        draws(result);
        TraceText.remarks(traced, result)
                .forEach(remark -> html.element("p", remark, "class", "absent"));
        influences(result);
        rests(result);
        html.close().line();
    }

    private String value(Traced.Of result) {
        String value = Values.withUnit(result.answer().shownValue(), result.answer().shownUnit());
        FirstOrder first = result.firstOrder();
        Optional<Double> size = first.standardUncertainty();
        String found =
                traced.uncertainInputs().isEmpty()
                        ? ""
                        : size.map(
                                        u ->
                                                "; u = %s, mostly from %s"
                                                        .formatted(
                                                                inUnit(u, result), first.largest()))
                                .orElse("; " + TraceText.none(first));
        String own =
                result.answer()
                        .uncertainty()
                        .map(u -> "; the page's own u = " + inUnit(u, result))
                        .orElse("");
        return value + found + own + ".";
    }

    private static String inUnit(double size, Traced.Of result) {
        return Values.withUnit(Numbers.ofUncertainty(size), result.unit());
    }

    private void draws(Traced.Of result) {
        Optional<Drawn> drawn = traced.drawn(result);
        if (drawn.isPresent() && drawn.get().standardDeviation() > 0) {
            Drawn is = drawn.get();
            html.element(
                    "p",
                    "%s draws (JCGM 101:2008, seed %s): %s, %s; first order %s.%s"
                            .formatted(
                                    is.draws(),
                                    OpenPage.SEED,
                                    Numbers.measured(is.mean(), is.standardDeviation()),
                                    TraceText.interval(is),
                                    traced.verdict(result, is),
                                    is.without() == 0
                                            ? ""
                                            : " " + is.without() + " more gave no value."));
        }
    }

    private void influences(Traced.Of result) {
        List<Traced.Influence> influences = traced.influences(result);
        if (influences.isEmpty()) {
            return;
        }
        table("What moves " + result.name(), "Input or readings", "Sensitivity", "Adds to u");
        for (Traced.Influence one : influences) {
            html.open("tr").element("th", one.source(), "scope", "row");
            html.element("td", one.sensitivity());
            html.element("td", one.amount() == 0 ? "–" : inUnit(one.amount(), result));
            html.close().line();
        }
        html.close().close().line();
    }

    private void table(String caption, String... heads) {
        html.open("table").element("caption", caption).open("thead").open("tr");
        for (String head : heads) {
            html.element("th", head, "scope", "col");
        }
        html.close().close().open("tbody").line();
    }

    private void rests(Traced.Of result) {
        List<String> still = traced.still(result);
        if (!still.isEmpty()) {
            html.element(
                    "p",
                    "Also read, without moving it: " + String.join(", ", still) + ".",
                    "class",
                    "small");
        }
        html.open("p", "class", "small").text("Steps: ");
        String comma = "";
        for (int index : result.trace().steps()) {
            Optional<Step> step = traced.step(index);
            if (step.isPresent()) {
                html.text(comma);
                step(step.get());
                comma = ", ";
            }
        }
        html.text(".").close();
        List<String> methods = traced.methods(result);
        if (!methods.isEmpty()) {
            html.element(
                    "p", "Library methods: " + String.join(", ", methods) + ".", "class", "small");
        }
    }

    /** A step by its name, linked where it stands on the sheet. */
    private void step(Step step) {
        String words =
                step.name().isEmpty() ? "line " + step.line() : step.name() + " " + step.line();
        if (traced.sheet().run().worked().containsKey(step.index())) {
            html.element("a", words, "href", "#line-" + step.line());
        } else {
            html.text(words);
        }
    }

    private void forward() {
        html.element("h3", "From each input to the results that it moves").line();
        table("Sensitivity of results", "Input or readings", "Result", "Sensitivity");
        traced.forward()
                .forEach(
                        (source, results) -> {
                            if (results.isEmpty()) {
                                row(source, traced.movesNothing(source), "", "");
                            }
                            results.forEach(
                                    (result, one) ->
                                            row(
                                                    source,
                                                    result.answer().result().label(),
                                                    "#trace-" + result.name(),
                                                    one.sensitivity()));
                        });
        html.close().close().line();
    }

    private void row(String source, String result, String link, String sensitivity) {
        html.open("tr").element("th", source, "scope", "row").open("td");
        if (link.isEmpty()) {
            html.text(result);
        } else {
            html.element("a", result, "href", link);
        }
        html.close().element("td", sensitivity).close().line();
    }
}
