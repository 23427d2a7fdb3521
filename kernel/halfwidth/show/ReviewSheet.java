package halfwidth.show;

import halfwidth.run.Run.Ran;
import java.util.Optional;

/**
 * A sheet for the reviewer: every numeric step as a formula, with its numbers and its result, and a
 * box to tick. One HTML file that stands alone.
 */
public final class ReviewSheet {
    private static final String STYLE =
            """
            body { font: 11pt/1.4 system-ui, "DejaVu Sans", sans-serif; margin: 1.5rem; max-width: 60rem; }
            section { display: grid; grid-template-columns: 2.2rem 3rem 1fr; gap: .6rem;
              border-top: 1px solid #999; padding: .5rem 0; break-inside: avoid; }
            .tick { width: 1.3rem; height: 1.3rem; border: 2px solid #000; }
            .line, .small, .source { color: #444; font-size: .85rem; }
            .absent { color: #8e1b1b; font-weight: 600; }
            p { margin: .15rem 0; } math { font-size: 1.08rem; } pre { white-space: pre-wrap; margin: .2rem 0; }
            .equation { overflow-x: auto; }
            .trace { border-top: 1px solid #999; padding: .3rem 0; break-inside: avoid; }
            h3 { font-size: 1rem; margin: .6rem 0 .2rem; } caption { text-align: left; }
            table { border-collapse: collapse; display: block; overflow-x: auto; margin: .3rem 0; }
            td, th { text-align: left; font-weight: 400; padding: .1rem .8rem .1rem 0; }
            thead th { font-weight: 600; } td { font-variant-numeric: tabular-nums; }
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
        html.element("title", sheet.page().title() + " – review");
        html.open("style").trusted(STYLE).close().close().line();
        html.open("body").element("h1", "Review: " + sheet.page().title()).line();
        html.element("p", about());
        if (sheet.example()) {
            html.element(
                    "p", "Worked example – invented values, not a station's.", "class", "absent");
        }
        sheet.run().steps().forEach(this::step);
        new TraceHtml(traced, html).write();
        html.open("p", "class", "sign").text("Reviewed by ").element("span", " ");
        html.text("Date ").element("span", " ").close();
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

    private void step(Ran ran) {
        Optional<WorkedStep> worked = WorkedStep.of(sheet.run(), ran);
        if (worked.isEmpty()) {
            return;
        }
        html.open("section", "id", "step-" + ran.step().line());
        html.element("span", "", "class", "tick");
        html.element("span", "line " + ran.step().line(), "class", "line");
        html.open("div");
        new WorkedHtml(html).write(worked.get());
        String uncertainty = traced.uncertainty(ran.step());
        if (!uncertainty.isEmpty()) {
            html.element("p", uncertainty, "class", "small");
        }
        if (!ran.step().note().isBlank()) {
            html.element("p", ran.step().note(), "class", "source");
        }
        html.close().close().line();
    }
}
