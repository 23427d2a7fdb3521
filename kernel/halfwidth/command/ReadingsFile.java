package halfwidth.command;

import halfwidth.spreadsheet.SpreadsheetFile;
import java.nio.file.Path;

/** A file of readings, as {@link SpreadsheetFile#read} takes it, and the table it fills in. */
record ReadingsFile(String table, Path path) {

    /** From {@code NAME=FILE}, or {@code FILE}, which names the table by its own name. */
    static ReadingsFile of(String typed) {
        int equals = typed.indexOf('=');
        if (equals >= 0) {
            return new ReadingsFile(
                    typed.substring(0, equals), Path.of(typed.substring(equals + 1)));
        }
        Path path = Path.of(typed);
        return new ReadingsFile(SpreadsheetFile.plainName(path), path);
    }
}
