package halfwidth.show;

import halfwidth.method.MethodSource;
import halfwidth.run.Outcome;
import halfwidth.run.Run.Ran;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A sheet for the reviewer: every numeric step as a formula, with its numbers and its result, and a
 * box to tick; then the source of the library methods that they call. One HTML file that stands
 * alone.
 */
public final class ReviewSheet {
    private static final String STYLE =
            """
            body { font: 11pt/1.4 system-ui, "DejaVu Sans", sans-serif; margin: 1.5rem; max-width: 60rem; }
            section { display: grid; grid-template-columns: 1.6rem 4.2rem minmax(0, 1fr); gap: .6rem;
              border-top: 1px solid #999; padding: .5rem 0; break-inside: avoid; }
            .tick { width: 1.3rem; height: 1.3rem; border: 2px solid #000; }
            .line, .small, .source { color: #444; font-size: .85rem; }
            .absent { color: #8e1b1b; font-weight: 600; }
            p { margin: .15rem 0; overflow-wrap: anywhere; } pre { white-space: pre-wrap; overflow-wrap: anywhere; margin: .2rem 0; }
            math { font-size: 1.08em; font-family: "Cambria Math", "STIX Two Math",
              "Latin Modern Math", "DejaVu Math TeX Gyre", math; }
            section p { position: relative; overflow-x: auto; overflow-y: hidden; } .equation math { math-style: normal; }
            .proof { color: #444; font-size: .85rem; margin-left: .8em; } .proof.absent { color: #8e1b1b; }
            .rows { border-left: 3px solid #bbb; padding-left: .7rem; margin: .3rem 0; }
            .came { margin-right: 1rem; } .row, .rows .small { margin: .1rem 0; }
            .java { color: #444; font-size: .85rem; }
            .trace { border-top: 1px solid #999; padding: .3rem 0; break-inside: avoid; }
            h3 { font-size: 1rem; margin: .6rem 0 .2rem; overflow-wrap: anywhere; } caption { text-align: left; }
            table { border-collapse: collapse; display: block; overflow-x: auto; margin: .3rem 0; }
            td, th { text-align: left; font-weight: 400; padding: .1rem .8rem .1rem 0; }
            thead th { font-weight: 600; } td { font-variant-numeric: tabular-nums; }
            .called h3 { margin-top: 1.2rem; } .code { background: #f3f6f7; padding: .4rem; overflow-x: auto; }
            @media print { .java, .called { display: none; } }
            .sign { margin-top: 1.5rem; } .sign span { display: inline-block; width: 14rem;
              border-bottom: 1px solid #000; margin-right: 2rem; }
            """;

    private final Sheet sheet;
    private final Traced traced;
    private final Html html = new Html();

    private ReviewSheet(Traced traced) {
        this.sheet = traced.sheet();
        this.traced = traced;
    }

    /** Writes the sheet of a run that kept its workings, with where its values come from. */
    public static String of(Traced traced) {
        ReviewSheet review = new ReviewSheet(traced);
        review.write();
        return review.html.toString();
    }

    private void write() {
        html.trusted("<!DOCTYPE html>\n").open("html", "lang", "en").line();
        html.open("head").single("meta", "charset", "utf-8");
        html.single("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
        html.element("title", sheet.page().title() + " – review");
        html.open("style").trusted(STYLE).close().close().line();
        html.open("body").element("h1", "Review: " + sheet.page().title()).line();
        html.element("p", about());
        if (sheet.example()) {
            html.element(
                    "p", "Worked example – invented values, not a station's.", "class", "absent");
        }
        open();
        sheet.run().steps().forEach(this::step);
        new TraceHtml(traced, html).write();
        html.open("p", "class", "sign").text("Reviewed by ").element("span", " ");
        html.text("Date ").element("span", " ").close().line();
        called();
        html.close().close().line();
    }

    private String about() {
        Stamp stamp = sheet.stamp();
        return "%s, SHA-256 %s, run %s with Halfwidth %s. Units of %s proved."
                .formatted(
                        sheet.fileName(),
                        stamp.digest(),
                        Dates.words(stamp.ran()),
                        stamp.version(),
                        Proofs.words(sheet.run()));
    }

    /** The steps whose units are not proved, each with its reason. */
    private void open() {
        List<WorkedStep> open =
                sheet.run().steps().stream()
                        .flatMap(ran -> WorkedStep.of(sheet.run(), ran).stream())
                        .filter(step -> !step.worked().proof().proved())
                        .toList();
        if (open.isEmpty()) {
            return;
        }
        html.open("ul");
        for (WorkedStep one : open) {
            int line = one.step().line();
            html.open("li").element("a", "line " + line, "href", "#line-" + line);
            html.text(", %s: %s.".formatted(one.step().name(), one.worked().proof().why()));
            html.close();
        }
        html.close().line();
    }

    private void step(Ran ran) {
        Optional<WorkedStep> worked = WorkedStep.of(sheet.run(), ran);
        List<WorkedRows> rows = WorkedRows.of(sheet.run(), ran);
        if (worked.isEmpty() && rows.isEmpty()) {
            return;
        }
        html.open("section", "id", "line-" + ran.step().line());
        html.element("span", "", "class", "tick");
        html.element("span", "line " + ran.step().line(), "class", "line");
        html.open("div");
        worked.ifPresentOrElse(new WorkedHtml(html)::write, () -> series(ran));
        List<MethodSource> called = traced.methods().calledBy(ran.step());
        worked.ifPresent(step -> new WorkedHtml(html).calls(LibraryCall.of(step, called)));
        rows.forEach(new WorkedHtml(html)::rows);
        String uncertainty = traced.uncertainty(ran.step());
        if (!uncertainty.isEmpty()) {
            html.element("p", uncertainty, "class", "small");
        }
        html.close().close().line();
    }

    /** A step whose value is more than a number. */
    private void series(Ran ran) {
        html.open("pre").element("code", ran.step().code().strip()).close();
        if (!ran.step().note().isBlank()) {
            html.element("p", ran.step().note(), "class", "source");
        }
        if (ran.outcome() instanceof Outcome.Done done) {
            html.open("p", "class", "value").text("= ");
            html.element("strong", Values.summary(done.value())).close();
        }
    }

    /** The source of the methods that are called: on paper it would be a book. */
    private void called() {
        Set<MethodSource> called = new LinkedHashSet<>();
        sheet.run().steps().forEach(ran -> called.addAll(traced.methods().calledBy(ran.step())));
        if (called.isEmpty()) {
            return;
        }
        html.open("div", "class", "called").element("h2", "Library methods called").line();
        for (MethodSource method : called) {
            html.open("div", "id", method.anchor());
            html.element("h3", method.type() + ", " + method.signature());
            html.element("p", "%s, line %s".formatted(method.file(), method.line()));
            html.element("pre", method.documentation());
            html.open("pre", "class", "code").element("code", method.source()).close();
            html.close().line();
        }
        html.close().line();
    }
}
