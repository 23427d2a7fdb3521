package halfwidth.page;

import halfwidth.spreadsheet.CsvRow;
import halfwidth.value.EntryRefused;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** Reads a {@code csv readings} block, and checks that its example can be typed into it. */
final class ReadingsBlock {
    private final Problems problems;
    private final Names names;

    ReadingsBlock(Problems problems, Names names) {
        this.problems = problems;
        this.names = names;
    }

    Part.Readings read(Fence fence, String name) {
        names.claim(fence.line(), name);
        List<CsvRow> rows =
                CsvRow.read(fence.content(), fence.start(), CsvRow.COMMAS, problems::add);
        if (rows.isEmpty()) {
            return new Part.Readings(fence.start(), name, List.of(), List.of());
        }
        List<Column> columns = columns(rows.get(0));
        if (rows.size() == 1) {
            problems.add(fence.line(), "there is no example row; expected at least one");
        }
        if (rows.get(0).cells().size() == 1) {
            checkNoEmptyLine(fence);
        }
        List<List<String>> example = new ArrayList<>();
        for (CsvRow row : rows.subList(1, rows.size())) {
            if (Sheet.sameLength(row, rows.get(0).cells().size(), problems)) {
                checkCells(row, columns);
                example.add(row.cells());
            }
        }
        return new Part.Readings(fence.start(), name, columns, example);
    }

    /** The columns; as many as cells only if all of them are in order. */
    private List<Column> columns(CsvRow header) {
        List<Column> columns = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (String cell : header.cells()) {
            Optional<Column> column = ColumnHeading.of(cell).column();
            if (column.isEmpty()) {
                problems.add(
                        header.line(), "column " + Names.quoted(cell) + ColumnHeading.EXPECTED);
            } else if (!seen.add(column.get().name().toLowerCase(Locale.ROOT))) {
                problems.add(
                        header.line(),
                        "column " + column.get().name() + " is there twice; expected once");
            }
            column.ifPresent(columns::add);
        }
        return columns;
    }

    private void checkNoEmptyLine(Fence fence) {
        int line = fence.start();
        for (String content : fence.content().lines().toList()) {
            if (content.isBlank()) {
                problems.add(line, "is empty; expected \"\" for a missing reading, or no line");
            }
            line++;
        }
    }

    private void checkCells(CsvRow row, List<Column> columns) {
        if (columns.size() != row.cells().size()) {
            return;
        }
        for (int i = 0; i < columns.size(); i++) {
            try {
                columns.get(i).read(row.cells().get(i));
            } catch (EntryRefused refusal) {
                problems.add(row.line(), columns.get(i).name() + ": " + refusal.getMessage());
            }
        }
    }
}
