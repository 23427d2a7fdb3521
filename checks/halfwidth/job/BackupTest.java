package halfwidth.job;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A job packed into one file, and unpacked again. */
class BackupTest {
    @TempDir Path temporary;
    private Path job;
    private Path zip;

    @BeforeEach
    void name() {
        job = temporary.resolve("job");
        zip = temporary.resolve("job.zip");
    }

    private Path unpacked() throws IOException {
        Path folder = Files.createDirectories(temporary.resolve("unpacked"));
        try (InputStream bytes = Files.newInputStream(zip);
                ZipInputStream in = new ZipInputStream(bytes)) {
            for (ZipEntry one = in.getNextEntry(); one != null; one = in.getNextEntry()) {
                Path file = folder.resolve(one.getName());
                Files.createDirectories(file.getParent());
                Files.write(file, in.readAllBytes());
            }
        }
        return folder;
    }

    @Test
    void holdsAllThatAJobKeepsWhileAnotherWritesInIt() throws IOException {
        try (Job writing = Job.create(job, Map.of("Station", "North Field"))) {
            writing.enter(StreamingWriter.PAGE, "", StreamingWriter.block(1));
            Files.createDirectories(job.resolve("pages/trial"));
            Files.writeString(job.resolve("pages/trial/own.md"), "# Own");
            Files.createDirectories(job.resolve("records"));
            Files.write(job.resolve("records/one.html"), new byte[] {1, 2, 3});

            Backup backup = Backup.of(job, zip);

            assertEquals(writing.lines().size(), backup.lines());
            assertEquals(4, backup.files(), "heading, journal, page, record");
            writing.enter(StreamingWriter.PAGE, "", StreamingWriter.block(2));
        }
        Path copy = unpacked();
        Job read = Job.readOnly(copy);
        assertEquals(List.of(), read.warnings());
        assertEquals(StreamingWriter.ROWS, read.last());
        assertEquals("North Field", read.heading().get("Station"));
        assertEquals("# Own", Files.readString(copy.resolve("pages/trial/own.md")));
        assertArrayEquals(
                new byte[] {1, 2, 3}, Files.readAllBytes(copy.resolve("records/one.html")));
        try (Job again = Job.open(copy)) {
            again.enter(StreamingWriter.PAGE, "", StreamingWriter.block(2));
        }
        assertEquals(2 * StreamingWriter.ROWS, Job.readOnly(copy).last());
    }

    @Test
    void leavesOutWhatIsNotYetWhole() throws IOException {
        try (Job writing = Job.create(job, Map.of())) {
            writing.enter(StreamingWriter.PAGE, "", StreamingWriter.block(1));
        }
        Path journal = job.resolve("journal.csv");
        byte[] torn = "3,2026-06-1".getBytes(java.nio.charset.StandardCharsets.UTF_8);
        Files.write(journal, torn, java.nio.file.StandardOpenOption.APPEND);

        Backup.of(job, zip);

        assertEquals(List.of(), Job.readOnly(unpacked()).warnings());
        assertEquals(StreamingWriter.ROWS, Job.readOnly(unpacked()).last());
    }

    @Test
    void isNotMadeOfAJournalThatIsNotSound() throws IOException {
        try (Job writing = Job.create(job, Map.of())) {
            writing.enter(StreamingWriter.PAGE, "", StreamingWriter.block(1));
            writing.enter(StreamingWriter.PAGE, "", StreamingWriter.block(2));
        }
        Path journal = job.resolve("journal.csv");
        Files.writeString(journal, Files.readString(journal).replaceFirst("\n1,", "\n9,"));

        JobRefused refused = assertThrows(JobRefused.class, () -> Backup.of(job, zip));

        assertTrue(refused.getMessage().contains("not sound"), refused.getMessage());
        assertFalse(Files.exists(zip));
    }

    @Test
    void takesNoLinkAlong() throws IOException {
        Job.create(job, Map.of()).close();
        Path secret = Files.writeString(temporary.resolve("secret"), "mine");
        Files.createDirectories(job.resolve("records"));
        Files.createSymbolicLink(job.resolve("records/link.html"), secret);

        Backup.of(job, zip);

        assertFalse(Files.exists(unpacked().resolve("records/link.html")));
    }
}
