package halfwidth.page;

import halfwidth.spreadsheet.CsvRow;
import halfwidth.spreadsheet.SpreadsheetFile;
import halfwidth.value.Entry;
import halfwidth.value.EntryRefused;
import halfwidth.value.Kind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.regex.Pattern;

/** Reads rows into a table of readings, and tells all that is wrong with them at once. */
final class ReadingsReader {
    private static final int TOLD = 20;
    private static final Pattern DATE = Pattern.compile("\\d{4}-\\d{2}-\\d{2}( .*)?");

    private final Part.Readings table;
    private final List<String> problems = new ArrayList<>();

    ReadingsReader(Part.Readings table) {
        this.table = table;
    }

    List<List<Optional<Entry>>> rows(List<List<String>> rows) {
        List<List<Optional<Entry>>> entries = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            row(table.name() + ", row " + (i + 1), rows.get(i)).ifPresent(entries::add);
        }
        refuseIfAny();
        return atLeastOne(entries, table.name());
    }

    List<List<Optional<Entry>>> file(SpreadsheetFile file) {
        CsvRow header = file.rows().get(0);
        List<CsvRow> below = file.rows().subList(1, file.rows().size());
        FileColumns columns = FileColumns.of(file, table.columns());
        columns.problems().forEach(problem -> problems.add(file.place(header) + ": " + problem));
        refuseIfAny();
        List<List<Optional<Entry>>> entries = new ArrayList<>();
        for (CsvRow line : below) {
            if (line.cells().size() == columns.width()) {
                entries.add(row(file.place(line), columns, line.cells()));
            } else {
                problems.add(file.place(line) + ": " + columns.wrongLength(line));
            }
        }
        refuseIfAny();
        return atLeastOne(entries, file.name());
    }

    private List<Optional<Entry>> row(String place, FileColumns columns, List<String> cells) {
        List<Optional<Entry>> entries = new ArrayList<>();
        for (int i = 0; i < table.columns().size(); i++) {
            Column column = table.columns().get(i);
            int at = i;
            entries.add(cell(place, column, () -> typed(column, columns.typed(at, cells))));
        }
        return entries;
    }

    private static <T> List<T> atLeastOne(List<T> rows, String where) {
        if (rows.isEmpty()) {
            throw new EntryRefused(where + " has no rows; give at least one reading");
        }
        return rows;
    }

    private Optional<List<Optional<Entry>>> row(String place, List<String> cells) {
        if (cells.size() != table.columns().size()) {
            problems.add(
                    String.format(
                            "%s has %d cells; give %d, blank where a reading is missing",
                            place, cells.size(), table.columns().size()));
            return Optional.empty();
        }
        List<Optional<Entry>> entries = new ArrayList<>();
        for (int i = 0; i < cells.size(); i++) {
            String typed = cells.get(i);
            entries.add(cell(place, table.columns().get(i), () -> typed));
        }
        return Optional.of(entries);
    }

    private Optional<Entry> cell(String place, Column column, Supplier<String> typed) {
        try {
            return column.read(typed.get());
        } catch (EntryRefused refusal) {
            problems.add(place + ", " + column.name() + ": " + refusal.getMessage());
            return Optional.empty();
        }
    }

    /** A spreadsheet makes a date of a fraction or a range, and says nothing. */
    private static String typed(Column column, String cell) {
        boolean number = DecimalMark.isIn(column.kind()) || column.kind() instanceof Kind.Count;
        if (number && DATE.matcher(cell).matches()) {
            throw new EntryRefused(
                    cell
                            + " is a date where a number is expected; a spreadsheet makes one of"
                            + " what is typed as 1/2 or 1-2: make the cell text and type it again");
        }
        return cell;
    }

    private void refuseIfAny() {
        if (!problems.isEmpty()) {
            String more =
                    problems.size() > TOLD ? "\nand " + (problems.size() - TOLD) + " more" : "";
            List<String> told = problems.subList(0, Math.min(TOLD, problems.size()));
            throw new EntryRefused(String.join("\n", told) + more);
        }
    }
}
