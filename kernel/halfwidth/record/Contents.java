package halfwidth.record;

import halfwidth.job.Finding;
import halfwidth.job.JobRefused;
import halfwidth.job.Place;
import halfwidth.localizer.array.NamedArray;
import halfwidth.page.Column;
import halfwidth.page.Field;
import halfwidth.page.Filled;
import halfwidth.page.Page;
import halfwidth.page.Part;
import halfwidth.show.Sheet;
import halfwidth.value.Entry;
import halfwidth.value.Kind;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * What a record holds to be done again, on a machine that has none of the files it was made from.
 *
 * @param about by name: page, visit, ran, program, java, made from, journal
 * @param page the page's text
 * @param entries as CSV, a line for each input and each cell that is not blank
 * @param results as CSV, a line for each result, unrounded
 * @param arrays the text of each array's file, by the input that names it
 * @param blanks as CSV, a line for each blank for which somebody said why
 * @param heading as CSV, what heads the sheet by name and value
 */
record Contents(
        String about,
        String page,
        String entries,
        String results,
        Map<String, String> arrays,
        String blanks,
        String heading) {
    /** Of a record of an older program, which did not keep its heading. */
    static final String NO_HEADING = "name,value\n";

    /** Of a record of an older program, which did not keep why a blank is one. */
    static final String NO_BLANKS = "name,row,column,reason\n";

    private static final CSVFormat FORMAT =
            CSVFormat.DEFAULT.builder().setRecordSeparator('\n').get();

    static Contents of(Map<String, String> about, Sheet sheet, Map<Place, String> reasons) {
        Filled filled = sheet.filled();
        List<List<Object>> blanks = new ArrayList<>();
        reasons.forEach((at, why) -> blanks.add(List.of(at.name(), at.row(), at.column(), why)));
        List<List<Object>> results = new ArrayList<>();
        for (Finding is : Findings.of(sheet)) {
            results.add(List.of(is.name(), is.value(), is.unit(), is.uncertainty(), is.verdict()));
        }
        return new Contents(
                named(about),
                filled.page().text(),
                csv(List.of("name", "row", "column", "typed", "from"), entries(filled)),
                csv(List.of("name", "value", "unit", "uncertainty", "verdict"), results),
                arrays(filled),
                NO_BLANKS + csv(blanks),
                named(sheet.heading()));
    }

    private static String named(Map<String, String> values) {
        List<List<Object>> lines = new ArrayList<>();
        values.forEach((name, value) -> lines.add(List.of(name, value)));
        return csv(List.of("name", "value"), lines);
    }

    private static Map<String, String> arrays(Filled filled) {
        Map<String, String> arrays = new LinkedHashMap<>();
        filled.entries()
                .forEach(
                        (name, entry) -> {
                            if (entry.value() instanceof NamedArray array && !array.isNone()) {
                                arrays.put(name, array.text());
                            }
                        });
        return arrays;
    }

    private static List<List<Object>> entries(Filled filled) {
        List<List<Object>> lines = new ArrayList<>();
        filled.entries()
                .forEach(
                        (name, entry) -> {
                            String from = filled.origins().getOrDefault(name, "");
                            lines.add(List.of(name, "", "", entry.typed(), from));
                        });
        for (Part.Readings table : filled.page().readings()) {
            List<List<Optional<Entry>>> rows =
                    filled.readings().getOrDefault(table.name(), List.of());
            for (int row = 0; row < rows.size(); row++) {
                for (int i = 0; i < table.columns().size(); i++) {
                    String typed = rows.get(row).get(i).map(Entry::typed).orElse("");
                    String column = table.columns().get(i).name();
                    lines.add(List.of(table.name(), row + 1, column, typed, ""));
                }
            }
        }
        return lines;
    }

    private static String csv(List<String> header, List<List<Object>> rows) {
        return FORMAT.format(header.toArray()) + '\n' + csv(rows);
    }

    private static String csv(List<List<Object>> rows) {
        return rows.stream()
                .map(row -> FORMAT.format(row.toArray()) + '\n')
                .collect(Collectors.joining());
    }

    private static List<CSVRecord> lines(String csv) {
        CSVFormat format = FORMAT.builder().setHeader().setSkipHeaderRecord(true).get();
        try (CSVParser parser = CSVParser.parse(csv, format)) {
            return parser.getRecords();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * @throws RecordRefused if what is attached is damaged
     */
    Map<String, String> facts() {
        return named(about);
    }

    /**
     * What heads the sheet, in order.
     *
     * @throws RecordRefused if what is attached is damaged
     */
    Map<String, String> headings() {
        return named(heading);
    }

    private static Map<String, String> named(String csv) {
        return sound(
                () -> {
                    Map<String, String> values = new LinkedHashMap<>();
                    lines(csv).forEach(line -> values.put(line.get(0), line.get(1)));
                    return values;
                });
    }

    /**
     * Why there is no value, at each blank for which somebody said so.
     *
     * @throws RecordRefused if what is attached is damaged
     */
    Map<Place, String> reasons() {
        return sound(
                () ->
                        lines(blanks).stream()
                                .collect(
                                        Collectors.toMap(
                                                l ->
                                                        new Place(
                                                                l.get(0),
                                                                Integer.parseInt(l.get(1)),
                                                                l.get(2)),
                                                l -> l.get(3))));
    }

    /**
     * @throws RecordRefused if what is attached is damaged
     */
    List<Finding> findings() {
        return sound(
                () ->
                        lines(results).stream()
                                .map(
                                        l ->
                                                new Finding(
                                                        l.get(0), l.get(1), l.get(2), l.get(3),
                                                        l.get(4)))
                                .toList());
    }

    /** What attached CSV comes to, which somebody may have shortened or torn. */
    private static <T> T sound(Supplier<T> reading) {
        try {
            return reading.get();
        } catch (JobRefused
                | UncheckedIOException
                | IllegalArgumentException
                | IllegalStateException
                | IndexOutOfBoundsException
                | NoSuchElementException damaged) {
            throw new RecordRefused("what is attached is damaged: " + damaged.getMessage());
        }
    }

    /**
     * The page filled in as it was.
     *
     * @throws halfwidth.page.PageRefused if this program does not understand the page
     * @throws halfwidth.value.EntryRefused if it does not understand an entry
     * @throws RecordRefused if it names an array and does not hold its file, or is damaged
     */
    Filled filled(ReadRecord.PageReader reader) {
        return sound(() -> asItWas(reader));
    }

    private Filled asItWas(ReadRecord.PageReader reader) {
        String name = facts().getOrDefault("page", "");
        // For messages only: it may be no name that a file can have here.
        Path file = Path.of(name.replaceAll("[^\\p{L}\\p{N}/_.-]", "-") + ".md");
        Page read = reader.read(name, file, page);
        Filled filled = new Filled(read, Map.of(), Map.of(), false);
        Map<String, List<List<String>>> tables = new LinkedHashMap<>();
        for (CSVRecord line : lines(entries)) {
            if (!line.get("row").isEmpty()) {
                put(tables, read, line);
            } else {
                filled = with(filled, line);
            }
        }
        for (Map.Entry<String, List<List<String>>> table : tables.entrySet()) {
            filled = filled.withReadings(table.getKey(), table.getValue());
        }
        return filled;
    }

    private Filled with(Filled filled, CSVRecord line) {
        String name = line.get("name");
        Entry entry = read(field(filled.page(), name), line.get("typed"));
        String from = line.get("from");
        return from.isEmpty() ? filled.with(name, entry) : filled.from(name, entry, from);
    }

    private Entry read(Field field, String typed) {
        String text = arrays.get(field.name());
        if (text != null) {
            return new Entry(typed, new NamedArray(typed.strip(), text), typed.strip());
        }
        boolean none = typed.strip().equalsIgnoreCase(NamedArray.NONE.name());
        if (field.kind() instanceof Kind.Array && !none) {
            // Not read, to tell what is wrong: a record does not choose what is read here.
            throw new RecordRefused(
                    "it holds the name of the array file " + typed + ", and not what was in it");
        }
        return field.read(typed);
    }

    private static Field field(Page page, String name) {
        return page.fields().stream().filter(f -> f.name().equals(name)).findFirst().orElseThrow();
    }

    private static void put(Map<String, List<List<String>>> tables, Page page, CSVRecord line) {
        List<List<String>> rows =
                tables.computeIfAbsent(line.get("name"), name -> new ArrayList<>());
        int width =
                page.readings().stream()
                        .filter(table -> table.name().equals(line.get("name")))
                        .map(Part.Readings::columns)
                        .mapToInt(List<Column>::size)
                        .findFirst()
                        .orElseThrow();
        if (rows.isEmpty() || rows.get(rows.size() - 1).size() == width) {
            rows.add(new ArrayList<>());
        }
        rows.get(rows.size() - 1).add(line.get("typed"));
    }
}
