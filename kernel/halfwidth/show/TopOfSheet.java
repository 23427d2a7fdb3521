package halfwidth.show;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The heading block, the notice of a worked example, and the cautions. */
record TopOfSheet(Sheet sheet, Html html) {
    private static final List<String> PLACES =
            List.of("Station", "Runway", "Prepared by", "Checked by", "Date");

    /** What is to be minded before anything below is relied on. */
    private static final List<String> AGAINST =
            List.of("Prepared despite", "Checked despite", "Sent back by");

    void write() {
        html.open("header").element("h1", sheet.page().title());
        html.open("dl", "class", "heading");
        places().forEach(this::place);
        html.close();
        if (sheet.example()) {
            html.open("p", "class", "example", "role", "note").element("strong", "Worked example");
            html.text(" – invented values, not a station’s. Do not set or cut anything by them.");
            html.close();
        }
        sheet.ownCopy()
                .ifPresent(
                        copy ->
                                html.element(
                                        "p",
                                        copy.words(),
                                        "class",
                                        copy.isSound() ? "copy" : "copy broken",
                                        "role",
                                        "note"));
        cautions();
        html.close().line();
    }

    private Map<String, String> places() {
        Map<String, String> places = new LinkedHashMap<>();
        PLACES.forEach(name -> places.put(name, ""));
        places.put("Page", sheet.page().name());
        sheet.heading().forEach((name, value) -> places.put(box(name), value));
        return places;
    }

    /** The box that a name belongs into, however its letters are written. */
    private static String box(String name) {
        return PLACES.stream().filter(name::equalsIgnoreCase).findFirst().orElse(name);
    }

    private void place(String name, String value) {
        String[] kind = AGAINST.contains(name) ? new String[] {"class", "against"} : new String[0];
        html.open("div", kind).element("dt", name);
        if (value.isBlank()) {
            html.open("dd", "class", "blank").element("span", "not known", "class", "unseen");
            html.close();
        } else {
            html.element("dd", value);
        }
        html.close();
    }

    private void cautions() {
        List<Prose> cautions = Prose.cautions(sheet.page());
        if (cautions.isEmpty()) {
            return;
        }
        html.open("section", "class", "cautions", "aria-labelledby", "cautions");
        html.element("h2", "Caution", "id", "cautions");
        cautions.forEach(caution -> html.trusted(caution.html()));
        html.close().line();
    }
}
