package halfwidth.job;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.apache.commons.csv.DuplicateHeaderMode;

/** The file {@code job.csv}: which station it is, by name and value. Lines with # are notes. */
final class Heading {
    private static final String FILE = "job.csv";
    private static final String HELP =
            "a job folder holds job.csv with the columns name,value and lines such as"
                    + " Station,North Field or Runway,09";

    private static final String CHANGED = "job.csv was changed since the last entry; it says now: ";

    private Heading() {}

    static Map<String, String> read(Path folder) {
        Path file = folder.resolve(FILE);
        if (Files.isSymbolicLink(file)) {
            throw new JobRefused(file + " is a link; put the file itself into its place");
        }
        if (!Files.isRegularFile(file)) {
            throw new JobRefused(file + " is not there; " + HELP);
        }
        CSVFormat format =
                CSVFormat.DEFAULT
                        .builder()
                        .setHeader()
                        .setSkipHeaderRecord(true)
                        .setCommentMarker('#')
                        .setDuplicateHeaderMode(DuplicateHeaderMode.DISALLOW)
                        .get();
        Map<String, String> heading = new LinkedHashMap<>();
        try (CSVParser parser = CSVParser.parse(text(file), format)) {
            if (!parser.getHeaderNames().containsAll(List.of("name", "value"))) {
                throw new JobRefused(file + ":1: no name,value; " + HELP);
            }
            for (CSVRecord line : parser) {
                if (!line.isSet("name") || !line.isSet("value")) {
                    String place = file + ":" + parser.getCurrentLineNumber();
                    throw new JobRefused(place + ": no name,value; " + HELP);
                }
                heading.put(line.get("name").strip(), line.get("value").strip());
            }
        } catch (IOException | IllegalArgumentException | UncheckedIOException e) {
            throw new JobRefused(file + " cannot be read as CSV: " + e.getMessage() + "; " + HELP);
        }
        return Collections.unmodifiableMap(heading);
    }

    /** What the file says, without the mark that some programs put before UTF-8. */
    private static String text(Path file) throws IOException {
        try {
            String text = Files.readString(file);
            if (text.indexOf('\0') >= 0) {
                throw new JobRefused(
                        file + " is damaged, it has zeros in it; put a sound one into its place");
            }
            return text.startsWith("\ufeff") ? text.substring(1) : text;
        } catch (CharacterCodingException e) {
            throw new JobRefused(file + " is not UTF-8; save it anew as UTF-8");
        }
    }

    /**
     * Says that the heading is another than when the journal was last written, if it is; empty as
     * well where that is not known.
     */
    static Optional<String> changed(Path folder, Map<String, String> heading) {
        return EndFile.heading(folder)
                .filter(before -> !before.equals(digest(heading)))
                .map(
                        other ->
                                heading.entrySet().stream()
                                        .map(line -> line.getKey() + " " + line.getValue())
                                        .collect(Collectors.joining(", ", CHANGED, "")));
    }

    /** Another line end or quoting makes no other heading. */
    static String digest(Map<String, String> heading) {
        StringBuilder lines = new StringBuilder();
        heading.forEach((name, value) -> lines.append(name + "\n" + value + "\n"));
        byte[] bytes = lines.toString().getBytes(StandardCharsets.UTF_8);
        return new Chain().own(bytes, 0, bytes.length);
    }

    /**
     * Makes a folder into a job's.
     *
     * @throws JobRefused if it is one already, or it cannot be written
     */
    static void write(Path folder, Map<String, String> heading) {
        StringBuilder text = new StringBuilder("name,value\n");
        heading.forEach(
                (name, value) -> text.append(CSVFormat.DEFAULT.format(name, value)).append('\n'));
        Path file = folder.resolve(FILE);
        if (Files.exists(file)) {
            throw new JobRefused(file + " is there already; open that job instead");
        }
        try {
            write(file, text.toString());
        } catch (IOException e) {
            throw new JobRefused(file + " cannot be written: " + e);
        }
    }

    /** Under its name there is all of it or nothing, whatever ends this. */
    private static void write(Path file, String text) throws IOException {
        Path folder = file.toAbsolutePath().getParent();
        Path there = folder.getParent();
        while (there != null && !Files.exists(there)) {
            there = there.getParent();
        }
        Files.createDirectories(folder);
        Path part = folder.resolve(FILE + ".new");
        Files.deleteIfExists(part);
        Files.writeString(part, text, StandardOpenOption.CREATE_NEW, StandardOpenOption.SYNC);
        Files.move(part, file);
        for (Path at = folder; at != null; at = at.equals(there) ? null : at.getParent()) {
            FolderSync.of(at);
        }
    }
}
