package halfwidth.show;

import halfwidth.run.Shown;
import halfwidth.run.Step;
import java.io.Serializable;
import java.util.List;

/** A step's value: a number with its unit, a text or a table. */
record ShownValue(Html html) {
    /** Some thousand times the rounding of a double. */
    private static final double NOISE = 1e-12;

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
        double[] noise = noise(grid);
        grid.rows().forEach(cells -> row(cells, noise));
        html.close().close();
        if (grid.left() > 0) {
            html.element("p", "and %s more".formatted(Counted.of(grid.left(), "row")));
        }
        html.close();
    }

    /** Below what size a number of a column is what rounding left of 0 beside its largest. */
    private static double[] noise(Shown.Grid grid) {
        double[] noise = new double[grid.columns().size()];
        for (List<Serializable> cells : grid.rows()) {
            for (int i = 0; i < noise.length; i++) {
                if (cells.get(i) instanceof Double number) {
                    noise[i] = Math.max(noise[i], NOISE * Math.abs(number));
                }
            }
        }
        return noise;
    }

    private void row(List<Serializable> cells, double[] noise) {
        html.open("tr");
        for (int i = 0; i < noise.length; i++) {
            Serializable cell = cells.get(i);
            if (cell == null) {
                EntryTables.missing(html, "number");
            } else if (cell instanceof Double number) {
                double shown = Math.abs(number) < noise[i] ? 0 : number;
                html.element("td", Numbers.brief(shown), "class", "number");
            } else {
                html.element("td", cell.toString(), "class", "words");
            }
        }
        html.close();
    }
}
