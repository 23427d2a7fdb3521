package halfwidth.web;

import halfwidth.adapt.Draft;
import halfwidth.adapt.Place;
import halfwidth.page.Part;
import halfwidth.run.Outcome;
import halfwidth.run.Run.Ran;
import halfwidth.run.Shown;
import halfwidth.show.Html;
import halfwidth.show.SheetParts;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The sheet as an engineer changes it: every step with its Java and its value, every block as it
 * stands in the page's file, each with a way to change it and to add below it.
 *
 * @param draft the page's text, from which the scene was run
 */
record AdaptView(Scene scene, Draft draft, Html html) {

    void write() {
        SheetParts parts = scene.parts(html);
        boolean intro = true;
        for (Part part : scene.page().parts()) {
            if (part instanceof Part.Prose prose) {
                open(draft.place(prose), "prose");
                parts.prose(prose, intro);
                // The cautions are shown above the sheet, and changed here.
                close("Change", "");
            } else {
                intro = false;
                block(parts, part);
            }
        }
    }

    private void block(SheetParts parts, Part part) {
        if (part instanceof Part.Steps steps) {
            statements(parts, part, steps.code(), scene.sheet().run().steps(), "Add a step");
        } else if (part instanceof Part.Checks checks) {
            statements(parts, part, checks.code(), scene.sheet().run().checks(), "Add a check");
        } else {
            open(draft.place(part), "rows");
            source(draft.place(part));
            close("Change", part instanceof Part.Inputs ? "Add an input" : "Add a row");
        }
    }

    /** Steps that share a line are changed together. */
    private void statements(SheetParts parts, Part part, String code, List<Ran> all, String add) {
        long end = part.line() + code.lines().count();
        Map<Place, List<Ran>> places = new LinkedHashMap<>();
        for (Ran ran : all) {
            if (ran.step().line() >= part.line() && ran.step().line() < end) {
                places.computeIfAbsent(draft.place(ran.step()), first -> new ArrayList<>())
                        .add(ran);
            }
        }
        if (places.isEmpty() && !code.isBlank()) {
            places.put(draft.place(part), List.of());
        }
        places.forEach(
                (place, ran) -> {
                    open(place, "java");
                    source(place);
                    html.open("div", "class", "came");
                    ran.forEach(one -> came(parts, one));
                    html.close();
                    close("Change", add);
                });
    }

    private void came(SheetParts parts, Ran ran) {
        // A flag without a name is a check that would have failed had it not held.
        if (ran.step().name().isEmpty()
                && ran.outcome() instanceof Outcome.Done done
                && done.value() instanceof Shown.Flag) {
            html.element("p", "holds", "class", "verdict met");
            html.element("p", done.printed().strip(), "class", "small");
        } else {
            parts.outcome(ran);
        }
    }

    private void open(Place place, String kind) {
        html.open(
                "section",
                "class",
                "item numbered " + kind,
                "id",
                "line-" + place.first(),
                "data-first",
                Integer.toString(place.first()),
                "data-last",
                Integer.toString(place.last()),
                "data-fenced",
                Boolean.toString(place.fenced()),
                "data-kind",
                kind,
                "data-source",
                draft.text().at(place));
        Marks.line(html, place.first());
    }

    private void source(Place place) {
        html.open("pre", "class", "source").element("code", draft.text().at(place)).close();
    }

    private void close(String change, String add) {
        html.open("p", "class", "tools");
        tool("replace", change);
        if (!add.isEmpty()) {
            tool("after", add);
        }
        html.close().close().line();
    }

    private void tool(String how, String words) {
        html.element("button", words, "type", "button", "data-how", how);
    }
}
