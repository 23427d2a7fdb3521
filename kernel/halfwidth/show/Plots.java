package halfwidth.show;

import halfwidth.page.Part;
import halfwidth.run.Outcome;
import halfwidth.run.Run.Ran;
import halfwidth.run.Shown;
import java.util.Base64;
import java.util.List;

/** The plots of a page, which stand with its answer rather than among the steps that draw them. */
record Plots(Sheet sheet, Html html) {

    void write() {
        List<Ran> drawn = sheet.run().steps().stream().filter(Plots::isPlot).toList();
        if (drawn.isEmpty()) {
            return;
        }
        html.open("div", "class", drawn.size() == 1 ? "plots" : "plots several");
        drawn.forEach(this::figure);
        html.close().line();
    }

    private void figure(Ran ran) {
        int line = ran.step().line();
        picture(html, picture(ran), "plot-" + line);
    }

    /** Writes where the plot of a step stands, which is at the step on a page without results. */
    void pointer(Ran ran) {
        Shown.Picture picture = picture(ran);
        if (sheet.page().parts().stream().noneMatch(Part.Results.class::isInstance)) {
            picture(html, picture, "plot-" + ran.step().line());
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

    private static void picture(Html html, Shown.Picture picture, String id) {
        html.open("figure", "id", id, "tabindex", "0", "aria-label", picture.title());
        if (picture.png().length == 0) {
            html.element("figcaption", picture.description());
        } else {
            String data = Base64.getEncoder().encodeToString(picture.png());
            html.single(
                    "img", "src", "data:image/png;base64," + data, "alt", picture.description());
        }
        html.close();
    }
}
