package halfwidth.demo;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;

/** What is filled in on one visit of a page, as typed. */
final class Sheet {
    private static final String INVENTED =
            "# invented: Varnholt Heath is no aerodrome; every value is of a simulated station\n";
    private static final CSVFormat FORMAT =
            CSVFormat.DEFAULT.builder().setRecordSeparator('\n').get();

    private final Desk desk;
    private final String page;
    private final String place;
    private final List<List<String>> inputs = new ArrayList<>(List.of(List.of("name", "value")));
    private final Map<String, List<List<String>>> tables = new LinkedHashMap<>();

    Sheet(Desk desk, String page, String place) {
        this.desk = desk;
        this.page = page;
        this.place = place;
    }

    /** Fills in fields: name, value, name, value, … */
    Sheet set(String... namesAndValues) {
        for (int i = 0; i < namesAndValues.length; i += 2) {
            inputs.add(List.of(namesAndValues[i], namesAndValues[i + 1]));
        }
        return this;
    }

    /** Fills in a table: its header with commas, then its rows. */
    Sheet table(String name, String header, List<List<String>> rows) {
        List<List<String>> lines = new ArrayList<>(List.of(List.of(header.split(","))));
        lines.addAll(rows);
        tables.put(name, lines);
        return this;
    }

    Visit run() {
        return desk.run(this);
    }

    String page() {
        return page;
    }

    String place() {
        return place;
    }

    Set<String> tables() {
        return tables.keySet();
    }

    void write(Path folder) {
        try {
            Files.createDirectories(folder);
            Files.writeString(folder.resolve("inputs.csv"), text(inputs));
            for (Map.Entry<String, List<List<String>>> table : tables.entrySet()) {
                Files.writeString(folder.resolve(table.getKey() + ".csv"), text(table.getValue()));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static String text(List<List<String>> lines) {
        return INVENTED
                + lines.stream()
                        .map(line -> FORMAT.format(line.toArray()) + "\n")
                        .collect(Collectors.joining());
    }
}
