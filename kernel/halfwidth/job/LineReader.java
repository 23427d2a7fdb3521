package halfwidth.job;

import halfwidth.approval.Role;
import halfwidth.key.KeyMark;
import java.time.DateTimeException;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Locale;
import org.apache.commons.csv.CSVRecord;

/**
 * Reads the cells of journal lines that are as {@link LineText} wrote them. Most lines are of the
 * same visit and time as the one before, and share them with it.
 */
final class LineReader {
    private static final int TO_SECONDS = "2026-06-12T10:31:00".length();

    private Visit visit = new Visit("", "");
    private String timeText = "";
    private OffsetDateTime time;

    /**
     * Reads the cells of a line.
     *
     * @throws JobRefused if they are none of a journal's
     */
    Line read(CSVRecord cells) {
        try {
            return new Line(
                    Long.parseLong(cells.get(0)),
                    Integer.parseInt(cells.get(1)),
                    time(cells.get(2)),
                    plain(cells.get(3)),
                    fact(cells));
        } catch (IllegalArgumentException
                | DateTimeException
                | ArrayIndexOutOfBoundsException wrong) {
            throw new JobRefused("is no line of this program's: " + wrong.getMessage());
        }
    }

    private OffsetDateTime time(String text) {
        if (!text.equals(timeText)) {
            time = read(text);
            timeText = text;
        }
        return time;
    }

    /** The JDK's own reader took most of the time to open a job. */
    private static OffsetDateTime read(String text) {
        if (text.length() <= TO_SECONDS || text.charAt(TO_SECONDS) == '.') {
            return OffsetDateTime.parse(text);
        }
        return OffsetDateTime.of(
                Integer.parseInt(text, 0, 4, 10),
                Integer.parseInt(text, 5, 7, 10),
                Integer.parseInt(text, 8, 10, 10),
                Integer.parseInt(text, 11, 13, 10),
                Integer.parseInt(text, 14, 16, 10),
                Integer.parseInt(text, 17, 19, 10),
                0,
                ZoneOffset.of(text.substring(TO_SECONDS)));
    }

    private Visit visit(String page, String name) {
        if (!visit.page().equals(page) || !visit.name().equals(name)) {
            visit = new Visit(page, name);
        }
        return visit;
    }

    private Fact fact(CSVRecord cells) {
        Visit of = visit(plain(cells.get(5)), plain(cells.get(6)));
        String kind = cells.get(4);
        String name = plain(cells.get(7));
        String typed = plain(cells.get(10));
        String understood = plain(cells.get(11));
        String remark = plain(cells.get(15));
        return switch (kind) {
            case "value" -> value(of, cells);
            case "result" ->
                    new Fact.Found(
                            of,
                            new Finding(
                                    name,
                                    understood,
                                    cells.get(12),
                                    cells.get(13),
                                    remark,
                                    plain(cells.get(10))));
            case "run" -> new Fact.Ran(of, Outcome.read(name), understood);
            case "undo" -> new Fact.Undo(of, Long.parseLong(name));
            case "source" -> new Fact.Choice(of, name, understood);
            case "record" -> new Fact.Recorded(of, name, understood, typed);
            case "despite" -> new Fact.Despite(of, name, typed, understood, remark);
            case "sent back" -> new Fact.SentBack(of, name, typed, understood, remark);
            case "answer" -> new Fact.Answered(of, Long.parseLong(name), typed, remark);
            case "difference seen" -> new Fact.Acknowledged(of, typed, understood);
            case "agreed" -> new Fact.Agreed(of, understood, typed, remark);
            case "note" -> new Fact.Noted(of, remark);
            default -> signed(of, cells);
        };
    }

    /** Lines of before there was a name of its own were signed by whom the line is by. */
    private static Fact signed(Visit visit, CSVRecord cells) {
        String by = cells.get(10).isEmpty() ? cells.get(3) : cells.get(10);
        return new Fact.Signed(
                visit,
                plain(cells.get(7)),
                plain(cells.get(11)),
                Role.valueOf(cells.get(4).toUpperCase(Locale.ROOT)),
                plain(by),
                plain(cells.get(15)),
                plain(cells.get(9)),
                new KeyMark(plain(cells.get(12)), plain(cells.get(13))));
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
