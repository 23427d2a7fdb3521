package halfwidth.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A job's folder looked through as a whole, and packed. */
@Tag("long")
class JobFolderChecksTest {
    @TempDir Path temporary;
    private Scratch scratch;

    @BeforeEach
    void write() {
        scratch = Scratch.within(temporary);
        scratch.file("job/job.csv", "name,value", "Station,North Field");
        scratch.page("trial/first", "double same = length; // mm", "assert twice == 10 : \"x\";");
        scratch.page("trial/unused", "double same = length; // mm", "assert twice == 11 : \"x\";");
        run("run", "trial/first", "--set", "length=5", "--record");
    }

    private Program run(String... arguments) {
        Stream<String> rest =
                Stream.of("--job", scratch.path("job"), "--notebooks", scratch.path("notebooks"));
        return Program.here(Stream.concat(Stream.of(arguments), rest).toArray(String[]::new));
    }

    @Test
    void looksAtJournalRecordsAndThePagesThatAreUsed() {
        Program check = run("check");

        assertEquals(0, check.status(), check::toString);
        assertTrue(check.out().contains("sound"), check.out());
        assertTrue(check.out().contains("results equal"), check.out());
        assertTrue(check.out().contains("1 page checked"), check.out());
    }

    @Test
    void namesARecordThatIsGoneAndOneThatWasChanged() throws IOException {
        Path record = scratch.records().get(0);
        String text = Files.readString(record);
        Files.writeString(record, text.replace("North Field", "South Field"));
        Program changed = run("check");
        assertEquals(1, changed.status(), changed::toString);
        assertTrue(changed.out().contains("CHANGED"), changed.out());

        Files.delete(record);
        Program gone = run("check");
        assertEquals(1, gone.status(), gone::toString);
        assertTrue(gone.err().contains("is in the journal and not in the folder"), gone.err());
    }

    @Test
    void namesAJournalThatWasAltered() throws IOException {
        Path journal = scratch.folder().resolve("job/journal.csv");
        Files.writeString(journal, Files.readString(journal).replaceFirst(",5,", ",6,"));

        Program check = run("check");

        assertEquals(1, check.status(), check::toString);
        assertTrue(check.out().contains("NOT SOUND"), check.out());
    }

    @Test
    void isPackedOutsideOfItselfAndOverNothingUnasked() {
        String zip = scratch.path("copy.zip");
        Program packed = Program.here("backup", "--job", scratch.path("job"), "--out", zip);
        assertEquals(0, packed.status(), packed::toString);
        assertTrue(packed.out().contains("lines of the journal"), packed.out());

        Program again = Program.here("backup", "--job", scratch.path("job"), "--out", zip);
        assertEquals(1, again.status(), again::toString);
        assertTrue(again.err().contains("--force"), again.err());

        String inside = scratch.path("job/records/copy.zip");
        Program within = Program.here("backup", "--job", scratch.path("job"), "--out", inside);
        assertEquals(1, within.status(), within::toString);
        assertFalse(Files.exists(Path.of(inside)));
    }
}
