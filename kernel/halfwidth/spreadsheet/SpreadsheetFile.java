package halfwidth.spreadsheet;

import halfwidth.value.EntryRefused;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The rows of a file that a spreadsheet, a program or a person wrote: separated text or the sheet
 * of a workbook. Rows in which no cell has anything are left out, and so are the columns behind the
 * last one that has. Lines above the header that begin with # are notes; below it they are not, so
 * that no row is lost that happens to begin so.
 *
 * @param name how it is called in messages, with its sheet
 * @param separator what stands between its cells
 * @param rows at least one, the header first if it has one
 * @param remarks what was decided in reading it, as which sheet was taken
 */
public record SpreadsheetFile(
        String name, Separator separator, List<CsvRow> rows, List<String> remarks) {
    /** Far more than a season of readings. */
    public static final int MOST_BYTES = 2_000_000;

    private static final Pattern OF_SHEET = Pattern.compile("(?i)(.*\\.xls[xm])#(.+)");

    public SpreadsheetFile {
        rows = List.copyOf(rows);
        remarks = List.copyOf(remarks);
    }

    /**
     * Reads a file.
     *
     * @param file its path; a sheet of a workbook other than the first is named behind it, as in
     *     {@code cuts.xlsx#Pair 3}
     * @throws EntryRefused if it cannot be read, is nothing of the kind, or has no row
     */
    public static SpreadsheetFile read(Path file) {
        Matcher sheet = OF_SHEET.matcher(file.toString());
        if (!sheet.matches() || Files.exists(file)) {
            return of(file.toString(), bytes(file), Optional.empty());
        }
        try {
            Path workbook = Path.of(sheet.group(1));
            return of(workbook.toString(), bytes(workbook), Optional.of(sheet.group(2)));
        } catch (InvalidPathException wrong) {
            throw new EntryRefused(file + " is no name of a file: " + wrong.getReason());
        }
    }

    /** A file's name without its sheet and without what stands behind the last point. */
    public static String plainName(Path file) {
        String name = String.valueOf(file.getFileName());
        Matcher sheet = OF_SHEET.matcher(name);
        return (sheet.matches() ? sheet.group(1) : name).replaceFirst("\\.[^.]*$", "");
    }

    /** Reads the bytes of a file, whose first sheet it takes where it is a workbook. */
    public static SpreadsheetFile of(String name, byte[] bytes) {
        return of(name, bytes, Optional.empty());
    }

    private static SpreadsheetFile of(String name, byte[] bytes, Optional<String> sheet) {
        if (bytes.length > MOST_BYTES) {
            throw new EntryRefused(
                    "%s: %d bytes are too many; at most %d"
                            .formatted(name, bytes.length, MOST_BYTES));
        }
        SpreadsheetFile file =
                WorkbookFile.isZip(bytes) || WorkbookFile.isOldKind(bytes)
                        ? WorkbookFile.read(name, bytes, sheet)
                        : SeparatedText.read(name, bytes);
        if (file.rows.isEmpty()) {
            throw new EntryRefused(name + " has no rows; give a header and rows below it");
        }
        return file;
    }

    private static byte[] bytes(Path file) {
        try {
            long size = Files.size(file);
            if (size > MOST_BYTES) {
                throw new EntryRefused(
                        "%s: %d bytes are too many; at most %d".formatted(file, size, MOST_BYTES));
            }
            return Files.readAllBytes(file);
        } catch (NoSuchFileException missing) {
            throw new EntryRefused(file + ": there is no such file");
        } catch (IOException unreadable) {
            throw new EntryRefused(file + ": cannot be read: " + unreadable);
        }
    }

    /**
     * Where a row stands, for messages: {@code cuts.csv:3} or {@code cuts.xlsx, sheet A, row 3}.
     */
    public String place(CsvRow row) {
        return separator == Separator.NONE ? name + ", row " + row.line() : name + ":" + row.line();
    }

    /** The same without the file: {@code line 3} or {@code row 3}. */
    public String placeWithin(CsvRow row) {
        return (separator == Separator.NONE ? "row " : "line ") + row.line();
    }
}
