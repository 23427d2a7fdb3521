package halfwidth.page;

import halfwidth.spreadsheet.SpreadsheetFile;
import halfwidth.value.Entry;
import halfwidth.value.EntryRefused;
import java.nio.file.Path;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A page with what was typed into it.
 *
 * @param entries the entries by field name, in the order of the page; a field that is not filled in
 *     is absent
 * @param readings the rows by table name, each as long as the table's columns; an empty cell is a
 *     missing reading; a table that is not filled in is absent
 * @param example whether these are the worked example's values, which are never real data
 * @param origins where an entry came from if nobody typed it here, in words, by field name
 */
public record Filled(
        Page page,
        Map<String, Entry> entries,
        Map<String, List<List<Optional<Entry>>>> readings,
        boolean example,
        Map<String, String> origins) {

    public Filled {
        entries = Collections.unmodifiableMap(new LinkedHashMap<>(entries));
        origins = Map.copyOf(origins);
        Map<String, List<List<Optional<Entry>>>> tables = new LinkedHashMap<>();
        readings.forEach(
                (name, rows) -> tables.put(name, rows.stream().map(List::copyOf).toList()));
        readings = Collections.unmodifiableMap(tables);
    }

    /** The page with what was typed into it and nothing else. */
    public Filled(
            Page page,
            Map<String, Entry> entries,
            Map<String, List<List<Optional<Entry>>>> readings,
            boolean example) {
        this(page, entries, readings, example, Map.of());
    }

    /** The page with its worked example. */
    public static Filled example(Page page) {
        Filled filled = new Filled(page, Map.of(), Map.of(), true);
        for (Field field : page.fields()) {
            filled = filled.with(field.name(), field.example());
        }
        for (Part.Readings table : page.readings()) {
            filled = filled.withReadings(table.name(), table.example());
        }
        return filled;
    }

    /** The page with nothing but the defaults of its fields. */
    public static Filled none(Page page) {
        Filled filled = new Filled(page, Map.of(), Map.of(), false);
        for (Field field : page.fields()) {
            if (field.standing().isPresent()) {
                filled = filled.with(field.name(), field.standing().get());
            }
        }
        return filled;
    }

    /**
     * A copy with one more field filled in, or filled in anew.
     *
     * @param name the field's name
     * @throws EntryRefused if the page has no such field, or it does not accept what is typed
     */
    public Filled with(String name, String typed) {
        Field field =
                page.fields().stream()
                        .filter(declared -> declared.name().equals(name))
                        .findFirst()
                        .orElseThrow(() -> unknown("field", name, names(page.fields())));
        Entry entry;
        try {
            entry = field.read(typed);
        } catch (EntryRefused refusal) {
            throw new EntryRefused(field.label() + " (" + name + "): " + refusal.getMessage());
        }
        return with(name, entry);
    }

    /**
     * A copy with a field filled in as it was read before.
     *
     * @param name a field of the page
     * @param entry as that field would read it
     */
    public Filled with(String name, Entry entry) {
        Map<String, String> others = new HashMap<>(origins);
        others.remove(name);
        return withEntry(name, entry, others);
    }

    /**
     * A copy with a field filled in from elsewhere.
     *
     * @param name a field of the page
     * @param entry as that field would read it
     * @param origin where it came from, in words
     */
    public Filled from(String name, Entry entry, String origin) {
        Map<String, String> more = new HashMap<>(origins);
        more.put(name, origin);
        return withEntry(name, entry, more);
    }

    private Filled withEntry(String name, Entry entry, Map<String, String> where) {
        Map<String, Entry> known = new LinkedHashMap<>(entries);
        known.put(name, entry);
        Map<String, Entry> ordered = new LinkedHashMap<>();
        names(page.fields()).stream()
                .filter(known::containsKey)
                .forEach(declared -> ordered.put(declared, known.get(declared)));
        return new Filled(page, ordered, readings, example, where);
    }

    /**
     * A copy with the fields of a CSV file filled in, or filled in anew.
     *
     * @param file a CSV file with the header name,value and a line for each field, as typed; a
     *     field without a value stays as it is
     * @throws EntryRefused if the file cannot be read so, or the page has no such field or does not
     *     accept its value, naming each by line
     */
    public Filled withInputs(Path file) {
        return new InputsFile(SpreadsheetFile.read(file)).into(this);
    }

    /**
     * A copy in which what is filled in has a standard uncertainty, as if it had been typed behind
     * each value.
     *
     * @param place a field's name, or a table's and a column's as in {@code phasing.offset 1}, each
     *     cell of which is then uncertain for itself; where an uncertainty is typed already it
     *     stays
     * @param typed the standard uncertainty, in the field's or column's unit or with its own
     * @throws EntryRefused if nothing is filled in there or that takes no uncertainty
     */
    public Filled uncertain(String place, String typed) {
        return new StatedUncertainty(this, place, typed).applied();
    }

    Filled withEntry(String name, Entry entry) {
        return withEntry(name, entry, origins);
    }

    private static List<String> names(List<Field> fields) {
        return fields.stream().map(Field::name).toList();
    }

    /**
     * A copy with one more table of readings filled in, or filled in anew.
     *
     * @param name the table's name
     * @param rows its rows as typed, each as long as the table's columns; blank is missing
     * @throws EntryRefused if the page has no such table, or it does not accept the rows, naming
     *     each by row and column
     */
    public Filled withReadings(String name, List<List<String>> rows) {
        return withTable(name, new ReadingsReader(table(name)).rows(rows));
    }

    /**
     * A copy with one more table of readings filled in from a file.
     *
     * @param name the table's name
     * @param file see {@link #withReadings(String, SpreadsheetFile)}
     * @throws EntryRefused if the page has no such table, or the file cannot be read as it, naming
     *     each cell by line and column
     */
    public Filled withReadings(String name, Path file) {
        return withReadings(name, SpreadsheetFile.read(file));
    }

    /**
     * A copy with one more table of readings filled in from the rows of a file.
     *
     * @param name the table's name
     * @param file a header with the table's columns in any order and in whatever letter case, where
     *     a unit in brackets other than the declared one is converted, and rows below it
     * @throws EntryRefused if the page has no such table, or the file cannot be read as it, naming
     *     each cell by line and column
     */
    public Filled withReadings(String name, SpreadsheetFile file) {
        return withTable(name, new ReadingsReader(table(name)).file(file));
    }

    Filled withTable(String name, List<List<Optional<Entry>>> rows) {
        Map<String, List<List<Optional<Entry>>>> tables = new LinkedHashMap<>(readings);
        tables.put(name, rows);
        return new Filled(page, entries, tables, example, origins);
    }

    private Part.Readings table(String name) {
        List<String> names = page.readings().stream().map(Part.Readings::name).toList();
        return page.readings().stream()
                .filter(table -> table.name().equals(name))
                .findFirst()
                .orElseThrow(() -> unknown("table of readings", name, names));
    }

    private EntryRefused unknown(String what, String name, List<String> names) {
        return new EntryRefused(
                String.format(
                        "page %s has no %s %s; %s",
                        page.name(), what, name, Near.advice(name, names)));
    }
}
