package halfwidth.command;

import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.job.Change;
import halfwidth.job.Job;
import halfwidth.job.Place;
import halfwidth.page.Pages;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One page that cannot be read is no reason to say nothing of the others. */
class MalformedPageTest {
    @TempDir Path temporary;
    private Scratch scratch;

    @BeforeEach
    void write() {
        scratch = Scratch.within(temporary);
        scratch.page("stage/first", "double same = length; // mm", "twice == 10; // by hand");
        scratch.page("stage/sound", "double same = length; // mm", "twice == 10; // by hand");
    }

    private Path malformed(String name) {
        return scratch.file(name, "# Bad", "", "```csv inputs", "name,unit");
    }

    @Test
    void listNamesItWithItsProblemsAndListsTheOthersWithTheirVisits() {
        try (Job job = Job.create(scratch.folder().resolve("job"), Map.of())) {
            Pages pages = new Pages(scratch.folder().resolve("notebooks"));
            List<Change> length = List.of(Change.to(Place.input("length"), "5"));
            job.enter(pages.find("stage/first"), "", length);
            job.enter(pages.find("stage/sound"), "pair 3", length);
        }
        Path page = malformed("job/pages/stage/first.md");
        Program list =
                Program.here(
                        "list",
                        "--job",
                        scratch.path("job"),
                        "--notebooks",
                        scratch.path("notebooks"));
        Expect.status(1, list);
        Expect.complained(list, page + ":3: ");
        Expect.said(list, "stage/first", "malformed", "refused", "stage/sound", "pair 3: not run");
    }

    @Test
    void checkNamesItWithItsProblemsAndChecksTheOthers() {
        Path page = malformed("notebooks/stage/first.md");
        Program check = Program.here("check", "--notebooks", scratch.path("notebooks"));
        Expect.status(1, check);
        Expect.complained(check, page + ":3: ");
        Expect.said(check, "stage/first", "malformed", "stage/sound", "2 pages checked");
        assertTrue(
                check.out().matches("(?s).*stage/sound +2 steps +1 checks.* holds .*"),
                check.out());
    }
}
