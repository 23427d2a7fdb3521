package halfwidth.show;

import halfwidth.page.Part;
import java.util.List;

/** The rows of a table of readings, counted: a blank cell is a missing reading. */
record Readings(Part.Readings table, List<List<String>> rows) {

    static Readings of(Part.Readings table, Sheet sheet) {
        return new Readings(table, sheet.rows(table.name()));
    }

    /** A cell as typed; "" where a row is short. */
    String cell(int row, int column) {
        List<String> cells = rows.get(row);
        return column < cells.size() && cells.get(column) != null ? cells.get(column).strip() : "";
    }

    long missing() {
        long missing = 0;
        for (int row = 0; row < rows.size(); row++) {
            for (int column = 0; column < table.columns().size(); column++) {
                missing += cell(row, column).isEmpty() ? 1 : 0;
            }
        }
        return missing;
    }

    String words() {
        if (rows.isEmpty()) {
            return "not filled in";
        }
        String size = Counted.of(rows.size(), "row");
        return missing() == 0
                ? size
                : "%s, %s of %s readings missing"
                        .formatted(size, missing(), rows.size() * table.columns().size());
    }
}
