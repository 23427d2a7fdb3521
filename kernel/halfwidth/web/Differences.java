package halfwidth.web;

import com.github.difflib.text.DiffRow;
import com.github.difflib.text.DiffRowGenerator;
import halfwidth.show.Html;
import java.util.List;

/** What differs between the shipped page and the page as it is, side by side, line by line. */
record Differences(String shipped, String adapted, Html html) {

    void write() {
        if (shipped.isEmpty()) {
            html.element("p", "There is no shipped page of this name.");
        } else if (lines(shipped).equals(lines(adapted))) {
            html.element("p", "Nothing: this is the page as shipped.");
        } else {
            table(
                    DiffRowGenerator.create()
                            .lineNormalizer(line -> line)
                            .build()
                            .generateDiffRows(lines(shipped), lines(adapted)));
        }
    }

    private static List<String> lines(String text) {
        return text.lines().toList();
    }

    private void table(List<DiffRow> rows) {
        html.open("div", "class", "wide", "tabindex", "0", "role", "region");
        html.open("table", "class", "differences").open("thead").open("tr");
        for (String head : List.of("What", "Shipped", "Here")) {
            html.element("th", head, "scope", "col");
        }
        html.close().close().open("tbody");
        rows.stream().filter(row -> row.getTag() != DiffRow.Tag.EQUAL).forEach(this::row);
        html.close().close().close().line();
    }

    private void row(DiffRow row) {
        String what =
                switch (row.getTag()) {
                    case INSERT -> "added";
                    case DELETE -> "left out";
                    default -> "changed";
                };
        html.open("tr").element("th", what, "scope", "row");
        cell(row.getOldLine());
        cell(row.getNewLine());
        html.close().line();
    }

    private void cell(String line) {
        html.open("td").open("pre").element("code", line).close().close();
    }
}
