package halfwidth.adapt;

import halfwidth.adapt.Difference.Kind;
import halfwidth.adapt.Difference.Row;
import halfwidth.adapt.Difference.Side;
import halfwidth.show.Html;
import java.util.List;
import java.util.Locale;

/**
 * A difference as an HTML table: shipped on the left, adapted on the right. What became of a line
 * is said in words; changed words stand in {@code del} and {@code ins}.
 */
public final class DifferenceTable {
    private final List<Row> rows;
    private final int context;
    private final Html html = new Html();

    private DifferenceTable(Difference difference, int context) {
        this.rows = difference.rows();
        this.context = context;
    }

    /**
     * Writes the table, which is well-formed XML.
     *
     * @param context how many kept lines to show before and after each change (1)
     */
    public static String of(Difference difference, int context) {
        if (context < 0) {
            throw new IllegalArgumentException("context " + context + " must be at least 0");
        }
        DifferenceTable table = new DifferenceTable(difference, context);
        table.write(difference.isNone());
        return table.html.toString();
    }

    private void write(boolean none) {
        if (none) {
            html.element("p", "Nothing: this page says the same as the shipped one.");
            return;
        }
        html.open("div", "class", "wide")
                .open("table", "class", "difference")
                .element("caption", caption())
                .line();
        html.open("thead").open("tr");
        for (String heading : List.of("line", "shipped", "what was done", "line", "adapted")) {
            html.element("th", heading, "scope", "col");
        }
        html.close().close().line().open("tbody").line();
        int from = 0;
        while (from < rows.size()) {
            int end = from;
            while (end < rows.size() && farFromChange(end)) {
                end++;
            }
            if (end > from) {
                keptRun(rows.get(from), rows.get(end - 1));
            } else {
                row(rows.get(end++));
            }
            from = end;
        }
        html.close().close().close().line();
    }

    private String caption() {
        return "%s changed, %s removed, %s added"
                .formatted(count(Kind.CHANGED), count(Kind.REMOVED), count(Kind.ADDED));
    }

    private long count(Kind kind) {
        return rows.stream().filter(row -> row.kind() == kind).count();
    }

    private boolean farFromChange(int index) {
        int from = Math.max(0, index - context);
        int to = Math.min(rows.size(), index + context + 1);
        return rows.subList(from, to).stream().allMatch(row -> row.kind() == Kind.KEPT);
    }

    private void keptRun(Row first, Row last) {
        String lines =
                "Lines %s to %s kept, adapted lines %s to %s"
                        .formatted(
                                first.shipped().line(),
                                last.shipped().line(),
                                first.adapted().line(),
                                last.adapted().line());
        html.open("tr", "class", "kept-run").element("td", lines, "colspan", "5").close().line();
    }

    private void row(Row row) {
        String kind = row.kind().name().toLowerCase(Locale.ROOT);
        html.open("tr", "class", kind);
        side(row.shipped(), "del");
        html.element("td", kind, "class", "what");
        side(row.adapted(), "ins");
        html.close().line();
    }

    private void side(Side side, String tag) {
        html.element("td", side.line() == 0 ? "" : Integer.toString(side.line()), "class", "line");
        html.open("td", "class", "text");
        if (side.line() > 0) {
            html.open("code");
            for (Difference.Piece piece : side.pieces()) {
                if (piece.changed()) {
                    html.element(tag, piece.text());
                } else {
                    html.text(piece.text());
                }
            }
            html.close();
        }
        html.close();
    }
}
