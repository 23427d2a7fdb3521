package halfwidth.web;

import halfwidth.page.Part;
import halfwidth.run.Run.Ran;
import halfwidth.show.Html;
import halfwidth.show.SheetParts;

/**
 * The sheet as a technician fills it in: fields and tables with the answers beside them, plots and
 * tables below. It shows no Java.
 */
record FillView(Scene scene, Html html) {

    void write() {
        SheetParts parts = scene.parts(html);
        html.open("div", "class", "top", "id", "top", "data-part", "");
        parts.top();
        html.close();
        html.open("main", "class", "fill", "id", "sheet");
        // Of their own, or the answers would stay in sight over the plots as well.
        html.open("div", "class", "beside");
        html.open("section", "class", "entries", "aria-label", "Values");
        entries(parts);
        html.close();
        // It scrolls by itself where it is longer than the window, by keyboard as well.
        html.open(
                "section",
                "class",
                "answers",
                "id",
                "answers",
                "data-part",
                "",
                "aria-label",
                "Answers",
                "tabindex",
                "0");
        if (scene.ran()) {
            parts.results();
            save();
        } else {
            html.element("p", "The results are being computed.", "class", "computing");
        }
        html.close().close();
        html.open("section", "class", "views", "aria-label", "Plots and tables");
        views(parts);
        html.close().close().line();
    }

    private void save() {
        String results = scene.address("/results");
        html.open("p", "class", "tools").text("Save results as CSV, ");
        html.element("a", "with decimal points", "href", results);
        html.text(" or ");
        html.element("a", "with decimal commas", "href", results + scene.also("decimal", "comma"));
        html.close();
    }

    /** Prose that leads to something to fill in; what leads to steps only is for the reviewer. */
    private void entries(SheetParts parts) {
        boolean intro = true;
        Part.Prose held = null;
        for (Part part : scene.page().parts()) {
            if (part instanceof Part.Prose prose) {
                held = prose;
                continue;
            }
            boolean entry = part instanceof Part.Inputs || part instanceof Part.Readings;
            if (held != null && (intro || entry)) {
                parts.prose(held, intro);
            }
            held = null;
            intro = false;
            if (part instanceof Part.Inputs inputs) {
                new FieldList(scene, html).write(inputs);
            } else if (part instanceof Part.Readings readings) {
                new ReadingsEntry(scene, html).write(readings);
            }
        }
    }

    private void views(SheetParts parts) {
        for (Ran plot : parts.plotted()) {
            html.open("div", "class", "view", "id", id(plot), "data-part", "");
            parts.view(plot);
            html.close().line();
        }
        for (Ran table : parts.tabulated()) {
            html.open("details", "class", "view table", "id", id(table), "data-part", "");
            html.element("summary", SheetParts.caption(table));
            parts.view(table);
            html.close().line();
        }
    }

    private static String id(Ran ran) {
        return "view-" + ran.step().index();
    }
}
