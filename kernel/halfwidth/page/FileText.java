package halfwidth.page;

import halfwidth.value.EntryRefused;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * The rows of a CSV file that a person or a spreadsheet wrote: commas, semicolons or tabs. Lines
 * above the header that begin with # are notes; below it they are not, so that no row is lost that
 * happens to begin so.
 */
final class FileText {
    private FileText() {}

    /**
     * Reads a file.
     *
     * @return its rows, the header first
     * @throws EntryRefused if it cannot be read, is no CSV, naming each line, or has no row
     */
    static List<CsvRow> rows(Path file) {
        String text;
        try {
            text = withoutNotes(SourceText.withPlainLines(SourceText.read(file)));
        } catch (PageRefused refusal) {
            throw new EntryRefused(refusal.getMessage());
        }
        List<String> problems = new ArrayList<>();
        List<CsvRow> rows =
                CsvRow.read(
                        text,
                        1,
                        FileColumns.format(text),
                        (line, message) -> problems.add(file + ":" + line + ": " + message));
        if (!problems.isEmpty()) {
            throw new EntryRefused(String.join("\n", problems));
        }
        if (rows.isEmpty()) {
            throw new EntryRefused(file + " has no rows; give a header and rows below it");
        }
        return rows;
    }

    /** The text with its notes left blank, so that lines keep their numbers. */
    private static String withoutNotes(String text) {
        List<String> lines = text.lines().toList();
        int header = 0;
        while (header < lines.size() && isAboveHeader(lines.get(header))) {
            header++;
        }
        return "\n".repeat(header) + lines.stream().skip(header).collect(Collectors.joining("\n"));
    }

    private static boolean isAboveHeader(String line) {
        // A spreadsheet puts quotation marks around a note that has a comma in it.
        return line.isBlank() || line.startsWith("#") || line.startsWith("\"#");
    }
}
