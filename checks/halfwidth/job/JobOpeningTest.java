package halfwidth.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.job.DiskCalls.Kind;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What others left, or do, while a job is opened, and what it does when a fault closed it. */
class JobOpeningTest {
    private static final Visit JOB = new Visit("", "");

    @TempDir Path temporary;
    private Path folder;
    private Path journal;

    @BeforeEach
    void create() {
        folder = temporary.resolve("job");
        journal = folder.resolve("journal.csv");
        try (Job job = Job.create(folder, Map.of())) {
            job.state(new Fact.Noted(JOB, "first"));
        }
    }

    /**
     * A process that ends before it forces what it wrote leaves whole lines that may yet be gone.
     */
    @Test
    void showsNothingThatIsNotForced() throws IOException {
        byte[] second = Files.readAllBytes(journal);
        Files.delete(journal);
        PowerLog log = new PowerLog(() -> new JobScenario.State(true, List.of()));
        Path watched = WatchedDisk.path(folder, log);
        Files.write(watched.resolve("journal.csv"), second);
        assertTrue(isOpen(log), "written and not forced");
        try (Job job = Job.open(watched)) {
            assertEquals(1, job.last());
            assertEquals(
                    List.of(),
                    log.unforced(log.events().size()).stream()
                            .filter(change -> change instanceof PowerLog.Entry)
                            .toList());
            assertTrue(!isOpen(log), "it is shown, and on disk");
        }
    }

    private static boolean isOpen(PowerLog log) {
        return log.unforced(log.events().size()).stream()
                .filter(PowerLog.Write.class::isInstance)
                .map(write -> ((PowerLog.Write) write).bytes())
                .anyMatch(bytes -> new String(bytes, StandardCharsets.UTF_8).contains("first"));
    }

    @Test
    void refusesAJournalThatGetsShorterWhileItIsOpened() {
        List<Path> opened = new ArrayList<>();
        DiskCalls shorter =
                (kind, path) -> {
                    if (kind == Kind.OPEN && path.equals(journal)) {
                        opened.add(path);
                        if (opened.size() == 2) {
                            Files.writeString(journal, "");
                        }
                    }
                    return DiskCalls.Reach.ALL;
                };
        Path watched = WatchedDisk.path(folder, shorter);
        String refusal = assertThrows(JobRefused.class, () -> Job.open(watched)).getMessage();
        assertTrue(refusal.contains("made it shorter meanwhile"), refusal);
    }

    @Test
    void takesNoJournalForNoneThatCannotBeLookedAt() {
        DiskCalls blind =
                (kind, path) -> {
                    if (path.equals(journal) && kind == Kind.ATTRIBUTES) {
                        throw new IOException("Input/output error");
                    }
                    return DiskCalls.Reach.ALL;
                };
        assertEquals(1, Job.readOnly(WatchedDisk.path(folder, blind)).last());
    }

    /** As where the memory ends between the journal and who writes in it. */
    @Test
    void givesNoNumberTwice() {
        JournalText text = Journal.read(journal);
        Line line = new Line(2, 0, OffsetDateTime.now(), "A. B", new Fact.Noted(JOB, "second"));
        try (Journal open = Journal.open(journal, text, "", new ArrayList<>())) {
            open.append(List.of(line));
            String refusal =
                    assertThrows(JobRefused.class, () -> open.append(List.of(line))).getMessage();
            assertTrue(refusal.contains("open the job again"), refusal);
        }
        assertEquals(2, Job.readOnly(folder).lines().size());
    }

    /** An interrupt closes the files of a thread that is at them. */
    @Test
    void saysSoWhereItsThreadIsInterrupted() {
        try (Job job = Job.open(folder)) {
            Fact note = new Fact.Noted(JOB, "second");
            Thread.currentThread().interrupt();
            String refusal = assertThrows(JobRefused.class, () -> job.state(note)).getMessage();
            assertTrue(Thread.interrupted());
            assertTrue(refusal.contains("NOT kept") && !refusal.contains("null"), refusal);
            String again = assertThrows(JobRefused.class, () -> job.state(note)).getMessage();
            assertTrue(again.contains("open the job again"), again);
        }
        try (Job job = Job.open(folder)) {
            assertEquals(1, job.last());
            assertEquals(List.of(), job.warnings());
        }
    }
}
