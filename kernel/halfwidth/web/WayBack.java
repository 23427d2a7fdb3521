package halfwidth.web;

import halfwidth.adapt.AdaptedPages;
import halfwidth.adapt.Version;
import halfwidth.job.Visit;
import halfwidth.show.Html;
import java.nio.file.Path;

/**
 * The way back from the job's own copy of a page to the shipped one, and where the copy is then.
 */
record WayBack(Notebook notebook, Visit visit, Html html) {

    /**
     * Writes it where there is such a copy.
     *
     * @param seen the version that the window shows
     */
    void write(Version seen) {
        AdaptedPages adapted = notebook.adapted();
        if (adapted.adapted(visit.page()) && adapted.hasShipped(visit.page())) {
            button(seen);
        }
        adapted.lastSetAside(visit.page()).ifPresent(this::aside);
    }

    private void button(Version seen) {
        html.open("details").element("summary", "Back to the shipped page");
        html.open("form", "method", "post", "action", notebook.at("/shipped", visit));
        html.single("input", "type", "hidden", "name", "seen", "value", seen.digest());
        html.element(
                "p",
                "All sheets of this page follow the shipped one again. The job’s copy stays in its"
                        + " folder, as a text.");
        html.element("button", "Set the copy aside").close().close().line();
    }

    private void aside(Path file) {
        Path folder = notebook.job().folder();
        html.element(
                "p",
                ("A copy that was set aside is %s in the job’s folder. Named %s again, it"
                                + " takes the place of the shipped page.")
                        .formatted(
                                folder.relativize(file),
                                notebook.adapted().file(visit.page()).getFileName()),
                "class",
                "small");
    }
}
