package halfwidth.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.job.Job;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A job from the command line: links, records, import, history, and two processes at once. */
@Tag("long")
class JobCommandsTest {
    @TempDir Path temporary;
    private Scratch scratch;

    @BeforeEach
    void write() {
        scratch = Scratch.within(temporary);
        scratch.file("job/job.csv", "name,value", "Station,North Field");
        scratch.page("trial/first", "double same = length; // mm", "assert twice == 10 : \"x\";");
        scratch.file(
                "notebooks/trial/second.md",
                "# Second",
                "",
                "```csv inputs",
                "name,unit,kind,example,default,from,label",
                "taken,in,number,1,,trial/first#twice,Taken",
                "```",
                "",
                "```csv readings sweep",
                "azimuth [\u00b0],near [DDM]",
                "1,0",
                "```",
                "",
                "```java",
                "double more = taken + 1; // in",
                "```",
                "",
                "```csv results",
                "name,unit,decimals,label",
                "more,in,2,More",
                "```");
    }

    private Program run(String... arguments) {
        Stream<String> rest =
                Stream.of("--job", scratch.path("job"), "--notebooks", scratch.path("notebooks"));
        return Program.here(Stream.concat(Stream.of(arguments), rest).toArray(String[]::new));
    }

    @Test
    void takesAValueFromAnotherPageInItsOwnUnitAndMarksWhatDependsOnIt() {
        assertEquals(0, run("run", "trial/first", "--set", "length=5").status());
        Program second = run("run", "trial/second");
        assertTrue(second.out().contains("from trial/first#twice, 20"), second.out());
        // 10 mm are 0.3937 in (the inch is 25.4 mm by definition), and 1 more.
        assertTrue(second.section("RESULTS").contains("1.39"), second.out());
        run("run", "trial/first", "--set", "length=4");
        String list = run("list").out();
        assertTrue(list.contains("out of date"), list);
        assertTrue(list.contains("met"), list);
        String early = run("run", "trial/second", "--at", "1").out();
        assertTrue(early.contains("not filled in"), early);
    }

    @Test
    void writesSignsAndVerifiesARecordAndNoticesAChange() throws IOException {
        assertEquals(3, run("run", "trial/first", "--set", "length=7", "--record").status());
        String record = scratch.records().get(0).toString();
        String[] sign = {
            "sign",
            record,
            "--name",
            "A. Nother",
            "--as",
            "prepared",
            "--notebooks",
            scratch.path("notebooks")
        };
        assertEquals(0, Program.here(sign).status());
        Program verified = Program.here("verify", record, "--notebooks", scratch.path("notebooks"));
        assertEquals(0, verified.status(), verified.err());
        assertTrue(verified.out().contains("unchanged"), verified.out());
        assertTrue(verified.out().contains("all 1 results equal"), verified.out());
        assertTrue(verified.out().contains("prepared by A. Nother"), verified.out());
        Path journal = scratch.folder().resolve("job/journal.csv");
        byte[] whole = Files.readAllBytes(journal);
        Files.delete(journal);
        Program older = Program.here("verify", record);
        assertEquals(1, older.status(), older.out());
        assertTrue(older.out().contains("NOT in the journal of this job"), older.out());
        assertTrue(older.err().contains("is not in journal.csv any more"), older.err());
        Files.write(journal, whole);
        Files.writeString(
                scratch.records().get(0),
                Files.readString(scratch.records().get(0)).replace("North", "South"));
        Program changed = Program.here("verify", record);
        assertEquals(1, changed.status());
        assertTrue(changed.out().contains("CHANGED after it was written"), changed.out());
        assertTrue(changed.out().contains("CHANGED since it was signed"), changed.out());
    }

    @Test
    void whatIsNoRecordIsSaidToBeNone() {
        Program none = Program.here("verify", scratch.path("gone.html"));
        assertEquals(1, none.status());
        assertTrue(none.err().contains("gone.html is not there"), none.err());
        String page = scratch.path("notebooks/trial/second.md");
        Program other = Program.here("verify", page);
        assertEquals(1, other.status());
        assertTrue(other.err().contains("second.md is no record"), other.err());
    }

    @Test
    void aVisitIsOfAJobAndHeadsWhatIsPrinted() {
        Program nowhere =
                Program.here(
                        "run",
                        "trial/first",
                        "--visit",
                        "today",
                        "--notebooks",
                        scratch.path("notebooks"));
        assertEquals(2, nowhere.status(), nowhere.out());
        assertTrue(nowhere.err().contains("--visit belongs to a job"), nowhere.err());
        Program here = run("run", "trial/first", "--set", "length=5", "--visit", "today");
        assertEquals(0, here.status(), here.err());
        assertTrue(here.out().contains("Visit today, Station North Field\n"), here.out());
    }

    @Test
    void aCopyWhoseChecksFailSaysSo() {
        assertFalse(run("run", "trial/first", "--set", "length=5").out().contains("copy"));
        scratch.file(
                "job/pages/trial/first.md",
                scratch.text("notebooks/trial/first.md").replace("== 10", "== 11").split("\n"));
        Program run = run("run", "trial/first");
        String words = run.out().replaceAll("\\s+", " ");
        assertTrue(words.contains("On its worked example checks fail: 1 of 1 (line "), words);
        assertEquals(0, run.status(), "it is not its worked example that was run");
    }

    @Test
    void importsAfterShowingTheMapping() {
        String file = scratch.file("sweep.csv", "azimuth,ddm", "1,-10", "2,150").toString();
        Program asked = run("import", "trial/second", "sweep", file);
        assertEquals(1, asked.status());
        assertTrue(asked.err().contains("azimuth: in which unit"), asked.err());
        assertTrue(asked.err().contains("ddm: which column is it?"), asked.err());
        List<String> stated =
                List.of("azimuth=azimuth [\u00b0]", "ddm=near [\u00b5A, + in the 90]");
        String[] line = {
            "import", "trial/second", "sweep", file, "--map", stated.get(0), "--map", stated.get(1)
        };
        Program shown = run(line);
        assertEquals(1, shown.status());
        assertTrue(shown.out().contains("ddm \u2192 near [\u00b5A, + in the 90]"), shown.out());
        assertTrue(shown.err().contains("--accept"), shown.err());
        assertEquals(0, Job.readOnly(scratch.folder().resolve("job")).last());
        Program taken =
                run(Stream.concat(Stream.of(line), Stream.of("--accept")).toArray(String[]::new));
        assertEquals(0, taken.status(), taken.err());
        String export = Program.here("export", "--job", scratch.path("job")).out();
        // 150 uA are 0.155 DDM (ICAO Annex 10 Vol I), here in the 90, which counts negative.
        // The apostrophe keeps a spreadsheet from running what was typed as a formula.
        assertTrue(export.contains("trial/second,,sweep,2,near,-0.155,DDM,'-150"), export);
        Program undone = Program.here("undo", "--job", scratch.path("job"));
        assertTrue(undone.out().contains("sweep, row 2, near = -150"), undone.out());
        String history = Program.here("history", "--job", scratch.path("job")).out();
        assertTrue(history.contains("undid line 1"), history);
        assertTrue(history.contains("(undone)"), history);
    }

    @Test
    void showsWithoutKeepingWhereAnotherProcessWrites() {
        run("run", "trial/first", "--set", "length=5");
        try (Job held = Job.open(scratch.folder().resolve("job"))) {
            long before = held.last();
            Program second = run("run", "trial/first");
            assertEquals(0, second.status());
            assertTrue(second.err().contains("is being written by process"), second.err());
            assertTrue(second.err().contains("shown and not kept"), second.err());
            Program refused = run("run", "trial/first", "--set", "length=6");
            assertEquals(1, refused.status());
            assertTrue(refused.err().contains("nothing is kept"), refused.err());
            assertEquals(before, Job.readOnly(held.folder()).last());
        }
    }
}
