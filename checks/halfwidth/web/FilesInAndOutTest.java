package halfwidth.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.spreadsheet.Workbook;
import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** A spreadsheet's files on the screen: loaded into a table, and results saved for one. */
@ExtendWith(Browser.class)
@Tag("long")
class FilesInAndOutTest {
    private static final String PAGE = "transmit/feed-trim";
    private static Served served;

    @TempDir Path folder;

    @BeforeAll
    static void serve() {
        served = Served.scratch(Served::enterExamples);
    }

    @AfterAll
    static void end() {
        served.close();
    }

    private static String cell(int row, String column) {
        return String.valueOf(
                Browser.run(
                        "return document.querySelector(`[data-row=\"${arguments[0]}\"]"
                                + "[data-column=\"${arguments[1]}\"]`).value",
                        row,
                        column));
    }

    private void load(String name, byte[] bytes) throws IOException {
        Path file = Files.write(folder.resolve(name), bytes);
        Browser.find("[data-load=phasing]").sendKeys(file.toString());
    }

    @Test
    void aWorkbookIsLoadedAndItsSheetNamed() throws IOException {
        served.fill(PAGE, "workbook");
        Workbook book = new Workbook(Workbook.Texts.SHARED);
        List<String> header =
                List.of(
                        book.text("SBO CUT"),
                        book.text("csb cut"),
                        book.text("Offset 1 [°]"),
                        book.text(" offset 2"));
        book.sheet(
                "June",
                List.of(
                        header,
                        List.of(number(0), number(0), number(-4.5), number(-8)),
                        List.of(number(0), book.text("1 1/2"), number(-0.5), number(-4))));
        load("cuts.xlsx", book.sheet("Notes", List.of()).bytes());
        Browser.untilShown("#count-phasing", "2 rows, none missing.");
        Browser.untilShown("#notice", "Loaded: sheet June of 2.");
        assertEquals("-4.5", cell(1, "offset 1"));
        assertEquals("1 1/2", cell(2, "CSB cut"));
    }

    private static String number(double value) {
        return Workbook.number(value);
    }

    /** Its degree sign is one byte, which the browser would have taken for no letter. */
    @Test
    void aFileInACodePageKeepsItsLetters() throws IOException {
        served.fill(PAGE, "code page");
        String text = "SBO cut;CSB cut;offset 1 [°];offset 2 [°]\r\n0;0;-4,5;-8 °\r\n;;;\r\n";
        load("cuts.csv", text.getBytes(Charset.forName("windows-1252")));
        Browser.untilShown("#count-phasing", "1 row, none missing.");
        Browser.untilShown("#notice", "code page 1252");
        assertEquals("-8 °", cell(1, "offset 2"));
    }

    @Test
    void aFileThatIsRefusedChangesNothing() throws IOException {
        served.fill(PAGE, "");
        String before = cell(1, "offset 1");
        load("cuts.csv", "SBO cut;CSB cut;offset 1;offset 2\n0;1,234;-4;-8\n".getBytes());
        Browser.untilShown("#notice", "cuts.csv:2, CSB cut: 1,234 may be 1.234 or 1234");
        assertEquals(before, cell(1, "offset 1"));
    }

    /** The same answers as in the sheet, as a spreadsheet of either kind divides them. */
    @Test
    void resultsAreSavedForASpreadsheet() throws IOException {
        served.fill(PAGE, "");
        Browser.untilShown("#answers", "Save results as CSV");
        Object href = Browser.run("return document.querySelector('#answers .tools a').pathname");
        assertTrue(String.valueOf(href).endsWith("/results/transmit/feed-trim"), href::toString);
        String address = "/results/transmit/feed-trim?visit=";
        CSVRecord point = constant(Wire.friend(served).get(address), ',');
        CSVRecord comma = constant(Wire.friend(served).get(address + "&decimal=comma"), ';');
        // The slope through the offsets of the worked example, as WorkedExampleTest has it.
        assertEquals(11 / 2.625, Double.parseDouble(point.get(1)), 1e-9);
        assertEquals(point.get(1).replace('.', ','), comma.get(1));
        assertEquals(Math.sqrt(1 / 21.0 / 5.25), Double.parseDouble(point.get(3)), 1e-9);
        assertEquals("entered", comma.get(6));
    }

    private static CSVRecord constant(String answer, char separator) throws IOException {
        assertTrue(answer.contains("Content-disposition: attachment; filename="), answer);
        String csv = answer.substring(answer.indexOf("\r\n\r\n") + 4);
        assertTrue(csv.startsWith("\ufeffname" + separator + "value"), csv);
        CSVFormat format = CSVFormat.DEFAULT.builder().setDelimiter(separator).get();
        return CSVParser.parse(new StringReader(csv), format).getRecords().stream()
                .filter(line -> line.get(0).equals("degreesPerInch"))
                .findFirst()
                .orElseThrow();
    }
}
