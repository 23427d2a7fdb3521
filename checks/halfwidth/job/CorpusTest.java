package halfwidth.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Damaged and hostile job folders, one fault each. What each comes to stands in {@code
 * expected.csv}; the checks within were computed by another program from the format's description.
 */
class CorpusTest {
    private static final Path CORPUS = Path.of("checks", "halfwidth", "job", "corpus");

    /**
     * A folder and what it comes to.
     *
     * @param reads whether it is sound, warned of or refused where it is read
     * @param lines the numbers of the lines that are read
     * @param values what was typed and stands
     * @param writes whether it is opened to write: sound, with a torn end set aside, with its end
     *     unwatched, or refused
     * @param words that the warning or the refusal has
     */
    record Case(
            String name, String reads, String lines, String values, String writes, String words) {
        @Override
        public String toString() {
            return name;
        }
    }

    @TempDir Path temporary;

    static List<Case> cases() {
        CSVFormat format = CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).get();
        Path file = CORPUS.resolve("expected.csv");
        try (CSVParser rows = CSVParser.parse(file, StandardCharsets.UTF_8, format)) {
            return rows.stream()
                    .map(
                            row ->
                                    new Case(
                                            row.get("case"),
                                            row.get("reads"),
                                            row.get("lines"),
                                            row.get("values"),
                                            row.get("writes"),
                                            row.get("words")))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Path copy(Case of) throws IOException {
        Path folder = Files.createDirectory(temporary.resolve("job"));
        try (Stream<Path> files = Files.list(CORPUS.resolve(of.name()))) {
            for (Path file : files.toList()) {
                Files.copy(file, folder.resolve(file.getFileName().toString()));
            }
        }
        return folder;
    }

    @Test
    void everyFolderIsExpected() throws IOException {
        try (Stream<Path> folders = Files.list(CORPUS).filter(Files::isDirectory)) {
            Set<String> there =
                    folders.map(f -> f.getFileName().toString()).collect(Collectors.toSet());
            Set<String> told = new HashSet<>(cases().stream().map(Case::name).toList());
            assertEquals(told, there);
        }
    }

    @ParameterizedTest
    @MethodSource("cases")
    void isReadAsTold(Case of) throws IOException {
        Path folder = copy(of);
        if (of.reads().equals("refused")) {
            assertSays(of, assertThrows(JobRefused.class, () -> Job.readOnly(folder)));
            return;
        }
        Job job = Job.readOnly(folder);
        assertEquals(of.lines(), numbers(job));
        assertEquals(of.values(), values(job));
        assertEquals(List.of(), job.notices());
        if (of.reads().equals("sound")) {
            assertEquals(List.of(), job.warnings());
        } else {
            assertTrue(job.warnings().toString().contains(of.words()), job.warnings()::toString);
        }
    }

    private static void assertSays(Case of, JobRefused refusal) {
        assertTrue(refusal.getMessage().contains(of.words()), refusal::getMessage);
    }

    @ParameterizedTest
    @MethodSource("cases")
    void isWorkedOnAsTold(Case of) throws IOException {
        Path folder = copy(of);
        if (of.writes().equals("refused")) {
            String refusal = assertThrows(JobRefused.class, () -> Job.open(folder)).getMessage();
            boolean readable = !of.reads().equals("refused");
            String words = readable ? "does not begin as this program's" : of.words();
            assertTrue(refusal.contains(words), refusal);
            return;
        }
        int extra = of.writes().equals("sound") ? 0 : 1;
        int before = Job.readOnly(folder).warnings().size();
        try (Job job = Job.open(folder)) {
            assertEquals(before + extra, job.warnings().size(), job.warnings()::toString);
            job.state(new Fact.Noted(new Visit("", ""), "goes on"));
        }
        assertEquals(
                of.writes().equals("torn"), Files.exists(folder.resolve("journal-torn-1.txt")));
        Job again = Job.readOnly(folder);
        assertEquals(before, again.warnings().size(), again.warnings()::toString);
        assertEquals(of.values(), values(again));
        Line last = again.lines().get(again.lines().size() - 1);
        assertEquals(new Fact.Noted(new Visit("", ""), "goes on"), last.fact());
    }

    private static String numbers(Job job) {
        return job.lines().stream()
                .map(line -> Long.toString(line.number()))
                .collect(Collectors.joining(" "));
    }

    private static String values(Job job) {
        return job.values(new Visit("sweep/width", "pair 3")).values().stream()
                .map(line -> ((Fact.Value) line.fact()).typed())
                .collect(Collectors.joining("|"));
    }
}
