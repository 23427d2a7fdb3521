package halfwidth.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Pages that break a limit, fail, never end, contradict their checks or cannot be read. */
@Tag("long")
class PageFaultsTest {
    private static final String NO_STEP = "";
    private static final String RIGHT = "twice == 10; // two times five, by hand";

    @TempDir Path temporary;

    private static Program run(Scratch scratch, String command, String... arguments) {
        String[] all = new String[arguments.length + 3];
        all[0] = command;
        System.arraycopy(arguments, 0, all, 1, arguments.length);
        all[all.length - 2] = "--notebooks";
        all[all.length - 1] = scratch.path("notebooks");
        return Program.run(all);
    }

    @Test
    void endsWithThreeWhereALimitIsNotMet() {
        Scratch scratch = Scratch.within(temporary);
        scratch.page("trial", NO_STEP, RIGHT);
        Program program = run(scratch, "run", "trial", "--set", "length=6.5");
        Expect.status(3, program);
        Expect.said(program, "at most 12", "not met");
        assertEquals("", program.err());
    }

    @Test
    void endsWithOneWhereAStepFailsAndSaysWhereWhatAndWhy() {
        Scratch scratch = Scratch.within(temporary);
        Path page = scratch.page("trial", "int third = new int[] {1, 2}[2]; // 1", RIGHT);
        Program program = run(scratch, "run", "trial");
        Expect.status(1, program);
        Expect.complained(
                program,
                page + ":17: The step asks for a row or an item that is not there.",
                "int third = new int[] {1, 2}[2];",
                "Index 2 out of bounds for length 2");
        Expect.said(program, "10.0", "met");
    }

    @Test
    void writesTheSheetInWordsWhereTheWorkerThatHoldsThePlotHadToBeEnded() {
        Scratch scratch = Scratch.within(temporary);
        String greedy =
                "{ List<long[]> all = new ArrayList<>(); while (true) all.add(new long[1 << 24]); }"
                        + " ";
        String plot =
                "Plot sweep = Plot.of(\"Sweep\").points(\"Reading\", new double[] {1}, new double[]"
                        + " {2});";
        scratch.page("trial", greedy + plot, RIGHT);
        Program program =
                Program.here(
                        "run",
                        "trial",
                        "--out",
                        scratch.path("out"),
                        "--notebooks",
                        scratch.path("notebooks"));
        Expect.status(1, program);
        Expect.complained(program, "more memory than the page may use");
        assertTrue(scratch.text("out/page.html").contains("Sweep"), scratch.text("out/page.html"));
    }

    @Test
    void stopsAStepThatNeverEndsAndStillGivesTheOthers() {
        Scratch scratch = Scratch.within(temporary);
        Path page = scratch.page("trial", "while (length > 0) {}", RIGHT);
        Program program = run(scratch, "run", "trial", "--seconds", "2");
        Expect.status(1, program);
        Expect.complained(
                program,
                page + ":17: The page ran longer than its limit of 2 s",
                "while (length > 0) {}");
        Expect.said(program, "10.0", "met");
    }

    @Test
    void endsWithOneWhereAPageCannotBeRead() {
        Scratch scratch = Scratch.within(temporary);
        Path page = scratch.file("notebooks/bad.md", "# Bad", "", "```csv inputs", "name,unit");
        Program program = Program.here("run", "bad", "--notebooks", scratch.path("notebooks"));
        Expect.status(1, program);
        Expect.complained(program, page + ":3: ");
        Program all = Program.here("check", "--notebooks", scratch.path("notebooks"));
        Expect.status(1, all);
        Expect.complained(all, page + ":3: ");
    }

    @Test
    void checksEveryShippedPage() {
        Program program = Program.run("check");
        Expect.status(0, program);
        Expect.said(program, "transmit/feed-trim", "all hold");
        assertEquals("", program.err());
    }

    @Test
    void endsWithOneWhereACheckDoesNotHoldAndNamesItsLine() {
        Scratch scratch = Scratch.within(temporary);
        scratch.page("stage/sound", NO_STEP, RIGHT);
        Path page = scratch.page("stage/unsound", NO_STEP, "twice == 11; // a slip, for this test");
        Program program = run(scratch, "check");
        Expect.status(1, program);
        Expect.complained(program, page + ":21: The check does not hold", "twice == 11");
        Expect.said(program, "stage/sound", "2 pages checked", "1 at fault");
        assertEquals(1, program.out().split(" does not hold ", -1).length - 1, program.out());
    }
}
