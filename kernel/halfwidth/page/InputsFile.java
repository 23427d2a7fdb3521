package halfwidth.page;

import halfwidth.spreadsheet.CsvRow;
import halfwidth.spreadsheet.SpreadsheetFile;
import halfwidth.value.EntryRefused;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Reads a file of inputs, a field's name and its value on each line, and tells all wrong at once.
 */
final class InputsFile {
    private final SpreadsheetFile file;
    private final List<String> problems = new ArrayList<>();
    private final Map<String, Integer> lines = new HashMap<>();

    InputsFile(SpreadsheetFile file) {
        this.file = file;
    }

    Filled into(Filled filled) {
        List<CsvRow> rows = file.rows();
        List<String> header =
                rows.get(0).cells().stream().map(cell -> cell.toLowerCase(Locale.ROOT)).toList();
        if (!header.equals(List.of("name", "value"))) {
            throw new EntryRefused(file.place(rows.get(0)) + ": expected the header name,value");
        }
        DecimalMark mark =
                DecimalMark.of(
                        file.separator(),
                        rows.stream()
                                .filter(row -> row.cells().size() == 2 && isNumber(filled, row))
                                .map(row -> row.cells().get(1)));
        Filled read = filled;
        for (CsvRow row : rows.subList(1, rows.size())) {
            read = with(read, row, mark);
        }
        if (!problems.isEmpty()) {
            throw new EntryRefused(String.join("\n", problems));
        }
        return read;
    }

    private static boolean isNumber(Filled filled, CsvRow row) {
        return filled.page().fields().stream()
                .filter(field -> field.name().equals(row.cells().get(0)))
                .anyMatch(field -> DecimalMark.isIn(field.kind()));
    }

    private Filled with(Filled filled, CsvRow row, DecimalMark mark) {
        String place = file.place(row) + ": ";
        if (row.cells().size() != 2) {
            problems.add(
                    place
                            + "has "
                            + row.cells().size()
                            + " cells; give a name and a value, and put quotation marks around a"
                            + " value with a comma in it");
            return filled;
        }
        String name = row.cells().get(0);
        Integer earlier = lines.putIfAbsent(name, row.line());
        if (earlier != null) {
            problems.add(place + name + " is already on line " + earlier + "; give it once");
            return filled;
        }
        try {
            String cell = row.cells().get(1);
            String typed = isNumber(filled, row) ? mark.read(cell) : cell;
            return typed.isEmpty() ? filled : filled.with(name, typed);
        } catch (EntryRefused refusal) {
            problems.add(place + refusal.getMessage());
            return filled;
        }
    }
}
