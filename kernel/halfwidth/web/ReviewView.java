package halfwidth.web;

import halfwidth.adapt.Difference;
import halfwidth.adapt.DifferenceTable;
import halfwidth.job.Fact;
import halfwidth.job.Line;
import halfwidth.method.MethodSource;
import halfwidth.method.MethodSources;
import halfwidth.page.Part;
import halfwidth.run.Propagation;
import halfwidth.run.Run.Ran;
import halfwidth.show.Html;
import halfwidth.show.SheetParts;
import halfwidth.show.Traced;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
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
 * @param signed the journal's lines about records of this visit
 */
record ReviewView(
        Scene scene,
        Scene example,
        String shipped,
        MethodSources methods,
        Optional<Traced> traced,
        List<Line> signed,
        Html html) {
    private static final int LINES_AROUND = 3;

    void write() {
        SheetParts parts = scene.parts(html);
        parts.top();
        html.open("main", "id", "sheet", "class", "review");
        parts.results();
        parts.plots();
        Set<MethodSource> shown = new HashSet<>();
        parts.body(part -> block(parts, part, shown));
        trace(parts);
        html.element("h2", "Different from the shipped page");
        html.trusted(differences());
        signatures();
        html.close().line();
    }

    private void block(SheetParts parts, Part part, Set<MethodSource> shown) {
        if (part instanceof Part.Inputs inputs) {
            parts.inputs(inputs);
        } else if (part instanceof Part.Readings readings) {
            parts.readings(readings);
        } else if (part instanceof Part.Steps steps) {
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

    private void signatures() {
        html.element("h2", "Signatures");
        for (Line line : signed) {
            if (line.fact() instanceof Fact.Signed fact) {
                html.element(
                        "p",
                        "%s: %s, %s, under account %s. Record %s. %s"
                                .formatted(
                                        fact.role().words(),
                                        fact.by(),
                                        line.time(),
                                        line.who(),
                                        fact.file(),
                                        fact.remark()));
            }
        }
        if (scene.values().isEmpty()) {
            html.element("p", ReviewAnswers.NOTHING_TO_SIGN);
            return;
        }
        html.element(
                "p",
                "Signing writes a record of this sheet as it is now, with the name in its heading,"
                        + " and notes it in the journal. It is not an electronic signature in law.",
                "class",
                "small");
        html.open("form", "method", "post", "action", scene.address("/sign"), "class", "sign");
        field("name", "Name");
        field("remark", "Remark");
        html.open("label").text("Sign as ").open("select", "name", "role");
        for (Fact.Role role : List.of(Fact.Role.CHECKED, Fact.Role.PREPARED)) {
            html.element("option", role.words() + " by", "value", role.words());
        }
        html.close().close().element("button", "Sign").close().line();
    }

    private void field(String name, String label) {
        html.open("label").text(label);
        String[] attributes = {"type", "text", "name", name, "maxlength", "500"};
        html.single(
                "input",
                name.equals("name") ? Marks.with(attributes, "required", "required") : attributes);
        html.close();
    }
}
