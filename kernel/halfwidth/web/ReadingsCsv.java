package halfwidth.web;

import halfwidth.job.Place;
import halfwidth.page.Column;
import halfwidth.page.Part;
import halfwidth.spreadsheet.CsvFor;
import halfwidth.spreadsheet.CsvText;
import java.nio.charset.StandardCharsets;

/** Tables of readings as CSV that leaves. */
final class ReadingsCsv {
    private ReadingsCsv() {}

    /** A table as typed, in UTF-8 with a mark; a blank is a missing reading. */
    static byte[] of(Scene scene, String name) {
        Part.Readings table =
                scene.page().readings().stream()
                        .filter(known -> known.name().equals(name))
                        .findFirst()
                        .orElseThrow(() -> new Refusal(404, "There is no table " + name + "."));
        CsvText csv = new CsvText(CsvFor.DECIMAL_POINT);
        csv.line(table.columns().stream().map(ReadingsCsv::head).toList());
        for (int row = 1; row <= scene.rows(name); row++) {
            int at = row;
            csv.line(
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
}
