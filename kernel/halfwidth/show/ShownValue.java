package halfwidth.show;

import halfwidth.run.Shown;
import halfwidth.run.Step;
import java.io.Serializable;
import java.util.List;

/** A step's value: a number with its unit, a text or a table. */
record ShownValue(Html html) {

    void write(Step step, Shown value) {
        if (value instanceof Shown.Grid grid && Values.isSeries(grid)) {
            html.open("p", "class", "value").text(step.name() + " = ");
            html.element("strong", Values.series(grid, step.unit())).close();
        } else if (value instanceof Shown.Grid grid && isRecord(grid)) {
            record(step.name(), grid);
        } else if (value instanceof Shown.Grid grid) {
            table(step.name(), grid);
        } else if (!(value instanceof Shown.Nothing && step.name().isEmpty())) {
            html.open("p", "class", "value");
            if (!step.name().isEmpty()) {
                html.text(step.name() + " = ");
            }
            html.element("strong", Values.words(value, step.unit())).close();
        }
    }

    /** Whether a table is one row of several things, which reads better in a line. */
    private static boolean isRecord(Shown.Grid grid) {
        return grid.rows().size() == 1 && grid.left() == 0;
    }

    private void record(String name, Shown.Grid grid) {
        html.open("p", "class", "value").text(name.isEmpty() ? "" : name + " = ");
        List<Serializable> cells = grid.rows().get(0);
        for (int i = 0; i < cells.size(); i++) {
            html.text(i == 0 ? "" : "; ").text(grid.columns().get(i) + " ");
            html.element("strong", cell(cells.get(i)));
        }
        html.close();
    }

    private static String cell(Serializable cell) {
        return cell == null
                ? "–"
                : cell instanceof Double number ? Numbers.brief(number) : cell.toString();
    }

    private void table(String name, Shown.Grid grid) {
        String label = name.isEmpty() ? "Table" : name;
        html.open(
                "div",
                "class",
                EntryTables.wide(grid.columns().size(), grid.rows().size()),
                "tabindex",
                "0",
                "role",
                "region",
                "aria-label",
                label);
        html.open("table", "class", "grid").element("caption", label);
        html.open("thead").open("tr");
        grid.columns().forEach(column -> html.element("th", column, "scope", "col"));
        html.close().close().open("tbody");
        grid.rows().forEach(this::row);
        html.close().close();
        if (grid.left() > 0) {
            html.element("p", "and %s more".formatted(Counted.of(grid.left(), "row")));
        }
        html.close();
    }

    private void row(List<Serializable> cells) {
        html.open("tr");
        for (Serializable cell : cells) {
            if (cell == null) {
                EntryTables.missing(html, "number");
            } else {
                html.element(
                        "td", cell(cell), "class", cell instanceof Double ? "number" : "words");
            }
        }
        html.close();
    }
}
