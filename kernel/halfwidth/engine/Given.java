package halfwidth.engine;

import halfwidth.run.Values;
import java.io.Serializable;
import java.time.LocalDate;
import java.util.Map;
import java.util.Objects;
import tech.tablesaw.api.DateColumn;
import tech.tablesaw.api.DoubleColumn;
import tech.tablesaw.api.IntColumn;
import tech.tablesaw.api.StringColumn;
import tech.tablesaw.api.Table;
import tech.tablesaw.columns.Column;

/**
 * Where the snippets that declare a page's inputs find the values of the current run. It is static
 * because a snippet's code can reach nothing else; one worker runs one page at a time.
 */
public final class Given {
    private static volatile Map<String, Serializable> values = Map.of();

    private Given() {}

    static void set(Values given) {
        values = given.given();
    }

    /**
     * Returns an input's value (boxed number, text, date or array) as the type its variable has.
     */
    public static <T> T value(String name, Class<T> type) {
        return type.cast(Objects.requireNonNull(values.get(name), name));
    }

    /** Returns a new Tablesaw table of the readings filled in under this name. */
    public static Table table(String name) {
        Table table = Table.create(name);
        for (Values.ColumnValues column : value(name, Values.Columns.class).columns()) {
            table.addColumns(column(column));
        }
        return table;
    }

    private static Column<?> column(Values.ColumnValues values) {
        String name = values.name();
        if (values.type() == Double.class) {
            return filled(DoubleColumn.create(name), values, Double.class);
        }
        if (values.type() == Integer.class) {
            return filled(IntColumn.create(name), values, Integer.class);
        }
        if (values.type() == LocalDate.class) {
            return filled(DateColumn.create(name), values, LocalDate.class);
        }
        return filled(StringColumn.create(name), values, String.class);
    }

    private static <T> Column<T> filled(
            Column<T> column, Values.ColumnValues values, Class<T> type) {
        for (Serializable cell : values.cells()) {
            if (cell == null) {
                column.appendMissing();
            } else {
                column.append(type.cast(cell));
            }
        }
        return column;
    }
}
