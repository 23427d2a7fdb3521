package halfwidth.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Another program in the job folder while one writes: nothing acknowledged is lost to either. */
class SecondWriterTest {
    @TempDir Path folder;
    private Path journal;

    @BeforeEach
    void create() {
        journal = folder.resolve("journal.csv");
        Job.create(folder, Map.of()).close();
    }

    private static void enter(Job job, String length) {
        job.enter(JobPages.WIDTH, "", List.of(Change.to(Place.input("length"), length)));
    }

    private List<String> lengths() {
        return Job.readOnly(folder).lines().stream()
                .map(line -> ((Fact.Value) line.fact()).typed())
                .toList();
    }

    private static void assertRefusesToEnter(Job job) {
        String refusal = assertThrows(JobRefused.class, () -> enter(job, "666")).getMessage();
        assertTrue(refusal.contains("NOT kept"), refusal);
        assertTrue(refusal.contains("open the job again"), refusal);
    }

    @Test
    void isRefusedThoughTheLockOfTheFolderWasDeleted() throws IOException {
        try (Job first = Job.open(folder)) {
            enter(first, "300");
            Files.delete(folder.resolve("job.lock"));
            assertThrows(JobHeld.class, () -> Job.open(folder));
            enter(first, "310");
        }
        Job.open(folder).close();
        assertEquals(List.of("300", "310"), lengths());
    }

    @Test
    void overwritesNothingWhereBothBeganWithoutAJournal() throws IOException {
        try (Job first = Job.open(folder)) {
            Files.delete(folder.resolve("job.lock"));
            try (Job second = Job.open(folder)) {
                enter(second, "300");
                assertThrows(JobHeld.class, () -> enter(first, "666"));
            }
            assertRefusesToEnter(first);
        }
        assertEquals(List.of("300"), lengths());
        assertEquals(List.of(), Job.readOnly(folder).warnings());
    }

    @Test
    void stopsTheFirstWhereItAddedSomething() throws IOException {
        try (Job first = Job.open(folder)) {
            enter(first, "300");
            Files.writeString(journal, "of another program\n", StandardOpenOption.APPEND);
            assertRefusesToEnter(first);
        }
        assertTrue(Files.readString(journal).endsWith("of another program\n"));
    }

    @Test
    void stopsTheFirstWhereItChangedTheLastLine() throws IOException {
        try (Job first = Job.open(folder)) {
            enter(first, "300");
            byte[] bytes = Files.readAllBytes(journal);
            bytes[bytes.length - 2] ^= 1;
            Files.write(journal, bytes, StandardOpenOption.WRITE);
            assertRefusesToEnter(first);
        }
    }

    /** As programs do that bring folders to the same state: what is open then has no name. */
    @Test
    void stopsTheFirstWhereItPutACopyInTheJournalsPlace() throws IOException {
        try (Job first = Job.open(folder)) {
            enter(first, "300");
            Path copy = Files.copy(journal, folder.resolve("copy.csv"));
            Files.move(copy, journal, StandardCopyOption.REPLACE_EXISTING);
            assertRefusesToEnter(first);
        }
        assertEquals(List.of("300"), lengths());
    }

    @Test
    void stopsTheFirstWhereItDeletedTheJournal() throws IOException {
        try (Job first = Job.open(folder)) {
            enter(first, "300");
            Files.delete(journal);
            assertRefusesToEnter(first);
            assertEquals(1, first.last(), "and what it read is still shown");
            assertThrows(JobRefused.class, () -> first.undo(Optional.empty()));
        }
    }
}
