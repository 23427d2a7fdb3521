package halfwidth.show;

import halfwidth.page.Part;
import java.util.List;
import java.util.function.BiPredicate;
import java.util.stream.IntStream;

/**
 * The rows of a table of readings, counted: a blank cell is a missing reading, unless its column is
 * optional.
 */
record Readings(Part.Readings table, List<List<String>> rows) {

    static Readings of(Part.Readings table, Sheet sheet) {
        return new Readings(table, sheet.rows(table.name()));
    }

    /** A cell as typed; "" where a row is short. */
    String cell(int row, int column) {
        List<String> cells = rows.get(row);
        return column < cells.size() && cells.get(column) != null ? cells.get(column).strip() : "";
    }

    /** Whether a reading should be in a cell and is not. */
    boolean isMissing(int row, int column) {
        return cell(row, column).isEmpty() && !table.columns().get(column).optional();
    }

    long missing() {
        return cells(this::isMissing);
    }

    /** The readings that are there or should be. */
    private long wanted() {
        return cells((row, column) -> isMissing(row, column) || !cell(row, column).isEmpty());
    }

    private long cells(BiPredicate<Integer, Integer> which) {
        return IntStream.range(0, rows.size())
                .mapToLong(
                        row ->
                                IntStream.range(0, table.columns().size())
                                        .filter(column -> which.test(row, column))
                                        .count())
                .sum();
    }

    String words() {
        if (rows.isEmpty()) {
            return table.optional() ? Absence.OPTIONAL : "not filled in";
        }
        String size = Counted.of(rows.size(), "row");
        return missing() == 0
                ? size
                : "%s, %s of %s readings missing".formatted(size, missing(), wanted());
    }
}
