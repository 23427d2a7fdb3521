package halfwidth.job;

import halfwidth.page.Filled;
import halfwidth.page.Page;
import halfwidth.page.Part;
import halfwidth.value.Entry;
import halfwidth.value.EntryRefused;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * A job folder: {@code job.csv} says which station it is, {@code journal.csv} holds every value
 * that was entered, in order. The values of a page are what the journal comes to; an entry is never
 * changed, only followed by another.
 */
public final class Job {
    private static final String HELP =
            "a job folder holds job.csv with the columns name,value and lines such as"
                    + " Station,North Field or Runway,09";

    private final Path folder;
    private final Map<String, String> heading;
    private final Journal journal;

    private Job(Path folder, Map<String, String> heading, Journal journal) {
        this.folder = folder;
        this.heading = heading;
        this.journal = journal;
    }

    /**
     * Opens a job folder.
     *
     * @throws JobRefused if the folder or its job.csv is not there, or a file in it cannot be read
     */
    public static Job open(Path folder) {
        Path file = folder.resolve("job.csv");
        if (!Files.isRegularFile(file)) {
            throw new JobRefused(file + " is not there; " + HELP);
        }
        return new Job(folder, heading(file), Journal.read(folder.resolve("journal.csv")));
    }

    private static Map<String, String> heading(Path file) {
        CSVFormat format = CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).get();
        Map<String, String> heading = new LinkedHashMap<>();
        try (CSVParser parser = CSVParser.parse(file, StandardCharsets.UTF_8, format)) {
            for (CSVRecord line : parser) {
                if (!line.isMapped("name") || !line.isMapped("value") || line.size() < 2) {
                    throw new JobRefused(
                            file
                                    + ":"
                                    + parser.getCurrentLineNumber()
                                    + ": no name,value; "
                                    + HELP);
                }
                heading.put(line.get("name").strip(), line.get("value").strip());
            }
        } catch (IOException | IllegalArgumentException e) {
            throw new JobRefused(file + " cannot be read as CSV: " + e.getMessage());
        }
        return heading;
    }

    /** What job.csv says, by name, in its order. */
    public Map<String, String> heading() {
        return Collections.unmodifiableMap(heading);
    }

    /** The folder. */
    public Path folder() {
        return folder;
    }

    /**
     * The page with the values entered for it so far, and its defaults.
     *
     * @throws JobRefused if the page no longer accepts an entry, naming the journal's line
     */
    public Filled filled(Page page) {
        Filled filled = Filled.none(page);
        Map<String, List<List<String>>> tables = new LinkedHashMap<>();
        for (Journal.Line line : journal.of(page.name())) {
            try {
                if (line.cell().isEmpty()) {
                    filled = filled.with(line.field(), line.typed());
                } else {
                    put(tables, page, line);
                }
            } catch (EntryRefused refusal) {
                throw new JobRefused(journal.place(line) + ": " + refusal.getMessage());
            }
        }
        for (Map.Entry<String, List<List<String>>> table : tables.entrySet()) {
            try {
                filled = filled.withReadings(table.getKey(), table.getValue());
            } catch (EntryRefused refusal) {
                throw new JobRefused(folder + ": " + refusal.getMessage());
            }
        }
        return filled;
    }

    private static void put(Map<String, List<List<String>>> tables, Page page, Journal.Line line) {
        Part.Readings table =
                page.readings().stream()
                        .filter(declared -> declared.name().equals(line.field()))
                        .findFirst()
                        .orElseThrow(() -> new EntryRefused("no table " + line.field()));
        Journal.Cell cell = line.cell().orElseThrow();
        int width = table.columns().size();
        int column = 0;
        while (column < width && !table.columns().get(column).name().equals(cell.column())) {
            column++;
        }
        if (column == width) {
            throw new EntryRefused(table.name() + " has no column " + cell.column());
        }
        List<List<String>> rows = tables.computeIfAbsent(table.name(), name -> new ArrayList<>());
        while (rows.size() < cell.row()) {
            rows.add(new ArrayList<>(Collections.nCopies(width, "")));
        }
        rows.get(cell.row() - 1).set(column, line.typed());
    }

    /**
     * Writes what a page has now, where it differs from what the journal has, and does not return
     * before it is on disk.
     *
     * @throws JobRefused if it cannot be written
     */
    public void keep(Filled filled) {
        Filled before = filled(filled.page());
        List<Journal.Line> lines = new ArrayList<>();
        String page = filled.page().name();
        filled.entries()
                .forEach(
                        (name, entry) -> {
                            if (!entry.equals(before.entries().get(name))) {
                                lines.add(journal.line(page, name, Optional.empty(), entry));
                            }
                        });
        for (Part.Readings table : filled.page().readings()) {
            lines.addAll(
                    cells(
                            filled.page(),
                            table,
                            filled.readings().getOrDefault(table.name(), List.of()),
                            before.readings().getOrDefault(table.name(), List.of())));
        }
        journal.append(lines);
    }

    private List<Journal.Line> cells(
            Page page,
            Part.Readings table,
            List<List<Optional<Entry>>> now,
            List<List<Optional<Entry>>> before) {
        List<Journal.Line> lines = new ArrayList<>();
        for (int row = 0; row < Math.max(now.size(), before.size()); row++) {
            for (int column = 0; column < table.columns().size(); column++) {
                Optional<Entry> is = cell(now, row, column);
                if (!is.equals(cell(before, row, column))) {
                    Journal.Cell cell =
                            new Journal.Cell(row + 1, table.columns().get(column).name());
                    lines.add(
                            journal.line(
                                    page.name(),
                                    table.name(),
                                    Optional.of(cell),
                                    is.orElse(new Entry("", "", ""))));
                }
            }
        }
        return lines;
    }

    private static Optional<Entry> cell(List<List<Optional<Entry>>> rows, int row, int column) {
        return row < rows.size() ? rows.get(row).get(column) : Optional.empty();
    }
}
