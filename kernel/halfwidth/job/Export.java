package halfwidth.job;

import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;

/**
 * All values of a job as one CSV, a line for each value that stands: {@code
 * page,visit,table,row,column,value,unit,typed,reason,time,who}. An input has no table and no row,
 * and its name for a column. The value is the number in the unit; blank with a reason is a reading
 * that could not be taken.
 */
public final class Export {
    private static final String HEADER =
            "page,visit,table,row,column,value,unit,typed,reason,time,who\r\n";

    private Export() {}

    /** Writes the values of a job, visit by visit in the order in which they were begun. */
    public static String of(Job job) {
        StringBuilder text = new StringBuilder(HEADER);
        for (Visit visit : job.visits()) {
            for (Map.Entry<Place, Line> value : job.values(visit).entrySet()) {
                Fact.Value fact = (Fact.Value) value.getValue().fact();
                if (!fact.typed().isEmpty() || !fact.reason().isEmpty()) {
                    text.append(CSVFormat.RFC4180.format(cells(fact, value.getValue()).toArray()));
                    text.append("\r\n");
                }
            }
        }
        return text.toString();
    }

    private static List<Object> cells(Fact.Value value, Line line) {
        Place at = value.place();
        return List.of(
                value.visit().page(),
                value.visit().name(),
                at.isCell() ? at.name() : "",
                at.isCell() ? at.row() : "",
                at.isCell() ? at.column() : at.name(),
                value.understood(),
                value.unit(),
                value.typed(),
                value.reason(),
                DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(line.time()),
                line.who());
    }
}
