package halfwidth.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
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

/** Records signed, sent back and verified from the command line. */
@Tag("long")
class SignedRecordsTest {
    private static final String REASON = "Flown and accepted by the inspector";

    @TempDir Path temporary;
    private Scratch scratch;

    @BeforeEach
    void write() {
        scratch = Scratch.within(temporary);
        scratch.file("job/job.csv", "name,value", "Station,North Field");
        scratch.page("trial/first", "double same = length; // mm", "assert twice == 10 : \"x\";");
    }

    /** A copy of the page in the job that differs in this way. */
    private void adapt(String what, String otherwise) {
        String text = scratch.text("notebooks/trial/first.md").replace(what, otherwise);
        scratch.file("job/pages/trial/first.md", text.split("\n"));
    }

    private Program inJob(String... arguments) {
        return with(arguments, "--job", scratch.path("job"));
    }

    private Program with(String[] arguments, String... more) {
        Stream<String> rest = Stream.of("--notebooks", scratch.path("notebooks"));
        return Program.here(
                Stream.of(Stream.of(arguments), Stream.of(more), rest)
                        .flatMap(all -> all)
                        .toArray(String[]::new));
    }

    /** Fills the page in, writes a record and returns it. */
    private String record(String length) throws IOException {
        List<Path> before = scratch.records();
        inJob("run", "trial/first", "--set", "length=" + length, "--record");
        List<Path> now = new ArrayList<>(scratch.records());
        now.removeAll(before);
        return now.get(0).toString();
    }

    private Program sign(String record, String name, String... more) {
        List<String> line = new ArrayList<>(List.of("sign", record, "--name", name, "--as"));
        line.addAll(List.of(more));
        return with(line.toArray(String[]::new));
    }

    private Program verify(String record) {
        return with(new String[] {"verify", record});
    }

    private static void assertSays(Program program, int status, String... words) {
        String all = (program.out() + program.err()).replaceAll("\\s+", " ");
        assertEquals(status, program.status(), all);
        for (String one : words) {
            assertTrue(all.contains(one), one + " is not in: " + all);
        }
    }

    @Test
    void aSoundSheetIsPreparedByOneAndCheckedByAnotherUntilAnUncertaintyIsChanged()
            throws IOException {
        String record = record("5 ± 0.02");
        assertSays(sign(record, "R. Viewer", "checked"), 1, "nobody has prepared it");
        assertSays(sign(record, "P. Reparer", "prepared"), 0, "prepared by P. Reparer");
        assertSays(sign(record, "R. Viewer", "checked"), 0, "checked by R. Viewer");
        assertSays(inJob("list"), 0, "prepared by P. Reparer", "checked by R. Viewer");
        Program other = inJob("run", "trial/first", "--set", "length=5 ± 0.2");
        assertFalse(other.out().contains("Checked by"), other.out());
        assertSays(inJob("list"), 0, "checked by R. Viewer", "for an earlier state");
        assertSays(
                verify(record),
                0,
                "made with the page as shipped with this version",
                "all 1 checks hold on the worked example",
                "prepared by P. Reparer",
                "checked by R. Viewer");
        assertSays(sign(record, "C. Hecker", "checked"), 1, "shows something else by now");
    }

    /** A wrong factor on a step of the job's own copy. */
    @Test
    void aWrongPageIsNotCheckedUnlessSomebodySaysWhyAndThenEverythingTellsSo() throws IOException {
        adapt("2 * length", "2.02 * length");
        String record = record("5");
        assertSays(
                sign(record, "R. Viewer", "checked", "--remark", "send back"),
                1,
                "checks that fail on the worked example: line 21",
                "the page is adapted",
                "other than shipped at line 16",
                "nobody has prepared it",
                "three words or more");
        assertSays(
                sign(record, "P. Reparer", "prepared"),
                0,
                "Despite checks that fail on the worked example: line 21");
        Program overridden =
                sign(record, "R. Viewer", "checked", "--difference-seen", "--override", REASON);
        assertSays(overridden, 0, "Record with the override: ");
        Path headed =
                scratch.records().stream()
                        .filter(file -> !file.toString().equals(record))
                        .findAny()
                        .get();
        String text = Files.readString(headed);
        assertTrue(text.contains("<dt>Checked despite</dt>"), "it heads the record");
        assertTrue(text.contains("Override by R. Viewer: " + REASON), "with the reason");
        assertSays(verify(headed.toString()), 1, "NOT RUN", "not the one that this version ships");
        assertSays(
                with(new String[] {"verify", headed.toString(), "--run-its-code"}),
                1,
                "made with an adapted page: other than shipped at line 16",
                "1 of 1 checks FAIL",
                "line 21",
                "letter by letter",
                "prepared by P. Reparer",
                "Override by R. Viewer: " + REASON);
        assertSays(inJob("list"), 0, "checked by R. Viewer", REASON);
    }

    @Test
    void whatIsSentBackStaysSoUntilItIsAnswered() throws IOException {
        String record = record("5");
        assertSays(sign(record, "R", "sent-back", "--at", "width", "--remark", "x"), 1, "length");
        String[] back = {"sent-back", "--at", "length", "--remark", "read it again"};
        assertSays(sign(record, "R. Viewer", back), 0, "sent-back by R. Viewer");
        String words = "R. Viewer, at length: read it again";
        assertSays(inJob("list"), 0, "sent back by " + words);
        assertSays(inJob("run", "trial/first"), 0, "Sent back by " + words);
        assertSays(verify(record), 1, "sent back by " + words, "not answered yet");
        assertSays(sign(record, "C", "checked", "--override", REASON), 1, "answer that first");
        assertSays(sign(record, "P. Reparer", "answered", "--remark", "twice, the same"), 0);
        assertSays(verify(record), 0, "neither prepared nor checked");
        String history = Program.here("history", "--job", scratch.path("job")).out();
        assertTrue(history.contains("answer by P. Reparer to line"), history);
    }
}
