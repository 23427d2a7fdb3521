package halfwidth.run;

import halfwidth.localizer.array.NamedArray;
import halfwidth.page.Column;
import halfwidth.page.Filled;
import halfwidth.page.Part;
import halfwidth.value.Entry;
import halfwidth.value.Kind;
import java.io.Serializable;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The values a page runs with; an input that is not among them is missing.
 *
 * @param given by variable name: {@code Double}, {@code Integer}, {@code String}, {@code
 *     java.time.LocalDate}, {@link NamedArray} or {@link Columns}
 * @param example whether they are the worked example's; the page's checks hold for it alone and run
 *     with it only
 */
public record Values(Map<String, Serializable> given, boolean example) implements Serializable {

    public Values {
        given = Map.copyOf(given);
    }

    /** Takes the values that are filled in on a page. */
    public static Values of(Filled filled) {
        Map<String, Serializable> given = new HashMap<>();
        filled.entries().forEach((name, entry) -> given.put(name, entry.value()));
        for (Part.Readings table : filled.page().readings()) {
            List<List<Optional<Entry>>> rows = filled.readings().get(table.name());
            if (rows != null) {
                given.put(table.name(), columns(table.columns(), rows));
            }
        }
        return new Values(given, filled.example());
    }

    private static Columns columns(List<Column> columns, List<List<Optional<Entry>>> rows) {
        List<ColumnValues> values = new ArrayList<>();
        for (int i = 0; i < columns.size(); i++) {
            List<Serializable> cells = new ArrayList<>();
            for (List<Optional<Entry>> row : rows) {
                cells.add(row.get(i).map(Entry::value).orElse(null));
            }
            Column column = columns.get(i);
            values.add(new ColumnValues(column.name(), type(column.kind()), cells));
        }
        return new Columns(values);
    }

    /** The class of the values of a kind. */
    static Class<?> type(Kind kind) {
        if (kind instanceof Kind.Number
                || kind instanceof Kind.Ddm
                || kind instanceof Kind.DdmSize) {
            return Double.class;
        }
        if (kind instanceof Kind.Count) {
            return Integer.class;
        }
        if (kind instanceof Kind.Array) {
            return NamedArray.class;
        }
        return kind instanceof Kind.Date ? LocalDate.class : String.class;
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
