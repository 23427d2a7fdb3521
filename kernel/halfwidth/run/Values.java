package halfwidth.run;

import java.io.Serializable;
import java.util.List;
import java.util.Map;

/**
 * The values a page runs with; an input that is not among them is missing.
 *
 * @param given by variable name: {@code Double}, {@code Integer}, {@code String}, {@code
 *     java.time.LocalDate} or {@link Columns}
 */
public record Values(Map<String, Serializable> given) implements Serializable {

    public Values {
        given = Map.copyOf(given);
    }

    /** The columns of a table of readings, all of the same length. */
    public record Columns(List<ColumnValues> columns) implements Serializable {
        public Columns {
            columns = List.copyOf(columns);
        }
    }

    /**
     * One column.
     *
     * @param type the class of its cells
     * @param cells {@code Double}, {@code Integer}, {@code String} or {@code LocalDate}; null is
     *     missing
     */
    public record ColumnValues(String name, Class<?> type, List<Serializable> cells)
            implements Serializable {}
}
