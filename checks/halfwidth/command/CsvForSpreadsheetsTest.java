package halfwidth.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.spreadsheet.SpreadsheetFile;
import halfwidth.spreadsheet.Workbook;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files of spreadsheets at the command line, and what is written for one. */
@Tag("long")
class CsvForSpreadsheetsTest {
    private static final String HOSTILE = "=HYPERLINK(\"http://x.invalid\")";

    @TempDir Path temporary;
    private Scratch scratch;

    @BeforeEach
    void write() {
        scratch = Scratch.within(temporary);
        scratch.file("job/job.csv", "name,value", "Station,North Field");
        scratch.file(
                "notebooks/trial/sum.md",
                "# Sum",
                "",
                "```csv readings sweep",
                "azimuth [\u00b0],mark [text]",
                "1,A",
                "```",
                "",
                "```java",
                "double sum = sweep.doubleColumn(\"azimuth\").sum(); // °",
                "String first = sweep.stringColumn(\"mark\").get(0);",
                "```",
                "",
                "```csv results",
                "name,unit,decimals,label",
                "sum,\u00b0,2,Sum",
                "first,,,First",
                "```");
    }

    private Program run(String... arguments) {
        return Program.here(
                Stream.concat(Stream.of(arguments), Stream.of("--job", scratch.path("job")))
                        .toArray(String[]::new));
    }

    private Program page(String... arguments) {
        return run(
                Stream.concat(
                                Stream.of(arguments),
                                Stream.of("--notebooks", scratch.path("notebooks")))
                        .toArray(String[]::new));
    }

    private String workbook() throws IOException {
        Workbook book = new Workbook(Workbook.Texts.INLINE);
        List<String> header = List.of(book.text("Azimuth [°]"), book.text("MARK"));
        book.sheet("Other", List.of(List.of(book.text("nothing"))));
        book.sheet(
                "Pair 3",
                List.of(
                        header,
                        List.of(Workbook.number(-1.25), book.text(HOSTILE)),
                        List.of(Workbook.number(0.5), book.text("-5 µA"))));
        return Files.write(scratch.folder().resolve("b.xlsx"), book.bytes()) + "#Pair 3";
    }

    private static List<CSVRecord> records(String text, char separator) throws IOException {
        CSVFormat format = CSVFormat.DEFAULT.builder().setDelimiter(separator).get();
        return CSVParser.parse(text, format).getRecords();
    }

    @Test
    void whatAWorkbookHasComesOutAsNothingThatRuns() throws IOException {
        Program ran =
                page(
                        "run",
                        "trial/sum",
                        "--readings",
                        "sweep=" + workbook(),
                        "--csv-for",
                        "decimal-comma",
                        "--out",
                        scratch.path("out"));
        Expect.status(0, ran);
        String csv = scratch.text("out/results.csv");
        assertTrue(csv.startsWith("\ufeffname;value;unit"), csv);
        assertEquals("-0,75", records(csv, ';').get(1).get(1));
        assertEquals("'" + HOSTILE, records(csv, ';').get(2).get(1));
        SpreadsheetFile back = SpreadsheetFile.read(scratch.folder().resolve("out/results.csv"));
        assertEquals(HOSTILE, back.rows().get(2).cells().get(1));

        Expect.status(0, run("export", "--out", scratch.path("all.csv")));
        List<CSVRecord> values = records(scratch.text("all.csv"), ',');
        assertEquals("-1.25", values.get(1).get(5));
        assertEquals("'" + HOSTILE, values.get(2).get(7));
        assertEquals("0.5", values.get(3).get(7));
        assertEquals("'-5 µA", values.get(4).get(7));
        Program commas = run("export", "--csv-for", "decimal-comma");
        assertEquals("-1,25", records(commas.out(), ';').get(1).get(5));
        assertEquals("-1.25", records(commas.out(), ';').get(1).get(7), "as it was typed");
    }

    @Test
    void importSaysWhichSheetItTakes() throws IOException {
        Program shown = page("import", "trial/sum", "sweep", workbook(), "--accept");
        Expect.status(0, shown);
        Expect.said(shown, "Taken: sheet Pair 3 of 2.", "Taken: 2 rows.");
    }

    @Test
    void anUnknownReaderIsRefused() {
        Program wrong = run("export", "--csv-for", "de");
        assertEquals(2, wrong.status());
        Expect.complained(wrong, "programs", "decimal-point", "decimal-comma");
    }
}
