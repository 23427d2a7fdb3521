package halfwidth.page;

import halfwidth.spreadsheet.CsvRow;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A block of CSV whose columns have fixed names, in any order. */
record Sheet(List<Line> lines) {
    /**
     * One row under the header.
     *
     * @param line 1-based
     */
    record Line(int line, Map<String, String> cells) {
        /** The cell in a column; "" if it is empty or the sheet lacks that column. */
        String get(String column) {
            return cells.getOrDefault(column, "");
        }

        Optional<String> find(String column) {
            return Optional.of(get(column)).filter(cell -> !cell.isEmpty());
        }
    }

    /**
     * Reads a block.
     *
     * @param known the columns there are, the first {@code required} of which must be there
     */
    static Sheet read(Fence fence, List<String> known, int required, Problems problems) {
        List<CsvRow> rows =
                CsvRow.read(fence.content(), fence.start(), CsvRow.COMMAS, problems::add);
        if (rows.isEmpty() || !headed(rows.get(0), known, required, problems)) {
            return new Sheet(List.of());
        }
        if (rows.size() == 1) {
            problems.add(fence.line(), "there is only a header; expected rows under it");
        }
        List<String> header = rows.get(0).cells();
        List<Line> lines = new ArrayList<>();
        for (CsvRow row : rows.subList(1, rows.size())) {
            if (sameLength(row, header.size(), problems)) {
                lines.add(new Line(row.line(), byName(header, row.cells())));
            }
        }
        return new Sheet(lines);
    }

    private static boolean headed(
            CsvRow header, List<String> known, int required, Problems problems) {
        int before = problems.count();
        HashSet<String> seen = new HashSet<>();
        for (String column : header.cells()) {
            if (!known.contains(column)) {
                problems.add(
                        header.line(),
                        String.format(
                                "column %s is not known; expected some of %s",
                                Names.quoted(column), String.join(",", known)));
            } else if (!seen.add(column)) {
                problems.add(header.line(), "column " + column + " is there twice; expected once");
            }
        }
        for (String column : known.subList(0, required)) {
            if (!seen.contains(column)) {
                problems.add(
                        header.line(),
                        "column "
                                + column
                                + " is missing; expected at least "
                                + String.join(",", known.subList(0, required)));
            }
        }
        return problems.count() == before;
    }

    static boolean sameLength(CsvRow row, int wanted, Problems problems) {
        int found = row.cells().size();
        if (found != wanted) {
            problems.add(
                    row.line(),
                    String.format(
                            "has %d cells where the header has %d; expected as many, with quotation"
                                    + " marks around a cell that has a comma",
                            found, wanted));
        }
        return found == wanted;
    }

    private static Map<String, String> byName(List<String> header, List<String> cells) {
        Map<String, String> named = new HashMap<>();
        for (int i = 0; i < header.size(); i++) {
            named.put(header.get(i), cells.get(i));
        }
        return named;
    }
}
