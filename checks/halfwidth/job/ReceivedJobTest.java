package halfwidth.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A job folder from elsewhere, with links or other files under the names of its own. */
class ReceivedJobTest {
    private static final String MINE = "what somebody keeps elsewhere\n".repeat(40);

    @TempDir Path temporary;
    private Path folder;
    private Path victim;

    @BeforeEach
    void write() throws IOException {
        folder = temporary.resolve("job");
        try (Job job = Job.create(folder, Map.of())) {
            enter(job);
        }
        victim = Files.writeString(temporary.resolve("victim.txt"), MINE);
    }

    private static void enter(Job job) {
        job.enter(JobPages.WIDTH, "", List.of(Change.to(Place.input("length"), "300")));
    }

    /** Does all that a session does, as far as it is let. */
    private void work() {
        try (Job job = Job.open(folder)) {
            job.state(new Fact.Noted(new Visit("", ""), "at work"));
        }
    }

    private void assertVictimIsWhole() throws IOException {
        assertEquals(MINE, Files.readString(victim));
    }

    @ParameterizedTest
    @ValueSource(strings = {"job.lock", "journal.csv", "job.csv"})
    void isNotWrittenThroughALink(String name) throws IOException {
        Files.delete(folder.resolve(name));
        Files.createSymbolicLink(folder.resolve(name), victim);
        String refusal = assertThrows(JobRefused.class, this::work).getMessage();
        assertTrue(refusal.contains(name) && refusal.contains("is a link"), refusal);
        assertVictimIsWhole();
    }

    @Test
    void makesNothingBehindALinkThatLeadsNowhere() throws IOException {
        Path nowhere = temporary.resolve("nowhere.txt");
        for (String name : List.of("job.lock", "journal.csv", "journal-end.csv")) {
            Files.deleteIfExists(folder.resolve(name));
            Files.createSymbolicLink(folder.resolve(name), nowhere);
        }
        assertThrows(JobRefused.class, this::work);
        assertTrue(Files.notExists(nowhere));
    }

    /** Work goes on, and it is said what is not watched. */
    @Test
    void notesNoEndThroughALink() throws IOException {
        Files.delete(folder.resolve("journal-end.csv"));
        Files.createSymbolicLink(folder.resolve("journal-end.csv"), victim);
        work();
        assertVictimIsWhole();
        try (Job job = Job.open(folder)) {
            String said = job.warnings().toString();
            assertTrue(said.contains("journal-end.csv is a link"), said);
        }
    }

    /** Another name of the same file is no link that could be told from a file. */
    @ParameterizedTest
    @ValueSource(strings = {"job.lock", "journal.csv"})
    void isNotWrittenIntoAFileThatIsNotOurs(String name) throws IOException {
        Files.delete(folder.resolve(name));
        Files.createLink(folder.resolve(name), victim);
        String refusal = assertThrows(JobRefused.class, this::work).getMessage();
        assertTrue(refusal.contains("does not begin as this program's"), refusal);
        assertVictimIsWhole();
    }

    @Test
    void notesNoEndInAFileThatIsNotOurs() throws IOException {
        Files.delete(folder.resolve("journal-end.csv"));
        Files.createLink(folder.resolve("journal-end.csv"), victim);
        work();
        assertVictimIsWhole();
    }

    @Test
    void canStillBeReadWhereItsJournalHasAnotherHeading() throws IOException {
        Path journal = folder.resolve("journal.csv");
        String text = Files.readString(journal);
        Path other = folder.resolve("other");
        Files.writeString(other, text.replaceFirst("number", "nummer"));
        Files.move(other, journal, StandardCopyOption.REPLACE_EXISTING);
        Job job = Job.readOnly(folder);
        assertEquals(1, job.last());
        assertTrue(job.warnings().get(0).contains("not the heading of a journal"));
        assertThrows(JobRefused.class, this::work);
    }
}
