package halfwidth.job;

import halfwidth.value.Entry;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** The lines of a journal, and the file they are appended to. */
final class Journal {
    /** A cell of a table of readings; rows count from 1. */
    record Cell(int row, String column) {}

    /**
     * One value as entered.
     *
     * @param number its line in the file, 0 before it is written
     * @param field the input's name, or the table's for a cell
     * @param typed as typed; "" takes a reading back
     */
    record Line(
            long number,
            String time,
            String who,
            String page,
            String field,
            Optional<Cell> cell,
            String typed,
            String understood) {}

    private static final String[] HEADER = {
        "time", "who", "page", "field", "row", "column", "typed", "understood"
    };
    private static final CSVFormat READ =
            CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).get();

    private final Path file;
    private final List<Line> lines;

    private Journal(Path file, List<Line> lines) {
        this.file = file;
        this.lines = lines;
    }

    /** Reads a journal; a file that is not there is an empty one. */
    static Journal read(Path file) {
        List<Line> lines = new ArrayList<>();
        if (Files.exists(file)) {
            try (CSVParser parser = CSVParser.parse(file, StandardCharsets.UTF_8, READ)) {
                for (CSVRecord record : parser) {
                    lines.add(line(file, record, parser.getCurrentLineNumber()));
                }
            } catch (IOException | IllegalArgumentException | java.io.UncheckedIOException e) {
                throw new JobRefused(file + " cannot be read as a journal: " + e.getMessage());
            }
        }
        return new Journal(file, lines);
    }

    private static Line line(Path file, CSVRecord record, long number) {
        if (!record.isConsistent() || !record.isMapped("typed")) {
            throw new JobRefused(file + ":" + number + ": expected " + String.join(",", HEADER));
        }
        String row = record.get("row");
        try {
            return new Line(
                    number,
                    record.get("time"),
                    record.get("who"),
                    record.get("page"),
                    record.get("field"),
                    row.isEmpty()
                            ? Optional.empty()
                            : Optional.of(
                                    new Cell(
                                            Math.max(1, Integer.parseInt(row)),
                                            record.get("column"))),
                    record.get("typed"),
                    record.get("understood"));
        } catch (NumberFormatException e) {
            throw new JobRefused(file + ":" + number + ": row " + row + " is no whole number");
        }
    }

    List<Line> of(String page) {
        return lines.stream().filter(line -> line.page().equals(page)).toList();
    }

    String place(Line line) {
        return file + ":" + line.number();
    }

    /** A new line, of now and of whoever runs the program. */
    Line line(String page, String field, Optional<Cell> cell, Entry entry) {
        return new Line(
                0,
                DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(ZonedDateTime.now().withNano(0)),
                System.getProperty("user.name", ""),
                page,
                field,
                cell,
                entry.typed(),
                entry.understood());
    }

    /** Appends lines; they are on disk when it returns. */
    void append(List<Line> added) {
        if (added.isEmpty()) {
            return;
        }
        StringBuilder text = new StringBuilder();
        if (!Files.exists(file)) {
            text.append(CSVFormat.DEFAULT.format((Object[]) HEADER)).append("\r\n");
        }
        for (Line line : added) {
            text.append(
                            CSVFormat.DEFAULT.format(
                                    line.time(),
                                    line.who(),
                                    line.page(),
                                    line.field(),
                                    line.cell().map(cell -> cell.row() + "").orElse(""),
                                    line.cell().map(Cell::column).orElse(""),
                                    line.typed(),
                                    line.understood()))
                    .append("\r\n");
        }
        try (FileChannel channel =
                FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.APPEND)) {
            ByteBuffer bytes = ByteBuffer.wrap(text.toString().getBytes(StandardCharsets.UTF_8));
            while (bytes.hasRemaining()) {
                channel.write(bytes);
            }
            channel.force(true);
        } catch (IOException e) {
            throw new JobRefused(file + " cannot be written: " + e.getMessage());
        }
        lines.addAll(added);
    }
}
