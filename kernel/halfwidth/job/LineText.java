package halfwidth.job;

import java.time.format.DateTimeFormatter;
import java.util.List;
import org.apache.commons.csv.CSVFormat;

/**
 * Writes the cells of a journal line, without its checks. A line break within a cell is spelled
 * out.
 */
final class LineText {
    /** The columns; those that a kind of line has no use for are blank. */
    static final List<String> COLUMNS =
            List.of(
                    "number",
                    "more",
                    "time",
                    "who",
                    "kind",
                    "page",
                    "visit",
                    "name",
                    "row",
                    "column",
                    "typed",
                    "understood",
                    "unit",
                    "uncertainty",
                    "replaced",
                    "remark");

    private LineText() {}

    /** A line as CSV, without its checks and line end. */
    static String write(Line line) {
        Object[] cells = new Object[COLUMNS.size()];
        Object[] what = cells(line.fact());
        cells[0] = line.number();
        cells[1] = line.more();
        cells[2] = DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(line.time());
        cells[3] = spelled(line.who());
        for (int i = 0; i < what.length; i++) {
            cells[4 + i] = spelled(what[i].toString());
        }
        return CSVFormat.DEFAULT.format(cells);
    }

    private static Object[] cells(Fact fact) {
        if (fact instanceof Fact.Value value) {
            Place at = value.place();
            return row(
                    "value",
                    fact,
                    at.name(),
                    at.isCell() ? at.row() : "",
                    at.column(),
                    value.typed(),
                    value.understood(),
                    value.unit(),
                    "",
                    value.replaced(),
                    value.reason());
        }
        if (fact instanceof Fact.Found found) {
            Finding is = found.finding();
            return row(
                    "result",
                    fact,
                    is.name(),
                    "",
                    "",
                    is.shown(),
                    is.value(),
                    is.unit(),
                    is.uncertainty(),
                    "",
                    is.verdict());
        }
        if (fact instanceof Fact.Ran ran) {
            return brief("run", fact, ran.outcome().words(), ran.madeFrom(), "");
        }
        if (fact instanceof Fact.Undo undo) {
            return brief("undo", fact, Long.toString(undo.undone()), "", "");
        }
        if (fact instanceof Fact.Choice choice) {
            return brief("source", fact, choice.input(), choice.from(), "");
        }
        if (fact instanceof Fact.Recorded record) {
            return named("record", fact, record.file(), record.content(), record.digest(), "");
        }
        if (fact instanceof Fact.Signed signed) {
            return row(
                    signed.role().words(),
                    fact,
                    signed.file(),
                    "",
                    signed.content(),
                    signed.by(),
                    signed.digest(),
                    signed.mark().key(),
                    signed.mark().signature(),
                    "",
                    signed.remark());
        }
        if (fact instanceof Fact.Despite despite) {
            return named(
                    "despite",
                    fact,
                    despite.file(),
                    despite.by(),
                    despite.against(),
                    despite.reason());
        }
        if (fact instanceof Fact.SentBack back) {
            return named("sent back", fact, back.at(), back.by(), back.content(), back.remark());
        }
        if (fact instanceof Fact.Answered answer) {
            String to = Long.toString(answer.to());
            return named("answer", fact, to, answer.by(), "", answer.text());
        }
        if (fact instanceof Fact.Acknowledged look) {
            return named("difference seen", fact, "", look.by(), look.difference(), "");
        }
        if (fact instanceof Fact.Agreed agreed) {
            return row(
                    "agreed",
                    fact,
                    "",
                    "",
                    "",
                    agreed.by(),
                    agreed.digest(),
                    "",
                    "",
                    "",
                    agreed.needs());
        }
        return brief("note", fact, "", "", ((Fact.Noted) fact).text());
    }

    private static Object[] brief(
            String kind, Fact fact, String name, String understood, String remark) {
        return named(kind, fact, name, "", understood, remark);
    }

    private static Object[] named(
            String kind, Fact fact, String name, String typed, String understood, String remark) {
        return row(kind, fact, name, "", "", typed, understood, "", "", "", remark);
    }

    private static Object[] row(String kind, Fact fact, Object... rest) {
        Object[] row = new Object[3 + rest.length];
        row[0] = kind;
        row[1] = fact.visit().page();
        row[2] = fact.visit().name();
        System.arraycopy(rest, 0, row, 3, rest.length);
        return row;
    }

    /** Every line break spelled out as in {@code \n}, so that an entry is one line. */
    private static String spelled(String cell) {
        boolean plain = cell.indexOf('\\') < 0 && cell.indexOf('\n') < 0 && cell.indexOf('\r') < 0;
        return plain ? cell : cell.replace("\\", "\\\\").replace("\n", "\\n").replace("\r", "\\r");
    }
}
