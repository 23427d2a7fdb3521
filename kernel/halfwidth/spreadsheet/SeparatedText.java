package halfwidth.spreadsheet;

import halfwidth.value.EntryRefused;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;

/** Reads text with commas, semicolons or tabs between its cells. */
final class SeparatedText {
    private SeparatedText() {}

    static SpreadsheetFile read(String name, byte[] bytes) {
        DecodedText decoded = DecodedText.of(name, bytes);
        List<String> lines = new ArrayList<>(decoded.text().lines().toList());
        int header = 0;
        while (header < lines.size() && isAbove(lines.get(header))) {
            // Left blank, so that lines keep their numbers. A spreadsheet puts quotation marks
            // around a note that has a comma in it.
            lines.set(header++, "");
        }
        Separator separator = Separator.COMMA;
        if (header < lines.size() && isStated(lines.get(header))) {
            separator = stated(name, header + 1, lines.get(header));
            lines.set(header, "");
        } else if (header < lines.size()) {
            separator = Separator.of(lines.get(header));
        }
        return new SpreadsheetFile(
                name, separator, rows(name, lines, separator), decoded.remark().stream().toList());
    }

    private static boolean isAbove(String line) {
        return line.isBlank() && line.indexOf('\t') < 0
                || line.startsWith("#")
                || line.startsWith("\"#");
    }

    /** A line that only says what separates, above all others. */
    private static boolean isStated(String line) {
        return plain(line).startsWith("sep=");
    }

    private static String plain(String line) {
        return line.replace("\"", "").toLowerCase(Locale.ROOT);
    }

    private static Separator stated(String name, int line, String text) {
        // Behind the sign a spreadsheet may have filled the line up to its full width.
        String sign = plain(text).substring("sep=".length());
        return Stream.of(Separator.COMMA, Separator.SEMICOLON, Separator.TAB)
                .filter(known -> sign.indexOf(known.sign()) == 0)
                .findFirst()
                .orElseThrow(
                        () ->
                                new EntryRefused(
                                        "%s:%d: states %s as its separator; save it with commas,"
                                                        .formatted(name, line, sign.strip())
                                                + " semicolons or tabs"));
    }

    private static List<CsvRow> rows(String name, List<String> lines, Separator separator) {
        CSVFormat format = CsvRow.COMMAS.builder().setDelimiter(separator.sign()).get();
        List<String> problems = new ArrayList<>();
        List<CsvRow> rows =
                CsvRow.read(
                        String.join("\n", lines),
                        1,
                        format,
                        (line, message) -> problems.add(name + ":" + line + ": " + message));
        if (!problems.isEmpty()) {
            throw new EntryRefused(String.join("\n", problems));
        }
        return Tidy.rows(rows.stream().map(row -> read(row, separator)).toList());
    }

    private static CsvRow read(CsvRow row, Separator separator) {
        return new CsvRow(
                row.line(),
                row.cells().stream()
                        .map(Tidy::cell)
                        .map(cell -> Apostrophe.without(cell, separator))
                        .toList());
    }
}
