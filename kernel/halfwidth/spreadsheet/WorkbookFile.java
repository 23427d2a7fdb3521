package halfwidth.spreadsheet;

import halfwidth.value.EntryRefused;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.dhatim.fastexcel.reader.Cell;
import org.dhatim.fastexcel.reader.ExcelReaderException;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.ReadingOptions;
import org.dhatim.fastexcel.reader.Row;
import org.dhatim.fastexcel.reader.Sheet;
import org.dhatim.fastexcel.reader.SheetVisibility;

/** Reads a sheet of a workbook (ECMA-376, by its ending xlsx). */
final class WorkbookFile {
    /** What a table takes in all, and room for what stands above it. */
    private static final int MOST_ROWS = 6_000;

    private WorkbookFile() {}

    static boolean isZip(byte[] bytes) {
        return bytes.length > 3 && bytes[0] == 'P' && bytes[1] == 'K' && bytes[2] < 9;
    }

    /** The kind before it, or one with a password around it. */
    static boolean isOldKind(byte[] bytes) {
        return bytes.length > 3
                && bytes[0] == (byte) 0xd0
                && bytes[1] == (byte) 0xcf
                && bytes[2] == 0x11
                && bytes[3] == (byte) 0xe0;
    }

    /**
     * Reads a sheet.
     *
     * @param sheet its name; the first that is not hidden if none is given
     */
    static SpreadsheetFile read(String name, byte[] bytes, Optional<String> sheet) {
        if (isOldKind(bytes)) {
            throw new EntryRefused(
                    name
                            + " is a workbook of an old kind or has a password; save it as xlsx"
                            + " without one, or as CSV UTF-8");
        }
        byte[] checked = CheckedParts.of(name, bytes);
        try (ReadableWorkbook workbook =
                new ReadableWorkbook(
                        new ByteArrayInputStream(checked), new ReadingOptions(true, false))) {
            List<Sheet> sheets = workbook.getSheets().toList();
            Sheet taken = taken(name, sheets, sheet);
            return new SpreadsheetFile(
                    name + ", sheet " + taken.getName(),
                    Separator.NONE,
                    Tidy.rows(rows(name + ", sheet " + taken.getName(), taken)),
                    List.of(remark(taken, sheets)));
        } catch (IOException
                | ExcelReaderException
                | IllegalArgumentException
                | IllegalStateException
                | IndexOutOfBoundsException malformed) {
            throw new EntryRefused(
                    name
                            + " cannot be read as an xlsx workbook ("
                            + malformed.getMessage()
                            + "); save it anew as xlsx or CSV UTF-8");
        }
    }

    private static Sheet taken(String name, List<Sheet> sheets, Optional<String> wanted) {
        String all = sheets.stream().map(Sheet::getName).collect(Collectors.joining(", "));
        Stream<Sheet> found =
                sheets.stream()
                        .filter(
                                one ->
                                        wanted.map(one.getName()::equals)
                                                .orElse(
                                                        one.getVisibility()
                                                                == SheetVisibility.VISIBLE));
        return found.findFirst()
                .orElseThrow(
                        () ->
                                new EntryRefused(
                                        "%s has no sheet %s; it has %s"
                                                .formatted(
                                                        name, wanted.orElse("to be seen"), all)));
    }

    private static String remark(Sheet taken, List<Sheet> sheets) {
        return sheets.size() == 1
                ? "sheet " + taken.getName()
                : "sheet %s of %d".formatted(taken.getName(), sheets.size());
    }

    private static List<CsvRow> rows(String place, Sheet sheet) throws IOException {
        List<CsvRow> rows = new ArrayList<>();
        List<String> problems = new ArrayList<>();
        try (Stream<Row> found = sheet.openStream()) {
            for (Row row : (Iterable<Row>) found::iterator) {
                if (rows.size() == MOST_ROWS) {
                    throw new EntryRefused(
                            "%s has more than %d rows; give the readings a sheet of their own"
                                    .formatted(place, MOST_ROWS));
                }
                List<String> cells = new ArrayList<>();
                for (Cell cell : row) {
                    cells.add(cell == null ? "" : text(place, cell, problems));
                }
                rows.add(new CsvRow(row.getRowNum(), cells));
            }
        }
        if (!problems.isEmpty()) {
            throw new EntryRefused(String.join("\n", problems));
        }
        return sameWidth(rows);
    }

    private static String text(String place, Cell cell, List<String> problems) {
        WorkbookCell one = new WorkbookCell(cell);
        one.problem()
                .ifPresent(
                        wrong ->
                                problems.add(
                                        "%s, cell %s: %s"
                                                .formatted(place, cell.getAddress(), wrong)));
        return one.problem().isPresent() ? "" : Tidy.cell(one.text());
    }

    /** A workbook does not write the empty cells at the end of a row. */
    private static List<CsvRow> sameWidth(List<CsvRow> rows) {
        int width = rows.stream().mapToInt(row -> row.cells().size()).max().orElse(0);
        List<CsvRow> filled = new ArrayList<>();
        for (CsvRow row : rows) {
            List<String> cells = new ArrayList<>(row.cells());
            while (cells.size() < width) {
                cells.add("");
            }
            filled.add(new CsvRow(row.line(), cells));
        }
        return filled;
    }
}
