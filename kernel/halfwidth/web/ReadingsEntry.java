package halfwidth.web;

import halfwidth.job.Place;
import halfwidth.page.Column;
import halfwidth.page.Part;
import halfwidth.show.Html;
import halfwidth.value.Kind;
import java.util.Optional;

/** A table of readings to be filled in, with an empty row at its end. */
record ReadingsEntry(Scene scene, Html html) {

    void write(Part.Readings table) {
        int rows = scene.rows(table.name());
        html.open("div", "class", "table numbered", "data-table", table.name());
        Marks.line(html, table.line());
        html.open("div", "class", "wide");
        html.open("table", "class", "readings entry");
        html.element("caption", "Readings: " + table.name()).open("thead").open("tr");
        html.open("th", "scope", "col").element("span", "Row", "class", "unseen").close();
        table.columns().forEach(this::head);
        html.close().close().open("tbody");
        for (int row = 1; row <= rows + 1; row++) {
            row(table, row);
        }
        html.close().close().close().line();
        below(table);
        new SentBackNotes(scene, html).partAt(table.name());
        html.close().line();
    }

    private void head(Column column) {
        String unit = Marks.unit(column.unit());
        html.open("th", "scope", "col", "class", width(column.kind())).text(column.name());
        if (!unit.isEmpty()) {
            html.element("span", unit, "class", "unit");
        }
        if (column.optional()) {
            html.element("span", "optional", "class", "unit");
        }
        html.close();
    }

    private void row(Part.Readings table, int row) {
        html.open("tr").element("th", Integer.toString(row), "scope", "row");
        table.columns().forEach(column -> cell(table, row, column));
        html.close().line();
    }

    private void cell(Part.Readings table, int row, Column column) {
        Place place = Place.cell(table.name(), row, column.name());
        Optional<Trouble> trouble = scene.trouble(place);
        Cell cell = scene.cell(place, column);
        html.open("td", "class", width(column.kind()));
        html.single(
                "input",
                "type",
                "text",
                "data-entry",
                "",
                "data-name",
                table.name(),
                "data-row",
                Integer.toString(row),
                "data-column",
                column.name(),
                "data-seen",
                cell.typed(),
                "value",
                trouble.map(Trouble::typed).orElse(cell.typed()),
                "placeholder",
                cell.reason(),
                "data-said",
                trouble.map(Trouble::message).orElse(cell.understood()),
                "data-conflict",
                trouble.filter(Trouble::conflict).isPresent() ? "true" : "false",
                "aria-invalid",
                trouble.isPresent() ? "true" : "false",
                "data-kept",
                trouble.filter(Trouble::kept).isPresent() ? "true" : "false",
                "aria-label",
                "%s, row %s, %s".formatted(table.name(), row, column.name()),
                "autocomplete",
                "off",
                "spellcheck",
                "false");
        html.close();
    }

    /** How wide a cell is: a plain number is short, a DDM has its tone behind it. */
    private static String width(Kind kind) {
        if (kind instanceof Kind.Number || kind instanceof Kind.Count) {
            return "number";
        }
        return kind instanceof Kind.Ddm ? "number toned" : "words";
    }

    private void below(Part.Readings table) {
        String name = table.name();
        html.open("p", "class", "said", "role", "status", "data-cell", name).close();
        html.open("p", "class", "small count", "id", "count-" + name, "data-part", "");
        html.text(scene.counted(table)).close();
        html.open("div", "class", "tools");
        html.element("a", "Save as CSV", "href", scene.address("/csv") + scene.also("table", name));
        html.open("label", "class", "file").text("Load a CSV or xlsx file");
        html.single("input", "type", "file", "accept", ".csv,.txt,.tsv,.xlsx", "data-load", name);
        html.close().close();
    }
}
