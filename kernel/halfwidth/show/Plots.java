package halfwidth.show;

import halfwidth.page.Part;
import halfwidth.run.Outcome;
import halfwidth.run.Run.Ran;
import halfwidth.run.Shown;
import java.util.List;

/** The plots of a page, which stand with its answer rather than among the steps that draw them. */
record Plots(Sheet sheet, Html html, Pictures pictures) {

    void write() {
        List<Ran> drawn = sheet.run().steps().stream().filter(Plots::isPlot).toList();
        if (drawn.isEmpty()) {
            return;
        }
        html.open("div", "class", drawn.size() == 1 ? "plots" : "plots several");
        drawn.forEach(this::figure);
        html.close().line();
    }

    /** Writes where the plot of a step stands, which is at the step on a page without results. */
    void pointer(Ran ran) {
        Shown.Picture picture = picture(ran);
        if (sheet.page().parts().stream().noneMatch(Part.Results.class::isInstance)) {
            figure(ran);
            return;
        }
        html.open("p", "class", "value").text("plotted with the answer: ");
        html.element("a", picture.title(), "href", "#plot-" + ran.step().line()).close();
    }

    static boolean isPlot(Ran ran) {
        return ran.outcome() instanceof Outcome.Done done && done.value() instanceof Shown.Picture;
    }

    private static Shown.Picture picture(Ran ran) {
        return (Shown.Picture) ((Outcome.Done) ran.outcome()).value();
    }

    /** The plot of a step. */
    void figure(Ran ran) {
        Shown.Picture picture = picture(ran);
        String id = "plot-" + ran.step().line();
        html.open("figure", "id", id, "tabindex", "0", "aria-label", picture.title());
        String source = pictures.source(ran.step(), picture);
        if (source.isEmpty()) {
            html.element("figcaption", picture.description());
        } else {
            html.single("img", "src", source, "alt", picture.description());
        }
        html.close();
    }
}
