package halfwidth.show;

import halfwidth.page.Column;
import halfwidth.page.Field;
import halfwidth.page.Part;
import halfwidth.value.Decimal;
import halfwidth.value.Entry;
import halfwidth.value.Kind;
import java.util.List;
import java.util.Optional;

/** What was entered: inputs with how they were understood, and tables of readings. */
record EntryTables(Sheet sheet, Html html) {
    private static final int NARROW = 5;
    private static final int LONG = 12;

    void inputs(Part.Inputs inputs) {
        Margin.open(html, "div", "block", inputs.line());
        html.open("table", "class", "inputs").element("caption", "Inputs").open("thead").open("tr");
        for (String head : List.of("Input", "As typed", "As understood")) {
            html.element("th", head, "scope", "col");
        }
        html.close().close().open("tbody");
        inputs.fields().forEach(this::row);
        html.close().close().close().line();
    }

    private void row(Field field) {
        html.open("tr").open("th", "scope", "row").text(field.label());
        html.open("span", "class", "source").open("code").name(field.name()).close();
        String allowed = allowed(field);
        html.text(allowed.isEmpty() ? "" : ", " + allowed).close().close();
        sheet.entry(field.name())
                .ifPresentOrElse(
                        entry -> entered(field, entry),
                        () ->
                                html.element("td", absent(field), "class", "absent")
                                        .element("td", "–", "title", absent(field)));
        html.close().line();
    }

    private static String absent(Field field) {
        return field.optional() ? Absence.OPTIONAL : "not filled in";
    }

    private void entered(Field field, Entry entry) {
        String origin = sheet.filled().origins().get(field.name());
        html.open("td", "class", "typed").text(origin == null ? entry.typed() : origin);
        if (origin != null && !entry.understood().startsWith(entry.typed())) {
            html.element("span", "in full " + entry.typed(), "class", "source");
        }
        if (origin == null && field.from().isPresent() && !sheet.example()) {
            html.element("span", "typed, not from " + field.from().get(), "class", "source");
        }
        html.close();
        html.element("td", entry.understood());
    }

    static String allowed(Field field) {
        if (field.kind() instanceof Kind.Choice choice) {
            return String.join(", ", choice.options());
        }
        Optional<String> least = field.least().map(EntryTables::limit);
        Optional<String> most = field.most().map(EntryTables::limit);
        String range =
                least.isPresent() && most.isPresent()
                        ? least.get() + " to " + most.get()
                        : least.map(at -> "at least " + at)
                                .or(() -> most.map(at -> "at most " + at))
                                .orElse("");
        return Values.withUnit(range, field.unit());
    }

    private static String limit(double value) {
        return Decimal.grouped(Numbers.full(value));
    }

    void readings(Part.Readings table) {
        Readings readings = Readings.of(table, sheet);
        Margin.open(html, "div", "block", table.line());
        html.open(
                "div",
                "class",
                wide(table.columns().size(), readings.rows().size()),
                "tabindex",
                "0",
                "role",
                "region",
                "aria-label",
                "Readings " + table.name());
        html.open("table", "class", "readings");
        html.element("caption", "Readings %s: %s".formatted(table.name(), readings.words()));
        html.open("thead").open("tr");
        table.columns().forEach(this::head);
        html.close().close().open("tbody");
        for (int row = 0; row < readings.rows().size(); row++) {
            row(readings, row);
        }
        html.close().close().close().close().line();
    }

    /** The class of a table's box: a narrow and long one is printed in columns side by side. */
    static String wide(int columns, int rows) {
        return columns <= NARROW && rows > LONG ? "wide long" : "wide";
    }

    private void head(Column column) {
        String unit = Values.unit(column.unit());
        String head = unit.isEmpty() ? column.name() : "%s (%s)".formatted(column.name(), unit);
        html.element("th", head, "scope", "col", "class", kind(column));
    }

    private static String kind(Column column) {
        boolean words = column.kind() instanceof Kind.Text || column.kind() instanceof Kind.Date;
        return words ? "words" : "number";
    }

    private void row(Readings readings, int row) {
        html.open("tr");
        for (int i = 0; i < readings.table().columns().size(); i++) {
            String cell = readings.cell(row, i);
            String kind = kind(readings.table().columns().get(i));
            if (readings.isMissing(row, i)) {
                missing(html, kind);
            } else {
                html.element("td", cell, "class", kind);
            }
        }
        html.close().line();
    }

    /** A cell whose reading is missing: shown, never filled in. */
    static void missing(Html html, String kind) {
        html.open("td", "class", "missing " + kind, "title", "missing");
        html.open("span", "aria-hidden", "true").text("–").close();
        html.element("span", "missing", "class", "unseen").close();
    }
}
