package halfwidth.command;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the program will not take, and what it says then; it shows no results beside that. */
class RefusedEntriesTest {
    private static final String PAGE = "transmit/feed-trim";
    private static final String HEADER = "SBO cut [in],CSB cut [in],offset 1 [°],offset 2 [°]";

    @TempDir Path temporary;

    private static void refuses(Program program, String... words) {
        Expect.status(CommandLineProgram.FAILED, program);
        Expect.complained(program, words);
        assertEquals("", program.out());
    }

    @Test
    void endsWithOneWhereAnEntryIsRefused() {
        Program program = Program.run("run", PAGE, "--set", "smallestCut=40 Hz");
        refuses(program, "Smallest cut that your tool makes (smallestCut)", "Hz");
        assertEquals(1, program.err().lines().count(), program::toString);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "resolution=0.5 m | (resolution) | °",
                "frequency=110,300 | (frequency) | 110,300",
                "frequncy=110.3 MHz | no field frequncy | near it are frequency",
                "velocityFactor=0.3 | (velocityFactor) | 0.5",
                "target=-1 | (target) | 0",
                "smallestCut=40 mm | (smallestCut) | 1 in",
                "frequency= | (frequency) | ",
            })
    void namesTheFieldAndWhatItWouldTake(String set, String field, String constraint) {
        refuses(
                Program.here("run", PAGE, "--set", set),
                field,
                constraint == null ? "" : constraint);
    }

    @Test
    void tellsAllThatIsWrongAtOnce() {
        Program program =
                Program.here(
                        "run",
                        PAGE,
                        "--set",
                        "frequency=110.30",
                        "--set",
                        "gain=2",
                        "--set",
                        "target=0.5",
                        "--set",
                        "target=0.6",
                        "--readings",
                        "phasing=not-there.csv");
        refuses(
                program,
                "(frequency)",
                "type 110.30 MHz",
                "no field gain",
                "field target is set twice",
                "not-there.csv: there is no such file");
        assertEquals(4, program.err().lines().count(), program::toString);
    }

    @Test
    void refusesAnUnknownArrayOnceAndAtTheInput() {
        Program program = Program.here("run", "array/prediction", "--set", "arrayFile=nine-unevn");
        refuses(program, "(arrayFile): array \"nine-unevn\" must be one of the shipped");
        assertEquals(1, program.err().lines().count(), program::toString);
    }

    @Test
    void namesTheFileThatIsNotThere() {
        Path missing = Scratch.within(temporary).folder().resolve("not there.csv");
        refuses(Program.here("run", PAGE, "--readings", "phasing=" + missing), missing.toString());
    }

    @Test
    void namesTheLineOfAFileThatItCannotTake() {
        Scratch scratch = Scratch.within(temporary);
        Path header = scratch.file("header.csv", "SBO cut [in],CSB,offset 1,offset 2", "0,0,1,2");
        refuses(
                Program.here("run", PAGE, "--readings", "phasing=" + header),
                header + ":1: column CSB is unknown; near it are CSB cut",
                header + ":1: column CSB cut is missing");
        Path cell = scratch.file("cell.csv", HEADER, "0,0,1,2", "0,1 in,1,two");
        refuses(
                Program.here("run", PAGE, "--readings", "phasing=" + cell),
                cell + ":3, offset 2: ",
                "two");
        refuses(
                Program.here("run", PAGE, "--readings", "phasings=" + cell),
                "no table of readings phasings",
                "phasing");
    }

    @Test
    void namesThePagesNearToOneThatIsNotThere() {
        refuses(Program.here("run", "transmit/feed-trin"), "near it are transmit/feed-trim");
    }

    @Test
    void takesNoFolderForAJobThatDoesNotSayWhichStationItIs() {
        Scratch scratch = Scratch.within(temporary);
        refuses(
                Program.here("run", PAGE, "--job", scratch.folder().toString()),
                scratch.path("job.csv") + " is not there",
                "name,value");
    }

    @Test
    void keepsNothingOfARefusedCommandInTheJob() {
        Scratch scratch = Scratch.within(temporary);
        scratch.file("job.csv", "name,value", "Station,Demo (invented)");
        String job = scratch.folder().toString();
        refuses(
                Program.here("run", PAGE, "--job", job, "--set", "target=1", "--set", "gain=2"),
                "gain");
        assertEquals(false, Files.exists(scratch.folder().resolve("journal.csv")));
    }

    @ParameterizedTest
    @CsvSource({
        "--seconds=0, time limit 0.0 s must be above 0 s",
        "--megabytes=1, memory limit 1 MB must be at least 64 MB",
        "--notebooks=nowhere-at-all, There is no folder nowhere-at-all"
    })
    void namesTheLimitThatCannotBe(String option, String words) {
        refuses(Program.here("run", PAGE, option), words);
    }

    @Test
    void endsWithTwoWhereTheCommandIsNotUnderstood() {
        Expect.status(2, Program.run("measure"));
        for (String[] command :
                new String[][] {
                    {},
                    {"run"},
                    {"run", PAGE, "--set", "target"},
                    {"run", PAGE, "--seconds", "soon"},
                    {"list", "everything"}
                }) {
            Program program = Program.here(command);
            Expect.status(2, program);
            Expect.complained(program, "See halfwidth", " --help.");
            assertEquals(2, program.err().lines().count(), program::toString);
        }
        Expect.complained(Program.here(), "Name a command: ", "list", "check");
        Expect.complained(Program.here("run", PAGE, "--seconds", "soon"), "'soon' is no number");
        Expect.complained(Program.here("run", PAGE, "--set", "target"), "as in target=0.5");
        Program misspelt = Program.here("run", PAGE, "--sett", "target=1");
        Expect.status(2, misspelt);
        Expect.complained(misspelt, "Not understood: --sett", "--set");
    }
}
