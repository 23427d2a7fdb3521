package halfwidth.spreadsheet;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * A line of CSV, or a row of a workbook. Lines are read one by one: a cell may not run over lines,
 * so that a quotation mark left open is found where it stands.
 *
 * @param line 1-based
 */
public record CsvRow(int line, List<String> cells) {
    /** What pages are written with. */
    public static final CSVFormat COMMAS =
            CSVFormat.DEFAULT.builder().setIgnoreSurroundingSpaces(true).setTrim(true).get();

    /**
     * Reads lines of CSV; empty ones are left out.
     *
     * @param first the number of the first line, 1-based
     * @param problem takes the line and the message of what is wrong
     */
    public static List<CsvRow> read(
            String text, int first, CSVFormat format, BiConsumer<Integer, String> problem) {
        List<CsvRow> rows = new ArrayList<>();
        List<String> lines = text.lines().toList();
        for (int i = 0; i < lines.size(); i++) {
            int line = first + i;
            cells(lines.get(i), format, line, problem)
                    .ifPresent(cells -> rows.add(new CsvRow(line, cells)));
        }
        return rows;
    }

    private static Optional<List<String>> cells(
            String content, CSVFormat format, int line, BiConsumer<Integer, String> problem) {
        if (content.isBlank() && !content.contains(format.getDelimiterString())) {
            return Optional.empty();
        }
        try (CSVParser parser = CSVParser.parse(content, format)) {
            return parser.getRecords().stream().findFirst().map(CSVRecord::toList);
        } catch (IOException | UncheckedIOException malformed) {
            problem.accept(
                    line,
                    "a quotation mark is out of place; expected \"…\" around a whole cell, \"\""
                            + " for one inside it, and no line break within a cell");
            return Optional.empty();
        }
    }
}
