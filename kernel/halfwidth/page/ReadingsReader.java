package halfwidth.page;

import halfwidth.value.Entry;
import halfwidth.value.EntryRefused;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads rows into a table of readings, and tells all that is wrong with them at once. */
final class ReadingsReader {
    private static final int TOLD = 20;

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

    List<List<Optional<Entry>>> file(Path file) {
        List<CsvRow> lines = FileText.rows(file);
        FileColumns columns = FileColumns.of(lines.get(0).cells(), table.columns());
        columns.problems()
                .forEach(problem -> problems.add(place(file, lines.get(0)) + ": " + problem));
        refuseIfAny();
        List<List<Optional<Entry>>> entries = new ArrayList<>();
        for (CsvRow line : lines.subList(1, lines.size())) {
            columns.inOrder(line.cells())
                    .ifPresentOrElse(
                            cells -> row(place(file, line), cells).ifPresent(entries::add),
                            () ->
                                    problems.add(
                                            place(file, line) + ": " + columns.wrongLength(line)));
        }
        refuseIfAny();
        return atLeastOne(entries, file.toString());
    }

    private static String place(Path file, CsvRow line) {
        return file + ":" + line.line();
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
            entries.add(cell(place, table.columns().get(i), cells.get(i)));
        }
        return Optional.of(entries);
    }

    private Optional<Entry> cell(String place, Column column, String typed) {
        try {
            return column.read(typed);
        } catch (EntryRefused refusal) {
            problems.add(place + ", " + column.name() + ": " + refusal.getMessage());
            return Optional.empty();
        }
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
