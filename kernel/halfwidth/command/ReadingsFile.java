package halfwidth.command;

import java.nio.file.Path;

/** A file of readings and the table it fills in. */
record ReadingsFile(String table, Path path) {

    /** From {@code NAME=FILE.csv}, or {@code FILE.csv}, which names the table by its own name. */
    static ReadingsFile of(String typed) {
        int equals = typed.indexOf('=');
        if (equals >= 0) {
            return new ReadingsFile(
                    typed.substring(0, equals), Path.of(typed.substring(equals + 1)));
        }
        Path path = Path.of(typed);
        return new ReadingsFile(
                String.valueOf(path.getFileName()).replaceFirst("\\.[^.]*$", ""), path);
    }
}
