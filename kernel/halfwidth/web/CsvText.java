package halfwidth.web;

import halfwidth.job.Place;
import halfwidth.page.Column;
import halfwidth.page.Filled;
import halfwidth.page.Part;
import halfwidth.value.EntryRefused;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.commons.csv.CSVFormat;

/** Tables of readings as CSV, in and out. */
final class CsvText {
    private CsvText() {}

    /** A table as typed, in UTF-8; a blank is a missing reading. */
    static byte[] of(Scene scene, String name) {
        Part.Readings table =
                scene.page().readings().stream()
                        .filter(known -> known.name().equals(name))
                        .findFirst()
                        .orElseThrow(() -> new Refusal(404, "There is no table " + name + "."));
        StringBuilder csv = new StringBuilder();
        line(csv, table.columns().stream().map(CsvText::head).toList());
        for (int row = 1; row <= scene.rows(name); row++) {
            int at = row;
            line(
                    csv,
                    table.columns().stream()
                            .map(column -> scene.cell(Place.cell(name, at, column.name()), column))
                            .map(Cell::typed)
                            .toList());
        }
        return csv.toString().getBytes(StandardCharsets.UTF_8);
    }

    private static String head(Column column) {
        String unit = Marks.unit(column.unit());
        return unit.isEmpty() ? column.name() : column.name() + " [" + unit + "]";
    }

    private static void line(StringBuilder csv, List<String> cells) {
        csv.append(CSVFormat.DEFAULT.format(cells.toArray())).append("\r\n");
    }

    /**
     * A page with a table filled in from the text of a CSV file.
     *
     * @throws EntryRefused if the text cannot be read as this table
     */
    static Filled entered(Filled filled, String table, String text) {
        try {
            Path file = Files.createTempFile("halfwidth", ".csv");
            try {
                Files.writeString(file, text);
                return filled.withReadings(table, file);
            } catch (EntryRefused refusal) {
                throw new EntryRefused(refusal.getMessage().replace(file.toString(), "The file"));
            } finally {
                Files.delete(file);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
