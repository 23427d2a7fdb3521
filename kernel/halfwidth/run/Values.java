package halfwidth.run;

import halfwidth.localizer.array.NamedArray;
import halfwidth.page.Column;
import halfwidth.page.Field;
import halfwidth.page.Filled;
import halfwidth.page.Page;
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
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The values a page runs with; an input that is not among them is missing.
 *
 * @param given by variable name: {@code Double}, {@code Integer}, {@code String}, {@code
 *     java.time.LocalDate}, {@link NamedArray} or {@link Columns}
 * @param example whether they are the worked example's; the page's checks hold for it alone and run
 *     with it only
 * @param optional the names of inputs and tables that may be missing
 */
public record Values(Map<String, Serializable> given, boolean example, Set<String> optional)
        implements Serializable {

    public Values {
        given = Map.copyOf(given);
        optional = Set.copyOf(optional);
    }

    /** Values none of which may be missing. */
    public Values(Map<String, Serializable> given, boolean example) {
        this(given, example, Set.of());
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
        return new Values(given, filled.example(), optional(filled.page()));
    }

    private static Set<String> optional(Page page) {
        Stream<String> fields = page.fields().stream().filter(Field::optional).map(Field::name);
        Stream<String> tables =
                page.readings().stream().filter(Part.Readings::optional).map(Part.Readings::name);
        return Stream.concat(fields, tables).collect(Collectors.toSet());
    }

    /** The same values as a station's, with which no checks run. */
    public Values withoutChecks() {
        return new Values(given, false, optional);
    }

    /** The same values but for one number. */
    public Values with(InputQuantity quantity, double number) {
        return with(List.of(quantity), new double[] {number});
    }

    /** The same values but for these numbers, which stand in the order of the quantities. */
    public Values with(List<InputQuantity> quantities, double[] numbers) {
        Map<String, Serializable> changed = new HashMap<>(given);
        Map<String, Map<String, List<Serializable>>> tables = new HashMap<>();
        for (int i = 0; i < numbers.length; i++) {
            InputQuantity quantity = quantities.get(i);
            if (quantity.column().isEmpty()) {
                changed.put(quantity.name(), numbers[i]);
            } else {
                tables.computeIfAbsent(quantity.name(), this::cells)
                        .get(quantity.column())
                        .set(quantity.row() - 1, numbers[i]);
            }
        }
        tables.forEach((name, cells) -> changed.put(name, columns(name, cells)));
        return new Values(changed, example, optional);
    }

    private Map<String, List<Serializable>> cells(String table) {
        Map<String, List<Serializable>> cells = new HashMap<>();
        ((Columns) given.get(table))
                .columns()
                .forEach(column -> cells.put(column.name(), new ArrayList<>(column.cells())));
        return cells;
    }

    private Columns columns(String table, Map<String, List<Serializable>> cells) {
        return new Columns(
                ((Columns) given.get(table))
                        .columns().stream()
                                .map(
                                        column ->
                                                new ColumnValues(
                                                        column.name(),
                                                        column.type(),
                                                        cells.get(column.name())))
                                .toList());
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
