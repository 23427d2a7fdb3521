package halfwidth.command;

import halfwidth.record.Forgery;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/**
 * Writes a journal anew as somebody can who knows how its checks are computed: the first twelve
 * digits of SHA-256, of a line, and of the link before with that.
 */
final class JournalForger {
    private static final int DIGITS = 12;
    private static final int CHECKS = 2 * (DIGITS + 1);

    private JournalForger() {}

    /** Alters each line; one that comes to nothing is left out. */
    static void rewritten(Path job, UnaryOperator<String> altered) throws IOException {
        write(job, cells(job).map(altered).filter(line -> !line.isEmpty()).toList());
    }

    /** Puts one more line behind the last. */
    static void withMore(Path job, String line) throws IOException {
        write(job, Stream.concat(cells(job), Stream.of(line)).toList());
    }

    /** The lines without their checks, after the heading. */
    static Stream<String> cells(Path job) throws IOException {
        return Files.readAllLines(job.resolve("journal.csv")).stream()
                .skip(1)
                .map(line -> line.substring(0, line.length() - CHECKS));
    }

    private static void write(Path job, List<String> lines) throws IOException {
        List<String> all = new ArrayList<>();
        all.add(Files.readAllLines(job.resolve("journal.csv")).get(0));
        String before = "0".repeat(DIGITS);
        for (String line : lines) {
            String own = Forgery.digest(line).substring(0, DIGITS);
            before = Forgery.digest(before + own).substring(0, DIGITS);
            all.add(line + "," + own + "," + before);
        }
        Files.writeString(job.resolve("journal.csv"), String.join("\n", all) + "\n");
        Files.deleteIfExists(job.resolve("journal-end.csv"));
    }
}
