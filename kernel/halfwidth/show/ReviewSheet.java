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
            section { display: grid; grid-template-columns: 1.6rem 4.2rem minmax(0, 1fr); gap: .6rem;
              border-top: 1px solid #999; padding: .5rem 0; break-inside: avoid; }
            .tick { width: 1.3rem; height: 1.3rem; border: 2px solid #000; }
            .line, .small, .source { color: #444; font-size: .85rem; }
            .absent { color: #8e1b1b; font-weight: 600; }
            p { margin: .15rem 0; } pre { white-space: pre-wrap; margin: .2rem 0; }
            math { font-size: 1.08em; font-family: "Cambria Math", "STIX Two Math",
              "Latin Modern Math", "DejaVu Math TeX Gyre", math; }
            .equation { overflow-x: auto; overflow-y: hidden; } .equation math { math-style: normal; }
            .proof { color: #444; font-size: .85rem; margin-left: .8em; } .proof.absent { color: #8e1b1b; }
            .java { color: #444; font-size: .85rem; }
            @media print { .java { display: none; } }
            .sign { margin-top: 1.5rem; } .sign span { display: inline-block; width: 14rem;
              border-bottom: 1px solid #000; margin-right: 2rem; }
            """;

    private final Sheet sheet;
    private final Html html = new Html();

    private ReviewSheet(Sheet sheet) {
        this.sheet = sheet;
    }

    /** Writes the sheet of a run that kept its workings. */
    public static String of(Sheet sheet) {
        ReviewSheet review = new ReviewSheet(sheet);
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
        html.close().close().line();
    }
}
