package halfwidth.localizer.array;

import java.io.IOException;
import java.io.PushbackReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVPrinter;
import org.apache.commons.csv.CSVRecord;

/**
 * Reads and writes an array as a CSV file that a spreadsheet can edit.
 *
 * <p>First come rows of a property and its value: {@code name}, {@code course frequency [MHz]},
 * {@code clearance frequency [MHz]} if there is a clearance carrier, {@code depth of each tone [1]}
 * and {@code element pattern}, which is {@code isotropic}, {@code cosine power} with its exponent,
 * or left out for as many rows {@code element pattern [dB]} or {@code element pattern [1]} of an
 * azimuth and the field there as are known. Then comes a row of column names that begins with
 * {@code element}, and a row for each element. Empty rows and rows that begin with # are notes.
 */
public final class ArrayFile {
    private static final CSVFormat FORMAT =
            CSVFormat.RFC4180
                    .builder()
                    .setCommentMarker('#')
                    .setIgnoreEmptyLines(true)
                    .setTrim(true)
                    .get();

    private ArrayFile() {}

    /**
     * Reads an array from a file in UTF-8.
     *
     * @param file the CSV file
     * @return the array
     * @throws IllegalArgumentException if the file is not as described, naming the line
     * @throws UncheckedIOException if the file cannot be read
     */
    public static ArrayModel read(Path file) {
        try (Reader text = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
            return read(String.valueOf(file.getFileName()), text);
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read array file " + file, e);
        }
    }

    /**
     * Reads an array from a text.
     *
     * @param source what to call the text in a refusal
     * @param text the text, which stays open
     * @return the array
     * @throws IllegalArgumentException if the text is not as described, naming the line
     * @throws IOException if the text cannot be read
     */
    public static ArrayModel read(String source, Reader text) throws IOException {
        ArrayText array = new ArrayText(source);
        try {
            CSVParser rows = FORMAT.parse(withoutByteOrderMark(text));
            for (CSVRecord row : rows) {
                array.take(new Row(source, rows.getCurrentLineNumber(), cells(row)));
            }
        } catch (UncheckedIOException e) {
            // So the parser reports text that is not CSV, with the line in its own words.
            throw new IllegalArgumentException(source + ": " + e.getCause().getMessage(), e);
        }
        return array.model();
    }

    private static Reader withoutByteOrderMark(Reader text) throws IOException {
        PushbackReader start = new PushbackReader(text);
        int first = start.read();
        if (first != '\uFEFF' && first >= 0) {
            start.unread(first);
        }
        return start;
    }

    /** The cells up to the last that is not blank: spreadsheets pad every row to one width. */
    private static List<String> cells(CSVRecord row) {
        List<String> cells = new ArrayList<>(row.toList());
        while (!cells.isEmpty() && cells.get(cells.size() - 1).isBlank()) {
            cells.remove(cells.size() - 1);
        }
        return cells;
    }

    /**
     * Writes an array so that reading it gives the same array.
     *
     * @param array the array
     * @param out where to
     * @throws IllegalArgumentException if the two carriers differ in the depth of their tones,
     *     which the file has no place for
     * @throws IOException if {@code out} fails
     */
    public static void write(ArrayModel array, Appendable out) throws IOException {
        CSVPrinter printer = new CSVPrinter(out, FORMAT);
        for (List<?> row : new ArrayRows(array).all()) {
            printer.printRecord(row);
        }
        printer.flush();
    }
}
