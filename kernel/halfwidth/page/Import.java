package halfwidth.page;

import halfwidth.spreadsheet.CsvRow;
import halfwidth.spreadsheet.SpreadsheetFile;
import halfwidth.value.EntryRefused;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Foreign data, from a file or a pasted block, on their way into a table of readings. Nothing is
 * guessed: the mapping is shown, and units and tone sides that are not stated are asked for.
 *
 * @param mapping how each column of the data is taken
 * @param absent the table's columns that the data lack: they stay blank
 * @param rows the rows as one would type them, in the order of the table's columns; none as long as
 *     there are questions or problems
 * @param questions what has to be stated first
 * @param problems what is not understood, by row
 */
public record Import(
        List<Mapped> mapping,
        List<String> absent,
        List<List<String>> rows,
        List<String> questions,
        List<String> problems) {

    public Import {
        mapping = List.copyOf(mapping);
        absent = List.copyOf(absent);
        rows = rows.stream().map(List::copyOf).toList();
        questions = List.copyOf(questions);
        problems = List.copyOf(problems);
    }

    /** Whether the rows can be taken. */
    public boolean isClear() {
        return questions.isEmpty() && problems.isEmpty();
    }

    /** Proposes how to take data whose headings say all that must be stated. */
    public static Import propose(Part.Readings table, SpreadsheetFile file) {
        return propose(table, file, Map.of());
    }

    /**
     * Proposes how to take data.
     *
     * @param file its rows, with a header or without
     * @param stated what their headings do not say: by heading, the table's column with unit and
     *     sign, as in {@code near [µA, + in the 150]}; "" to leave that column out
     */
    public static Import propose(
            Part.Readings table, SpreadsheetFile file, Map<String, String> stated) {
        List<CsvRow> all = file.rows();
        boolean headed = isHeader(all.get(0), table, stated);
        List<CsvRow> rows = headed ? all.subList(1, all.size()) : all;
        List<Mapped> mapping = mapping(all.get(0), headed, table, stated);
        DecimalMark mark = DecimalMark.of(file.separator(), numbers(mapping, rows));
        return new Proposing(table, mapping, rows, file, mark, new ArrayList<>()).propose(stated);
    }

    private static Stream<String> numbers(List<Mapped> mapping, List<CsvRow> rows) {
        return rows.stream()
                .flatMap(
                        row ->
                                IntStream.range(0, Math.min(mapping.size(), row.cells().size()))
                                        .filter(i -> isNumber(mapping.get(i)))
                                        .mapToObj(row.cells()::get));
    }

    private static boolean isNumber(Mapped mapped) {
        return mapped.column().filter(column -> DecimalMark.isIn(column.kind())).isPresent();
    }

    /** A row is a header if it names a column, or if it has no number at all. */
    private static boolean isHeader(CsvRow row, Part.Readings table, Map<String, String> stated) {
        boolean names =
                row.cells().stream()
                        .anyMatch(
                                cell ->
                                        stated.containsKey(cell)
                                                || Mapped.of(cell, cell, table.columns())
                                                        .column()
                                                        .isPresent());
        return names || row.cells().stream().noneMatch(cell -> cell.matches(".*\\d.*"));
    }

    private static List<Mapped> mapping(
            CsvRow first, boolean headed, Part.Readings table, Map<String, String> stated) {
        List<Mapped> mapping = new ArrayList<>();
        for (int i = 0; i < first.cells().size(); i++) {
            String heading = headed ? first.cells().get(i) : "column " + (i + 1);
            String standing =
                    headed
                            ? heading
                            : i < table.columns().size() ? table.columns().get(i).name() : "";
            mapping.add(
                    Mapped.of(heading, stated.getOrDefault(heading, standing), table.columns()));
        }
        return mapping;
    }

    /** Checks the mapping and reads the rows by it. */
    private record Proposing(
            Part.Readings table,
            List<Mapped> mapping,
            List<CsvRow> rows,
            SpreadsheetFile file,
            DecimalMark mark,
            List<String> problems) {

        Import propose(Map<String, String> stated) {
            List<String> questions = new ArrayList<>();
            for (int i = 0; i < mapping.size(); i++) {
                questions.addAll(questions(mapping.get(i), i, stated));
            }
            List<String> absent = new ArrayList<>();
            for (Column column : table.columns()) {
                long times =
                        mapping.stream()
                                .filter(m -> m.column().equals(Optional.of(column)))
                                .count();
                if (times == 0) {
                    absent.add(column.name());
                } else if (times > 1) {
                    problems.add("column " + column.name() + " is given twice; give it once");
                }
            }
            List<List<String>> taken = questions.isEmpty() ? taken() : List.of();
            boolean clear = questions.isEmpty() && problems.isEmpty();
            return new Import(mapping, absent, clear ? taken : List.of(), questions, problems);
        }

        private List<String> questions(Mapped mapped, int place, Map<String, String> stated) {
            String heading = mapped.heading();
            List<String> cells =
                    rows.stream()
                            .filter(row -> place < row.cells().size())
                            .map(row -> row.cells().get(place))
                            .toList();
            if (mapped.column().isPresent()) {
                return mapped.questions(cells);
            }
            boolean empty = heading.isEmpty() && cells.stream().allMatch(String::isEmpty);
            return empty || stated.getOrDefault(heading, "?").isEmpty()
                    ? List.of()
                    : List.of(
                            String.format(
                                    "%s: which column is it? State it as in \"%s=%s\", or \"%s=\""
                                            + " to leave it out",
                                    heading, heading, table.columns().get(0).name(), heading));
        }

        private List<List<String>> taken() {
            List<List<String>> taken = new ArrayList<>();
            for (CsvRow row : rows) {
                if (row.cells().size() != mapping.size()) {
                    problems.add(
                            String.format(
                                    "%s has %s cells where the first has %s",
                                    file.placeWithin(row), row.cells().size(), mapping.size()));
                } else {
                    taken.add(table.columns().stream().map(to -> cell(row, to)).toList());
                }
            }
            return taken;
        }

        private String cell(CsvRow row, Column to) {
            for (int i = 0; i < mapping.size(); i++) {
                if (mapping.get(i).column().equals(Optional.of(to))) {
                    return read(row, to, mapping.get(i), row.cells().get(i));
                }
            }
            return "";
        }

        private String read(CsvRow row, Column to, Mapped mapped, String cell) {
            try {
                String typed = mapped.typed(isNumber(mapped) ? mark.read(cell) : cell);
                to.read(typed);
                return typed;
            } catch (EntryRefused refusal) {
                problems.add(
                        "%s, %s: %s"
                                .formatted(file.placeWithin(row), to.name(), refusal.getMessage()));
                return cell;
            }
        }
    }
}
