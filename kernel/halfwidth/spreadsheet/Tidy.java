package halfwidth.spreadsheet;

import java.util.ArrayList;
import java.util.List;

/** Takes out of rows what spreadsheets put around the cells that somebody filled in. */
final class Tidy {
    private Tidy() {}

    /** A cell without blanks around it, and with plain blanks for those that do not break. */
    static String cell(String cell) {
        return cell.replaceAll("[\u00a0\\r\\n]+", " ").strip();
    }

    /**
     * Rows without the notes above the header, the empty ones, and the empty columns behind. A
     * spreadsheet writes all rows of one length, so that one of another length is left as it is:
     * blanks at its end may come from a decimal comma that moved its cells.
     */
    static List<CsvRow> rows(List<CsvRow> rows) {
        List<CsvRow> filled =
                rows.stream()
                        .filter(row -> row.cells().stream().anyMatch(cell -> !cell.isEmpty()))
                        .dropWhile(row -> isNote(row.cells()))
                        .toList();
        int width = width(filled);
        List<CsvRow> cut = new ArrayList<>();
        for (CsvRow row : filled) {
            boolean whole = row.cells().size() == filled.get(0).cells().size();
            int length = whole ? width : row.cells().size();
            cut.add(new CsvRow(row.line(), List.copyOf(row.cells().subList(0, length))));
        }
        return cut;
    }

    private static boolean isNote(List<String> cells) {
        return cells.get(0).startsWith("#");
    }

    private static int width(List<CsvRow> rows) {
        return rows.stream()
                .filter(row -> row.cells().size() == rows.get(0).cells().size())
                .mapToInt(row -> widthOf(row.cells()))
                .max()
                .orElse(0);
    }

    private static int widthOf(List<String> cells) {
        int width = cells.size();
        while (width > 0 && cells.get(width - 1).isEmpty()) {
            width--;
        }
        return width;
    }
}
