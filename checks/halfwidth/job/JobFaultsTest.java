package halfwidth.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A disk that takes no more, and a folder that cannot be written. */
class JobFaultsTest {
    @TempDir Path folder;

    /**
     * Enters blocks until one is refused, then one more after room was made, and prints both: run
     * in a process of its own, whose files the shell limits in size.
     */
    static final class UntilRefused {
        private UntilRefused() {}

        public static void main(String[] arguments) {
            long number = 1;
            try (Job job = Job.open(Path.of(arguments[0]))) {
                while (true) {
                    job.enter(StreamingWriter.PAGE, "", StreamingWriter.block(number));
                    number++;
                }
            } catch (JobRefused refusal) {
                System.out.println(number - 1);
                System.out.println(refusal.getMessage());
            }
        }
    }

    /** A limit on the size of files refuses a write in its middle, as a full disk does. */
    @Test
    void saysWhatIsNotKeptWhereTheDiskTakesNoMore() throws Exception {
        Job.create(folder, Map.of()).close();
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        Process writer =
                new ProcessBuilder(
                                "sh",
                                "-c",
                                "ulimit -f 16; exec \"$0\" \"$@\"",
                                java,
                                "-XX:-UsePerfData",
                                "-cp",
                                System.getProperty("java.class.path"),
                                "halfwidth.job.JobFaultsTest$UntilRefused",
                                folder.toString())
                        .redirectError(ProcessBuilder.Redirect.INHERIT)
                        .start();
        byte[] printed = writer.getInputStream().readAllBytes();
        List<String> said = new String(printed, StandardCharsets.UTF_8).lines().toList();
        assertEquals(0, writer.waitFor());
        long kept = Long.parseLong(said.get(0));
        assertTrue(kept > 1, said.toString());
        assertTrue(said.get(1).contains("NOT kept"), said.get(1));
        assertTrue(said.get(1).contains("what was kept before is whole"), said.get(1));
        try (Job job = Job.open(folder)) {
            assertEquals(List.of(), job.warnings(), "nothing of the refused block is in the file");
            assertEquals(kept * StreamingWriter.ROWS, job.last());
            job.enter(StreamingWriter.PAGE, "", StreamingWriter.block(kept + 1));
        }
    }

    /**
     * A folder under a name that is taken by a file: like a read-only one it can be read and takes
     * no lock, and unlike that one it hinders the superuser too.
     */
    @Test
    void readsWhereItCannotWriteAndSaysSo() throws IOException {
        try (Job job = Job.create(folder, Map.of("Station", "North Field"))) {
            job.enter(StreamingWriter.PAGE, "", StreamingWriter.block(1));
        }
        Files.delete(folder.resolve("job.lock"));
        Files.createDirectory(folder.resolve("job.lock"));
        String refusal =
                org.junit.jupiter.api.Assertions.assertThrows(
                                JobRefused.class, () -> Job.open(folder))
                        .getMessage();
        assertTrue(refusal.contains("cannot be written"), refusal);
        assertTrue(refusal.contains("nothing is kept"), refusal);
        assertEquals(StreamingWriter.ROWS, Job.readOnly(folder).last());
    }

    @Test
    void saysThatResultsAreNotKeptAndValuesAre() throws IOException {
        try (Job job = Job.create(folder, Map.of())) {
            job.enter(StreamingWriter.PAGE, "", StreamingWriter.block(1));
            Files.writeString(
                    folder.resolve("journal.csv"),
                    "of another program",
                    java.nio.file.StandardOpenOption.APPEND);
            String refusal =
                    org.junit.jupiter.api.Assertions.assertThrows(
                                    JobRefused.class,
                                    () ->
                                            job.publish(
                                                    job.entered(StreamingWriter.PAGE, ""),
                                                    "",
                                                    Outcome.of(Outcome.Word.RAN),
                                                    List.of()))
                            .getMessage();
            assertTrue(refusal.contains("The results of this run are not kept"), refusal);
            assertTrue(refusal.contains("the values entered are"), refusal);
        }
    }
}
