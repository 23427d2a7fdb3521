package halfwidth.command;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What an export writes over, and what it does not. */
class ExportTest {
    @TempDir Path temporary;
    private Scratch scratch;

    @BeforeEach
    void write() {
        scratch = Scratch.within(temporary);
        for (String job : List.of("job", "other")) {
            scratch.file(job + "/job.csv", "name,value", "Station,North Field");
            scratch.file(job + "/journal.csv", "mine");
            scratch.file(job + "/journal-end.csv", "mine");
            scratch.file(job + "/records/a.html", "mine");
            scratch.file(job + "/pages/trial/a.md", "mine");
        }
    }

    private Program export(String out, String... more) {
        String[] arguments = {"export", "--job", scratch.path("job"), "--out", scratch.path(out)};
        return Program.here(
                java.util.stream.Stream.of(arguments, more)
                        .flatMap(java.util.Arrays::stream)
                        .toArray(String[]::new));
    }

    @Test
    void writesOverNoFileOfAnyJobEvenIfForced() {
        for (String job : List.of("job", "other")) {
            for (String file :
                    List.of(
                            "journal.csv",
                            "journal-end.csv",
                            "records/a.html",
                            "pages/trial/a.md")) {
                Program refused = export(job + "/" + file, "--force");
                assertEquals(1, refused.status(), file);
                Expect.complained(refused, "a job's own files");
                assertEquals("mine\n", scratch.text(job + "/" + file));
            }
            assertEquals(1, export(job + "/job.csv", "--force").status());
            assertEquals(1, export(job + "/job.lock").status());
            assertEquals(1, export(job + "/records/new.csv").status());
            assertEquals(1, export("job/../" + job + "/records/../journal.csv").status());
        }
    }

    @Test
    void writesOverNoFileOfAJobThroughALink() throws IOException {
        Path link = scratch.folder().resolve("link.csv");
        Files.createSymbolicLink(link, scratch.folder().resolve("job/journal.csv"));
        assertEquals(1, export("link.csv", "--force").status());
        assertEquals("mine\n", scratch.text("job/journal.csv"));
    }

    @Test
    void writesOverAnotherFileOnlyIfForced() {
        assertEquals(0, export("values.csv").status());
        scratch.file("values.csv", "mine");
        Program refused = export("values.csv");
        assertEquals(1, refused.status());
        Expect.complained(refused, "is there already", "--force");
        assertEquals("mine\n", scratch.text("values.csv"));
        assertEquals(0, export("values.csv", "--force").status());
        assertEquals(
                "page,visit,table,row,column,value,unit,typed,reason,time,who\r\n",
                scratch.text("values.csv"));
        assertEquals(0, export("job/values.csv").status(), "in the job's folder, but not its own");
    }
}
