package halfwidth.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The program with values typed on the command line, read from files and kept in a job folder. */
@Tag("long")
class EnteredValuesTest {
    private static final Map<String, String> TYPED =
            Map.of(
                    "frequency", "110.0 MHz",
                    "velocityFactor", "0.83",
                    "velocityFactorUncertainty", "0.02",
                    "resolution", "0,5",
                    "smallestCut", "1/8 in",
                    "target", "0.5");

    @TempDir Path temporary;

    private static String[] command(Scratch scratch, String... more) {
        List<String> command = new ArrayList<>(List.of("run", "transmit/feed-trim"));
        TYPED.forEach((name, value) -> command.addAll(List.of("--set", name + "=" + value)));
        Path readings =
                scratch.file(
                        "first phasing.csv",
                        "SBO cut [in],CSB cut [in],offset 1 [°],offset 2 [°]",
                        "0,0,14,10");
        command.addAll(List.of("--readings", "phasing=" + readings));
        command.addAll(List.of(more));
        return command.toArray(String[]::new);
    }

    @Test
    void keepsWhatWasEnteredInTheJobAndFindsItAgain() throws IOException {
        Scratch scratch = Scratch.within(temporary);
        scratch.file("job/job.csv", "name,value", "Station,Köln Übung", "Runway,14L");
        String job = scratch.path("job");
        Program first = Program.run(command(scratch, "--job", job));
        Expect.status(0, first);
        assertFalse(first.out().contains("WORKED EXAMPLE"), first.out());
        // 12° at 4.042°/in (360 f/(c VF) with c exact, 110.0 MHz, VF 0.83) is 2.9688 in; of that
        // 0.8 is 2.375 in, just short of 19 steps of 1/8 in: 18 of them.
        Expect.said(first, "Now cut the SBO feed by 2 1/4 in (57.2 mm)");

        String journal = scratch.text("job/journal.csv");
        assertJournalHas(journal, "smallestCut", "", "1/8 in");
        assertJournalHas(journal, "phasing", "offset 1", "14");
        Program second =
                Program.in(
                        scratch.folder(),
                        List.of(),
                        "run",
                        "transmit/feed-trim",
                        "--job",
                        "job",
                        "--out",
                        "record");
        Expect.status(0, second);
        assertEquals(first.section("INPUTS"), second.section("INPUTS"));
        assertEquals(first.section("RESULTS"), second.section("RESULTS"));
        assertEquals(journal, scratch.text("job/journal.csv"), "nothing new was entered");
        assertTrue(scratch.text("record/page.html").contains("Köln Übung"));
        assertTrue(scratch.text("record/results.csv").endsWith(",entered\r\n"));
    }

    @Test
    void readsFieldsFromAFileAndNamesATableByItsFile() {
        Scratch scratch = Scratch.within(temporary);
        List<String> lines = new ArrayList<>(List.of("# invented", "name,value"));
        TYPED.forEach((name, value) -> lines.add(name + ",\"" + value + "\""));
        Path inputs = scratch.file("typed.csv", lines.toArray(String[]::new));
        Path phasing =
                scratch.file(
                        "phasing.csv",
                        "# invented",
                        "SBO cut [in],CSB cut [in],offset 1 [°],offset 2 [°]",
                        "0,0,14,10");
        Program files =
                Program.here(
                        "run",
                        "transmit/feed-trim",
                        "--inputs",
                        inputs.toString(),
                        "--readings",
                        phasing.toString());
        Expect.status(0, files);
        // The same values typed on the command line give this, worked by hand above.
        Expect.said(files, "Now cut the SBO feed by 2 1/4 in (57.2 mm)");
        Path other = scratch.file("first.csv", "SBO cut,CSB cut,offset 1,offset 2", "0,0,14,10");
        Program unnamed = Program.here("run", "transmit/feed-trim", "--readings", other.toString());
        Expect.status(1, unnamed);
        Expect.complained(unnamed, "has no table of readings first", "phasing");
    }

    private static void assertJournalHas(String journal, String field, String column, String typed)
            throws IOException {
        CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
        List<CSVRecord> lines = CSVParser.parse(journal, format).getRecords();
        assertTrue(
                lines.stream()
                        .anyMatch(
                                line ->
                                        line.get("page").equals("transmit/feed-trim")
                                                && line.get("name").equals(field)
                                                && line.get("column").equals(column)
                                                && line.get("typed").equals(typed)),
                () -> field + " is not in " + journal);
    }

    @Test
    void runsWhatItCanAndNamesWhatTheRestWaitsFor() {
        Scratch scratch = Scratch.within(temporary);
        Program half =
                Program.run(
                        "run",
                        "transmit/feed-trim",
                        "--set",
                        "frequency=110.0 MHz",
                        "--set",
                        "velocityFactor=0.83",
                        "--out",
                        scratch.path("half"));
        Expect.status(0, half);
        Expect.said(
                half,
                "WAITING",
                "Standard uncertainty of that factor (velocityFactorUncertainty)",
                "  phasing");
        assertFalse(half.section("WAITING").contains("(frequency)"), half.out());
        // 360 f/(c VF) with c exact, worked by hand: 4.0424°/in.
        assertTrue(
                scratch.text("half/page.html").contains("<strong>4.042"),
                "the steps that have what they need ran");
        assertTrue(
                scratch.text("half/results.csv").contains("waiting for velocityFactorUncertainty"));
    }
}
