package halfwidth.web;

import halfwidth.adapt.Difference;
import halfwidth.adapt.DifferenceTable;
import halfwidth.job.Fact;
import halfwidth.job.Line;
import halfwidth.method.MethodSource;
import halfwidth.method.MethodSources;
import halfwidth.page.Part;
import halfwidth.run.Run.Ran;
import halfwidth.show.Html;
import halfwidth.show.SheetParts;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * The sheet as a reviewer checks it: every step with its code, value and unit, the library's own
 * source, the checks, what differs from the shipped page, and the signatures.
 *
 * @param example the worked example, for which alone the checks hold
 * @param shipped the text of the shipped page; "" if there is none of that name
 * @param methods what the steps call
 * @param signed the journal's lines about records of this visit
 */
record ReviewView(
        Scene scene,
        Scene example,
        String shipped,
        MethodSources methods,
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
            parts.steps(steps, methods::calledBy);
            called(steps, shown);
        } else if (part instanceof Part.Checks checks) {
            example.parts(html).checks(checks);
        }
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
        html.element(
                "p",
                "Signing writes a record of this sheet as it is now and notes the name in the"
                        + " journal. It is not an electronic signature in law.",
                "class",
                "small");
        html.open("form", "method", "post", "action", scene.address("/sign"), "class", "sign");
        field("name", "Name");
        field("remark", "Remark");
        html.element("button", "Sign as checked").close().line();
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
