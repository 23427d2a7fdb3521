package halfwidth.page;

import halfwidth.value.EntryRefused;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Reads a file of inputs, a field's name and its value on each line, and tells all wrong at once.
 */
final class InputsFile {
    private final Path file;
    private final List<String> problems = new ArrayList<>();
    private final Map<String, Integer> lines = new HashMap<>();

    InputsFile(Path file) {
        this.file = file;
    }

    Filled into(Filled filled) {
        List<CsvRow> rows = FileText.rows(file);
        if (!rows.get(0).cells().equals(List.of("name", "value"))) {
            throw new EntryRefused(
                    file + ":" + rows.get(0).line() + ": expected the header name,value");
        }
        Filled read = filled;
        for (CsvRow row : rows.subList(1, rows.size())) {
            read = with(read, row);
        }
        if (!problems.isEmpty()) {
            throw new EntryRefused(String.join("\n", problems));
        }
        return read;
    }

    private Filled with(Filled filled, CsvRow row) {
        String place = file + ":" + row.line() + ": ";
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
            return row.cells().get(1).isEmpty() ? filled : filled.with(name, row.cells().get(1));
        } catch (EntryRefused refusal) {
            problems.add(place + refusal.getMessage());
            return filled;
        }
    }
}
