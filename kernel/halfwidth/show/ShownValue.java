package halfwidth.show;

import halfwidth.run.Shown;
import halfwidth.run.Step;
import java.io.Serializable;
import java.util.List;

/** A step's value: a number with its unit, a text, a table or a picture. */
record ShownValue(Html html, Pictures pictures) {

    void write(Step step, Shown value) {
        if (value instanceof Shown.Grid grid && Values.isSeries(grid)) {
            html.open("p", "class", "value").text(step.name() + " = ");
            html.element("strong", Values.series(grid, step.unit())).close();
        } else if (value instanceof Shown.Grid grid) {
            table(step.name(), grid);
        } else if (value instanceof Shown.Picture picture) {
            picture(step, picture);
        } else if (!(value instanceof Shown.Nothing && step.name().isEmpty())) {
            html.open("p", "class", "value");
            if (!step.name().isEmpty()) {
                html.text(step.name() + " = ");
            }
            html.element("strong", Values.words(value, step.unit())).close();
        }
    }

    private void table(String name, Shown.Grid grid) {
        String label = name.isEmpty() ? "Table" : name;
        html.open("div", "class", "wide", "tabindex", "0", "role", "region", "aria-label", label);
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
            } else if (cell instanceof Double number) {
                html.element("td", Numbers.brief(number), "class", "number");
            } else {
                html.element("td", cell.toString(), "class", "words");
            }
        }
        html.close();
    }

    private void picture(Step step, Shown.Picture picture) {
        String source = pictures.source(step, picture);
        html.open("figure", "tabindex", "0", "aria-label", picture.title());
        if (source.isEmpty()) {
            html.element("figcaption", picture.description());
        } else {
            html.single("img", "src", source, "alt", picture.description());
        }
        html.close();
    }
}
