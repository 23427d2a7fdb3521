package halfwidth.web;

import halfwidth.adapt.Difference;
import halfwidth.adapt.DifferenceTable;
import halfwidth.method.MethodSource;
import halfwidth.method.MethodSources;
import halfwidth.page.Part;
import halfwidth.record.SendingBack;
import halfwidth.run.Propagation;
import halfwidth.run.Run.Ran;
import halfwidth.show.Html;
import halfwidth.show.SheetParts;
import halfwidth.show.Traced;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;

/**
 * The sheet as a reviewer checks it: every step with its code, value and unit, the library's own
 * source, the checks, what differs from the shipped page, and the signatures.
 *
 * @param example the worked example, for which alone the checks hold
 * @param shipped the text of the shipped page; "" if there is none of that name
 * @param methods what the steps call
 * @param traced where the results come from; empty until somebody asks
 * @param forms who signed, and the ways to sign
 */
record ReviewView(
        Scene scene,
        Scene example,
        String shipped,
        MethodSources methods,
        Optional<Traced> traced,
        SigningForms forms,
        Html html) {
    private static final int LINES_AROUND = 3;

    void write() {
        SheetParts parts = scene.parts(html);
        SentBackNotes notes = new SentBackNotes(scene, html);
        parts.top();
        html.open("main", "id", "sheet", "class", "review");
        notes.open("/review");
        parts.results();
        scene.page().results().forEach(result -> notes.at(result.name()));
        parts.plots();
        Set<MethodSource> shown = new HashSet<>();
        parts.body(part -> block(parts, part, shown));
        trace(parts);
        html.element("h2", "Different from the shipped page");
        html.trusted(differences());
        forms.write(html);
        html.close().line();
    }

    private void block(SheetParts parts, Part part, Set<MethodSource> shown) {
        SentBackNotes notes = new SentBackNotes(scene, html);
        if (part instanceof Part.Inputs inputs) {
            inputs.fields().forEach(field -> notes.at(field.name()));
            parts.inputs(inputs);
        } else if (part instanceof Part.Readings readings) {
            notes.at(readings.name());
            parts.readings(readings);
        } else if (part instanceof Part.Steps steps) {
            long end = steps.line() + steps.code().lines().count();
            for (int line = steps.line(); line < end; line++) {
                notes.at(SendingBack.place(line));
            }
            parts.steps(
                    steps,
                    methods::calledBy,
                    step -> traced.map(one -> one.uncertainty(step)).orElse(""));
            called(steps, shown);
        } else if (part instanceof Part.Checks checks) {
            example.parts(html).checks(checks);
        }
    }

    private void trace(SheetParts parts) {
        traced.ifPresentOrElse(
                parts::trace, () -> html.element("h2", "Uncertainty and trace", "id", "trace"));
        if (traced.isEmpty()) {
            html.element(
                    "p",
                    "What each result rests on, how far it moves with each input, and how uncertain"
                            + " the inputs make it. A standard uncertainty is typed with its value,"
                            + " as in 0.83 ± 0.02.");
        }
        html.open("form", "class", "hands", "data-trace", "");
        html.open("label").text("Random draws to check it by, 0 for none ");
        html.single(
                "input",
                "type",
                "number",
                "name",
                "draws",
                "min",
                "0",
                "max",
                Integer.toString(Propagation.MOST_DRAWS),
                "value",
                "0");
        html.close().element("button", traced.isPresent() ? "Work it out again" : "Work it out");
        html.close().line();
    }

    private String differences() {
        return DifferenceTable.of(Difference.of(shipped, scene.page().text()), LINES_AROUND);
    }

    /**
     * What the steps of a block call, each method once.
     *
     * @param shown those in blocks before; links lead to the first
     */
    private void called(Part.Steps block, Set<MethodSource> shown) {
        long end = block.line() + block.code().lines().count();
        Set<MethodSource> called = new LinkedHashSet<>();
        for (Ran ran : scene.sheet().run().steps()) {
            if (ran.step().line() >= block.line() && ran.step().line() < end) {
                called.addAll(methods.calledBy(ran.step()));
            }
        }
        called.forEach(method -> method(method, shown.add(method)));
    }

    private void method(MethodSource method, boolean first) {
        html.open("details", "class", "method");
        html.element("summary", method.type() + ", " + method.signature());
        html.element("pre", method.documentation());
        // Within the details, so that a browser opens them for who follows a link.
        String[] attributes = {"tabindex", "0"};
        html.open("pre", first ? Marks.with(attributes, "id", method.anchor()) : attributes);
        html.element("code", method.source()).close().close().line();
    }
}
