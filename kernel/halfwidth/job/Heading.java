package halfwidth.job;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** The file {@code job.csv}: which station it is, by name and value. Lines with # are notes. */
final class Heading {
    private static final String FILE = "job.csv";
    private static final String HELP =
            "a job folder holds job.csv with the columns name,value and lines such as"
                    + " Station,North Field or Runway,09";

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
                        .get();
        Map<String, String> heading = new LinkedHashMap<>();
        try (CSVParser parser = CSVParser.parse(file, StandardCharsets.UTF_8, format)) {
            for (CSVRecord line : parser) {
                if (!line.isMapped("name") || !line.isMapped("value") || line.size() < 2) {
                    String place = file + ":" + parser.getCurrentLineNumber();
                    throw new JobRefused(place + ": no name,value; " + HELP);
                }
                heading.put(line.get("name").strip(), line.get("value").strip());
            }
        } catch (IOException | IllegalArgumentException | UncheckedIOException e) {
            throw new JobRefused(file + " cannot be read as CSV: " + e.getMessage());
        }
        return Collections.unmodifiableMap(heading);
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
            Files.createDirectories(folder);
            Files.writeString(file, text, StandardOpenOption.CREATE_NEW, StandardOpenOption.SYNC);
        } catch (IOException e) {
            throw new JobRefused(file + " cannot be written: " + e);
        }
    }
}
