package halfwidth.show;

import halfwidth.run.Drawn;
import halfwidth.run.OpenPage;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The uncertainty and the trace of results as plain text for a terminal, as wide as {@link
 * TextSheet}.
 */
public final class TraceText {
    private static final int WIDTH = 88;

    private final Traced traced;
    private final List<String> lines = new ArrayList<>();

    private TraceText(Traced traced) {
        this.traced = traced;
    }

    /** Writes it, with a line feed after each line. */
    public static String of(Traced traced) {
        TraceText text = new TraceText(traced);
        text.uncertainty();
        text.draws();
        text.shortfall();
        text.back();
        text.forward();
        return String.join("\n", text.lines) + "\n";
    }

    private void section(String name) {
        lines.add("");
        lines.add(name);
    }

    private void indent(String text, int by) {
        Line.wrap(text, WIDTH - by).forEach(line -> lines.add(" ".repeat(by) + line));
    }

    private void columns(Columns columns) {
        columns.lines().forEach(line -> lines.add("  " + line));
    }

    private void uncertainty() {
        section("UNCERTAINTY - standard, to first order (JCGM 100:2008, 5.1.2)");
        Map<String, String> inputs = traced.uncertainInputs();
        if (inputs.isEmpty()) {
            indent(
                    "No input has one. Type it behind the value, as in 0.83 ± 0.02, or state it"
                            + " with --uncertainty NAME=VALUE or TABLE.COLUMN=VALUE.",
                    2);
            return;
        }
        indent(LIMITS, 2);
        Columns from = new Columns(WIDTH - 2, "ll");
        inputs.forEach(
                (source, words) ->
                        from.row(List.of(traced.sheet().known(source), words), List.of()));
        columns(from);
        lines.add("");
        Columns columns = new Columns(WIDTH - 2, "lrlll");
        traced.results().forEach(result -> row(columns, result));
        columns(columns);
    }

    /** What is left out, on every output. */
    static final String LIMITS =
            "Inputs are taken as independent; what a page states as its own is worked out by its"
                    + " steps, from what it says there, and is not added to.";

    private void row(Columns columns, Traced.Of result) {
        FirstOrder first = result.firstOrder();
        Optional<Double> size = first.standardUncertainty();
        List<String> notes = new ArrayList<>();
        result.answer()
                .uncertainty()
                .ifPresent(own -> notes.add("the page's own: ± " + Numbers.ofUncertainty(own)));
        notes.addAll(remarks(traced, result));
        columns.row(
                List.of(
                        result.answer().result().label(),
                        result.answer().shownValue(),
                        result.answer().shownUnit(),
                        size.map(u -> "± " + Numbers.ofUncertainty(u)).orElse(""),
                        size.isPresent() ? first.largest() : none(first)),
                notes);
    }

    /** Why there is no uncertainty to first order. */
    static String none(FirstOrder first) {
        return first.withheld().isEmpty()
                ? first.complete() ? "no uncertain input moves it" : "not worked out in time"
                : "not to first order";
    }

    /** What is to be known of the uncertain inputs that a result does not follow straight. */
    static List<String> remarks(Traced traced, Traced.Of result) {
        List<String> uncertain = List.copyOf(traced.uncertainInputs().keySet());
        return traced.influences(result).stream()
                .filter(one -> !one.remark().isEmpty() && uncertain.contains(one.source()))
                .map(one -> one.source() + ": " + one.remark())
                .toList();
    }

    private void draws() {
        if (traced.propagation().draws().isEmpty()) {
            return;
        }
        section(
                "DRAWS - %s, normal, independent, seed %s (JCGM 101:2008)"
                        .formatted(traced.propagation().drawsMade(), OpenPage.SEED));
        Columns columns = new Columns(WIDTH - 2, "lrlll");
        for (Traced.Of result : traced.results()) {
            traced.drawn(result)
                    .filter(drawn -> drawn.standardDeviation() > 0)
                    .ifPresent(drawn -> drawn(columns, result, drawn));
        }
        columns(columns);
    }

    private void drawn(Columns columns, Traced.Of result, Drawn drawn) {
        String without =
                drawn.without() == 0 ? "" : "%s draws gave no value".formatted(drawn.without());
        columns.row(
                List.of(
                        result.answer().result().label(),
                        Numbers.measured(drawn.mean(), drawn.standardDeviation()),
                        result.answer().shownUnit(),
                        interval(drawn),
                        traced.verdict(result, drawn)),
                List.of(without));
    }

    /** The interval that holds 95 % of the draws, in words. */
    static String interval(Drawn drawn) {
        int decimals = Numbers.decimals(drawn.standardDeviation());
        return "95 %%: %s to %s"
                .formatted(
                        Numbers.fixed(drawn.low(), decimals),
                        Numbers.fixed(drawn.high(), decimals));
    }

    private void shortfall() {
        if (!traced.shortfall().isEmpty()) {
            lines.add("");
            indent(traced.shortfall(), 2);
        }
    }

    private void back() {
        section("TRACE - what each result rests on");
        for (Traced.Of result : traced.results()) {
            indent(result.answer().result().label() + " (" + result.name() + ")", 2);
            Columns columns = new Columns(WIDTH - 4, "lll");
            for (Traced.Influence one : traced.influences(result)) {
                String adds =
                        one.amount() == 0
                                ? ""
                                : "adds "
                                        + Values.withUnit(
                                                Numbers.ofUncertainty(one.amount()), result.unit());
                columns.row(List.of(one.source(), one.sensitivity(), adds), List.of(one.remark()));
            }
            columns.lines().forEach(line -> lines.add("    " + line));
            list("also read, without moving it: ", traced.still(result));
            list("steps at lines ", traced.lines(result).stream().map(String::valueOf).toList());
            list("methods ", traced.methods(result));
        }
    }

    private void list(String lead, List<String> items) {
        if (!items.isEmpty()) {
            indent(lead + String.join(", ", items), 4);
        }
    }

    private void forward() {
        section("TRACE - what each input moves");
        Columns columns = new Columns(WIDTH - 2, "lll");
        traced.forward()
                .forEach(
                        (source, results) -> {
                            if (results.isEmpty()) {
                                columns.row(
                                        List.of(source, traced.movesNothing(source), ""),
                                        List.of());
                            }
                            String lead = source;
                            for (Map.Entry<Traced.Of, Traced.Influence> one : results.entrySet()) {
                                columns.row(
                                        List.of(
                                                lead,
                                                one.getKey().name(),
                                                one.getValue().sensitivity()),
                                        List.of());
                                lead = "";
                            }
                        });
        columns(columns);
    }
}
