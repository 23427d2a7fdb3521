package halfwidth.localizer.limits;

import java.io.IOException;
import java.io.Reader;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** Reads a table of limits, refusing with the table's name and the line. */
final class LimitsReader {
    private static final CSVFormat FORMAT =
            CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).setTrim(true).get();
    private static final List<String> COLUMNS =
            List.of(
                    "key",
                    "quantity",
                    "category",
                    "least",
                    "most",
                    "unit",
                    "document",
                    "section",
                    "status",
                    "note");

    private final String name;

    LimitsReader(String name) {
        this.name = name;
    }

    List<Limit> read(Reader reader) throws IOException {
        List<Limit> limits = new ArrayList<>();
        try (CSVParser parser = FORMAT.parse(reader)) {
            if (!parser.getHeaderNames().equals(COLUMNS)) {
                throw new IllegalArgumentException(
                        name
                                + ":1: columns must be "
                                + String.join(",", COLUMNS)
                                + ", not "
                                + String.join(",", parser.getHeaderNames()));
            }
            for (CSVRecord row : parser) {
                limits.add(limit(row, parser.getCurrentLineNumber()));
            }
        }
        return limits;
    }

    private Limit limit(CSVRecord row, long line) {
        try {
            if (!row.isConsistent()) {
                throw new IllegalArgumentException(
                        "row must have " + COLUMNS.size() + " columns, not " + row.size());
            }
            return new Limit(
                    row.get("key"),
                    row.get("quantity"),
                    row.get("category"),
                    number(row, "least"),
                    number(row, "most"),
                    row.get("unit"),
                    new Source(
                            row.get("document"),
                            row.get("section"),
                            Source.Status.of(row.get("status")),
                            row.get("note")));
        } catch (IllegalArgumentException refusal) {
            throw new IllegalArgumentException(
                    name + ":" + line + ": " + refusal.getMessage(), refusal);
        }
    }

    private static OptionalDouble number(CSVRecord row, String column) {
        String text = row.get(column);
        if (text.isEmpty()) {
            return OptionalDouble.empty();
        }
        double value;
        try {
            value = Double.parseDouble(text);
        } catch (NumberFormatException notANumber) {
            value = Double.NaN;
        }
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(column + " \"" + text + "\" must be a number");
        }
        return OptionalDouble.of(value);
    }
}
