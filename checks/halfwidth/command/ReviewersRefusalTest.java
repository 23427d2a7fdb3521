package halfwidth.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A sheet of the invented demo station that its reviewer refuses: the data sheet in it is that of
 * another line, so that two of its limits are not met. It goes back, is answered by the right value
 * and prepared anew, and is checked then.
 */
@Tag("long")
class ReviewersRefusalTest {
    private static final String PAGE = "lines/phase-constant";
    private static final String VISIT = "feeds";
    private static final Path DEMO = Program.PROJECT.resolve("datasets/demo");
    private static final String WHY = "Is that the data sheet of this line?";

    @TempDir Path temporary;
    private Path job;

    @BeforeEach
    void begin() throws IOException {
        job = Files.createDirectories(temporary.resolve("job"));
        Files.copy(DEMO.resolve("job.csv"), job.resolve("job.csv"));
    }

    private Program inJob(String... arguments) {
        return Program.here(
                Stream.concat(Stream.of(arguments), Stream.of("--job", job.toString()))
                        .toArray(String[]::new));
    }

    /** Runs the visit with what is added, and returns the record. */
    private String record(int status, String... more) throws IOException {
        List<Path> before = Scratch.recordsOf(job);
        List<String> line = new ArrayList<>(List.of("run", PAGE, "--visit", VISIT, "--record"));
        line.addAll(List.of(more));
        Program run = inJob(line.toArray(String[]::new));
        assertEquals(status, run.status(), run::toString);
        List<Path> now = new ArrayList<>(Scratch.recordsOf(job));
        now.removeAll(before);
        return now.get(0).toString();
    }

    private static Program sign(String record, String name, String... as) {
        List<String> line = new ArrayList<>(List.of("sign", record, "--name", name, "--as"));
        line.addAll(List.of(as));
        return Program.here(line.toArray(String[]::new));
    }

    private static void assertSays(Program program, int status, String... words) {
        assertEquals(status, program.status(), program::toString);
        Stream.of(words)
                .forEach(
                        word ->
                                assertTrue(
                                        (program.out() + program.err()).contains(word),
                                        () -> word + " is not in " + program));
    }

    @Test
    void aRefusedSheetIsAnsweredByTheRightValueAndCheckedThen() throws IOException {
        Path files = DEMO.resolve(PAGE).resolve(VISIT);
        String first =
                record(
                        3,
                        "--inputs",
                        files.resolve("inputs.csv").toString(),
                        "--readings",
                        "cuts=" + files.resolve("cuts.csv"),
                        "--readings",
                        "slope=" + files.resolve("slope.csv"));
        assertSays(sign(first, "P. Reparer", "prepared"), 0, "limits not met");
        assertSays(sign(first, "R. Viewer", "checked"), 1, "Data sheet against trial cuts");

        assertSays(
                sign(first, "R. Viewer", "sent-back", "--at", "velocityFactor", "--remark", WHY),
                0);
        String told = "sent back by R. Viewer, at velocityFactor: " + WHY;
        assertSays(inJob("list"), 0, told);
        assertSays(Program.here("verify", first), 1, told, "not answered yet");
        assertSays(
                sign(first, "C. Hecker", "checked", "--override", "We need it in service today"),
                1,
                "answer that first");

        // The measured 4.06 deg/in of the slope is that of 360 f/(c VF) with VF 0.817.
        String second = record(0, "--set", "velocityFactor=0.817");
        assertSays(inJob("list"), 0, told);
        assertSays(sign(second, "P. Reparer", "prepared"), 0);
        assertSays(sign(second, "P. Reparer", "checked"), 1, "somebody else has to check it");
        assertSays(sign(second, "R. Viewer", "checked"), 0);
        assertSays(
                Program.here("verify", second),
                0,
                "checked by R. Viewer",
                "letter by letter",
                "results equal, to the last digit");
        String history = inJob("history").out();
        assertTrue(history.contains("sent back by R. Viewer"), history);
        assertTrue(history.contains("velocityFactor = 0.817, was 0.67"), history);
    }
}
