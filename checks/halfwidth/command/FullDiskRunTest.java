package halfwidth.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.job.Fact;
import halfwidth.job.Job;
import halfwidth.job.Visit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A disk that takes the values of a run and not its results. */
class FullDiskRunTest {
    /** The shell counts in blocks of 512 bytes. */
    private static final int BLOCKS = 32;

    /** A value's line takes some 150 bytes, the results some 300. */
    private static final int ROOM = 250;

    @TempDir Path temporary;

    @Test
    void showsTheSheetAndSaysWhatIsNotKept() throws IOException, InterruptedException {
        Scratch scratch = Scratch.within(temporary);
        scratch.page("trial/first", "", "assert twice == 10;");
        Path folder = scratch.folder().resolve("job");
        Path journal = folder.resolve("journal.csv");
        Visit all = new Visit("", "");
        try (Job job = Job.create(folder, Map.of())) {
            job.state(new Fact.Noted(all, "x"));
            long line = Files.size(journal);
            job.state(new Fact.Noted(all, "x"));
            long more = Files.size(journal) - line;
            int rest = (int) (BLOCKS * 512 - ROOM - Files.size(journal) - more + 1);
            job.state(new Fact.Noted(all, "x".repeat(rest)));
            assertEquals(BLOCKS * 512 - ROOM, Files.size(journal));
        }
        Program limited =
                Program.limited(
                        BLOCKS,
                        "run",
                        "trial/first",
                        "--set",
                        "length=7",
                        "--notebooks",
                        scratch.path("notebooks"),
                        "--job",
                        folder.toString());
        Expect.status(1, limited);
        Expect.said(limited, "Twice the length");
        Expect.complained(limited, "The results of this run are not kept");
        assertTrue(Job.readOnly(folder).visits().contains(new Visit("trial/first", "")));
    }
}
