package halfwidth.job;

import java.time.DateTimeException;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** The cells of a journal line, without its checks. A line break within a cell is spelled out. */
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
                    "",
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
            return brief("record", fact, record.file(), record.digest(), "");
        }
        if (fact instanceof Fact.Signed signed) {
            String kind = signed.role().words();
            return brief(kind, fact, signed.file(), signed.digest(), signed.remark());
        }
        return brief("note", fact, "", "", ((Fact.Noted) fact).text());
    }

    private static Object[] brief(
            String kind, Fact fact, String name, String understood, String remark) {
        return row(kind, fact, name, "", "", "", understood, "", "", "", remark);
    }

    private static Object[] row(String kind, Fact fact, Object... rest) {
        Object[] row = new Object[3 + rest.length];
        row[0] = kind;
        row[1] = fact.visit().page();
        row[2] = fact.visit().name();
        System.arraycopy(rest, 0, row, 3, rest.length);
        return row;
    }

    /**
     * Reads the cells of a line.
     *
     * @throws JobRefused if they are none of a journal's
     */
    static Line read(CSVRecord cells) {
        try {
            return new Line(
                    Long.parseLong(cells.get(0)),
                    Integer.parseInt(cells.get(1)),
                    OffsetDateTime.parse(cells.get(2)),
                    plain(cells.get(3)),
                    fact(cells));
        } catch (IllegalArgumentException
                | DateTimeException
                | ArrayIndexOutOfBoundsException wrong) {
            throw new JobRefused("is no line of this program's: " + wrong.getMessage());
        }
    }

    private static Fact fact(CSVRecord cells) {
        Visit visit = new Visit(plain(cells.get(5)), plain(cells.get(6)));
        String kind = cells.get(4);
        String name = plain(cells.get(7));
        String understood = plain(cells.get(11));
        String remark = plain(cells.get(15));
        return switch (kind) {
            case "value" -> value(visit, cells);
            case "result" ->
                    new Fact.Found(
                            visit,
                            new Finding(name, understood, cells.get(12), cells.get(13), remark));
            case "run" -> new Fact.Ran(visit, Outcome.read(name), understood);
            case "undo" -> new Fact.Undo(visit, Long.parseLong(name));
            case "source" -> new Fact.Choice(visit, name, understood);
            case "record" -> new Fact.Recorded(visit, name, understood);
            case "note" -> new Fact.Noted(visit, remark);
            default ->
                    new Fact.Signed(
                            visit,
                            name,
                            understood,
                            Fact.Role.valueOf(kind.toUpperCase(Locale.ROOT)),
                            remark);
        };
    }

    private static Fact value(Visit visit, CSVRecord cells) {
        int row = cells.get(8).isEmpty() ? 0 : Integer.parseInt(cells.get(8));
        return new Fact.Value(
                visit,
                new Place(plain(cells.get(7)), row, plain(cells.get(9))),
                plain(cells.get(10)),
                plain(cells.get(11)),
                cells.get(12),
                plain(cells.get(14)),
                plain(cells.get(15)));
    }

    /** Every line break spelled out as in {@code \n}, so that an entry is one line. */
    private static String spelled(String cell) {
        boolean plain = cell.indexOf('\\') < 0 && cell.indexOf('\n') < 0 && cell.indexOf('\r') < 0;
        return plain ? cell : cell.replace("\\", "\\\\").replace("\n", "\\n").replace("\r", "\\r");
    }

    private static String plain(String cell) {
        if (cell.indexOf('\\') < 0) {
            return cell;
        }
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < cell.length(); i++) {
            char letter = cell.charAt(i);
            if (letter == '\\' && i + 1 < cell.length()) {
                i++;
                letter = cell.charAt(i) == 'n' ? '\n' : cell.charAt(i) == 'r' ? '\r' : '\\';
            }
            text.append(letter);
        }
        return text.toString();
    }
}
