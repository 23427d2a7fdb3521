package halfwidth.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The program started on a page with nothing entered, from a folder that is not the project's. */
@Tag("long")
class WorkedExampleTest {
    private static final Pattern LOADED =
            Pattern.compile("(?i)<script|<link|<iframe|<object|@import|url\\(|src=\"(?!data:)");

    @TempDir static Path temporary;
    private static Scratch scratch;
    private static Program run;

    @BeforeAll
    static void runsTheExample() {
        scratch = Scratch.within(temporary);
        run = example("plain");
    }

    /** Runs the example with these JVM options into a folder of this name. */
    private static Program example(String out, String... jvm) {
        return Program.in(
                scratch.folder(), List.of(jvm), "run", "transmit/feed-trim", "--out", out);
    }

    @Test
    void endsWell() {
        Expect.status(0, run);
        assertEquals("", run.err());
    }

    @Test
    void saysThatItIsTheWorkedExampleOnEveryOutput() throws IOException {
        Expect.said(run, "WORKED EXAMPLE - invented values, not a station's");
        assertTrue(scratch.text("plain/page.html").contains("<strong>Worked example</strong>"));
        for (CSVRecord line : results("plain")) {
            assertEquals("worked example", line.get("values"), line.toString());
        }
    }

    @Test
    void writesResultsForOtherPrograms() throws IOException {
        List<CSVRecord> lines = results("plain");
        assertEquals(
                "name,value,unit,uncertainty,verdict,label,values",
                String.join(",", lines.get(0).getParser().getHeaderNames()));
        CSVRecord feed = lines.get(0);
        assertEquals("feed", feed.get("name"));
        assertEquals("CSB", feed.get("value"));
        CSVRecord constant = named(lines, "degreesPerInch");
        // Slope of one line through each transmitter's offsets -14, -8, -4.5 and -10, -4, -0.5 at
        // cuts of 0, 1.5 and 2.25 in, by hand: Σ(x−x̄)(y−ȳ)/Σ(x−x̄)² = 11/2.625 for both.
        assertEquals(11 / 2.625, Double.parseDouble(constant.get("value")), 1e-9);
        assertEquals("°/in", constant.get("unit"));
        // The residuals are 1/14, -3/14 and 2/14 for both, Σ = 2·14/196 = 1/7, with 6 offsets less
        // 3 fitted numbers: s = √(1/21) = 0.218, more than 0.5/√12. Then s/√(2 · 2.625).
        assertEquals(
                Math.sqrt(1 / 21.0 / 5.25), Double.parseDouble(constant.get("uncertainty")), 1e-9);
    }

    private static List<CSVRecord> results(String out) throws IOException {
        CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
        return CSVParser.parse(new StringReader(scratch.text(out + "/results.csv")), format)
                .getRecords();
    }

    private static CSVRecord named(List<CSVRecord> lines, String name) {
        return lines.stream().filter(line -> line.get("name").equals(name)).findFirst().get();
    }

    @Test
    void writesASheetThatStandsAlone() {
        String page = scratch.text("plain/page.html");
        assertFalse(LOADED.matcher(page).find(), "loads or runs something");
        assertTrue(page.contains("src=\"data:image/png;base64,"), "has its plot with it");
    }

    @Test
    void isTheSameWhateverTheMachinesLanguage() {
        for (String language : List.of("de", "tr")) {
            Program other =
                    example(
                            language,
                            "-Duser.language=" + language,
                            "-Duser.country=" + language.toUpperCase(java.util.Locale.ROOT));
            Expect.status(0, other);
            assertEquals(withoutPlace(run), withoutPlace(other));
            assertEquals(
                    scratch.text("plain/results.csv"), scratch.text(language + "/results.csv"));
        }
    }

    private static String withoutPlace(Program program) {
        return program.out().replaceFirst("\nWritten: .*\n", "");
    }

    @Test
    void listsThePagesWithTheirTitles() {
        Program list = Program.run("list");
        Expect.status(0, list);
        assertTrue(
                Pattern.compile("(?m)^ +transmit/feed-trim +Feed trim$").matcher(list.out()).find(),
                list::toString);
    }

    @Test
    void endsWhereNobodyReadsItsOutput() {
        assertEquals(0, Program.unread("run", "transmit/feed-trim"));
    }
}
