package halfwidth.job;

import halfwidth.spreadsheet.CsvFor;
import halfwidth.spreadsheet.CsvText;
import java.math.BigDecimal;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Map;

/**
 * All values of a job as one CSV, a line for each value that stands: {@code
 * page,visit,table,row,column,value,unit,typed,reason,time,who}. An input has no table and no row,
 * and its name for a column. The value is the number in the unit; blank with a reason is a reading
 * that could not be taken.
 */
public final class Export {
    private static final List<String> HEADER =
            List.of(
                    "page", "visit", "table", "row", "column", "value", "unit", "typed", "reason",
                    "time", "who");

    private Export() {}

    /** Writes the values of a job, visit by visit in the order in which they were begun. */
    public static String of(Job job, CsvFor reader) {
        CsvText csv = new CsvText(reader).line(HEADER);
        for (Visit visit : job.visits()) {
            for (Map.Entry<Place, Line> value : job.values(visit).entrySet()) {
                Fact.Value fact = (Fact.Value) value.getValue().fact();
                if (!fact.typed().isEmpty() || !fact.reason().isEmpty()) {
                    csv.line(cells(fact, value.getValue()));
                }
            }
        }
        return csv.toString();
    }

    private static List<Object> cells(Fact.Value value, Line line) {
        Place at = value.place();
        return List.of(
                value.visit().page(),
                value.visit().name(),
                at.isCell() ? at.name() : "",
                at.isCell() ? at.row() : "",
                at.isCell() ? at.column() : at.name(),
                value(value),
                value.unit(),
                value.typed(),
                value.reason(),
                DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(line.time()),
                line.who());
    }

    /** What has a unit is a number; words have none. */
    private static Object value(Fact.Value value) {
        try {
            return value.unit().isEmpty() ? value.understood() : new BigDecimal(value.understood());
        } catch (NumberFormatException words) {
            return value.understood();
        }
    }
}
