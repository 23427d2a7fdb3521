package halfwidth.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.record.Forgery;
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

/** Records from elsewhere: what verify compares before it runs anything, and what it runs. */
@Tag("long")
class HostileRecordsTest {
    private static final String STEP = "double same = length; // mm";

    @TempDir Path temporary;
    private Scratch scratch;
    private Path harm;

    @BeforeEach
    void write() {
        scratch = Scratch.within(temporary);
        scratch.file("job/job.csv", "name,value", "Station,North Field");
        scratch.page("trial/first", STEP, "assert twice == 10 : \"x\";");
        harm = temporary.resolve("harm.txt");
    }

    private Program program(String... arguments) {
        return Program.here(
                Stream.concat(
                                Stream.of(arguments),
                                Stream.of("--notebooks", scratch.path("notebooks")))
                        .toArray(String[]::new));
    }

    private Program verify(Path record, String... more) {
        List<String> line = new ArrayList<>(List.of("verify", record.toString()));
        line.addAll(List.of(more));
        return program(line.toArray(String[]::new));
    }

    private Path record() {
        program(
                "run",
                "trial/first",
                "--set",
                "length=5",
                "--job",
                scratch.path("job"),
                "--record");
        return scratch.records().get(0);
    }

    /** The record with this step in the page that is attached to it. */
    private String with(Path record, String step) throws IOException {
        String text = Files.readString(record);
        int page = text.indexOf("id=\"page-text\"");
        String attached = text.substring(page);
        assertTrue(attached.contains(STEP));
        return text.substring(0, page) + attached.replace(STEP, step.replace("\"", "&quot;"));
    }

    private String writing() {
        String file = harm.toString().replace("\\", "\\\\");
        return "java.nio.file.Files.writeString(java.nio.file.Path.of(\"" + file + "\"), \"x\");";
    }

    private static String all(Program program) {
        return program.out() + program.err();
    }

    private static void assertSays(Program program, int status, String... words) {
        assertEquals(status, program.status(), all(program));
        for (String one : words) {
            assertTrue(all(program).contains(one), one + " is not in: " + all(program));
        }
    }

    /** Were it run, it would say which steps fail: the bounds refuse this one. */
    private void assertDidNotRun(Program program) {
        assertFalse(Files.exists(harm));
        String said = all(program);
        assertFalse(said.contains("results equal"), said);
        assertFalse(said.contains("different:"), said);
        assertFalse(said.contains("step at"), said);
    }

    private void assertRunsWithinTheBounds(Path forged) {
        Program run = verify(forged, "--run-its-code");
        assertSays(run, 1, "step at line 17 fails");
        assertFalse(Files.exists(harm));
    }

    @Test
    void aPageThatWritesAFileDoesNotRunUnderABrokenSeal() throws IOException {
        Path forged = scratch.file("forged.html", with(record(), writing()).split("\n"));
        Program verified = verify(forged);
        assertSays(verified, 1, "CHANGED after it was written", "NOT RUN", "its seal is broken");
        assertDidNotRun(verified);
        assertRunsWithinTheBounds(forged);
    }

    @Test
    void aPageThatWritesAFileDoesNotRunUnderAGoodSeal() throws IOException {
        String text = with(record(), writing());
        for (String says : List.of("page text,shipped", "page text,adapted")) {
            String sealed = Forgery.sealed(text.replace("page text,shipped", says));
            Path forged = Files.writeString(temporary.resolve("sealed.html"), sealed);
            Program verified = verify(forged);
            assertSays(
                    verified,
                    1,
                    "  unchanged",
                    says.endsWith("adapted")
                            ? "made with an adapted page: other than shipped at line 17"
                            : "by what it says, which is not this version's",
                    "- 17: " + STEP,
                    "+ 17: java.nio.file.Files.writeString",
                    "NOT RUN",
                    "its page is not the one that this version ships");
            assertDidNotRun(verified);
            assertRunsWithinTheBounds(forged);
        }
    }

    @Test
    void aLongPageFromElsewhereDoesNotFillTheScreen() throws IOException {
        String long100 = "double more%d = length; // mm " + "x".repeat(400) + "%n";
        StringBuilder steps = new StringBuilder();
        for (int i = 0; i < 300; i++) {
            steps.append(long100.formatted(i));
        }
        Path forged =
                Files.writeString(
                        temporary.resolve("long.html"),
                        Forgery.sealed(with(record(), steps.toString())));
        Program verified = verify(forged);
        assertSays(verified, 1, "NOT RUN", "lines more");
        assertTrue(verified.out().lines().count() < 30, verified.out());
        assertTrue(verified.out().lines().allMatch(line -> line.length() < 500), verified.out());
    }

    @Test
    void nothingRunsWhereTheJournalHasAWarning() throws IOException {
        Path record = record();
        Path journal = scratch.folder().resolve("job/journal.csv");
        String text = Files.readString(journal);
        String altered = text.replaceFirst(",length,,,5,", ",length,,,6,");
        assertFalse(text.equals(altered));
        Files.writeString(journal, altered);
        Program verified = verify(record);
        assertSays(
                verified,
                1,
                "Journal: line ",
                "was altered",
                "NOT RUN",
                "journal of its job is not");
        assertDidNotRun(verified);
        assertSays(verify(record, "--run-its-code"), 1, "all 1 results equal");
    }

    @Test
    void withoutRunningAllElseIsLookedAtAndThatIsSaid() throws IOException {
        Path record = record();
        assertSays(verify(record), 0, "all 1 results equal", "letter by letter");
        Program looked = verify(record, "--without-running");
        assertSays(
                looked,
                4,
                "unchanged",
                "made with the page as shipped with this version",
                "written behind journal line",
                "which is still there",
                "NOT worked out again",
                "neither prepared nor checked");
        assertDidNotRun(looked);
        assertSays(verify(record, "--without-running", "--run-its-code"), 2);
        Files.writeString(record, Files.readString(record).replace("North", "South"));
        assertSays(verify(record, "--without-running"), 1, "CHANGED", "NOT worked out again");
    }

    @Test
    void anAlteredFigureUnderANewSealIsFoundWithoutItsJob() throws IOException {
        String text = Files.readString(record());
        assertTrue(text.contains("<strong>10.0</strong>") || text.contains("10.0"), text);
        String forged = Forgery.sealed(text.replaceFirst("10\\.0", "11.0"));
        Path file = Files.writeString(temporary.resolve("figure.html"), forged);
        assertSays(verify(file), 1, "  unchanged", "SHOWS IS NOT", "where it comes to");
    }

    @Test
    void aJournalThatWasWrittenAnewNoMoreHasTheLinkThatTheRecordNames() throws IOException {
        Path record = record();
        JournalForger.rewritten(
                scratch.folder().resolve("job"), line -> line.replace(",5,", ",6,"));
        Program verified = verify(record);
        assertSays(verified, 1, "NOT THERE any more");
        assertFalse(all(verified).contains("Journal: "), "its own checks hold: " + all(verified));
    }
}
