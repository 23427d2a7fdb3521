package halfwidth.spreadsheet;

import static halfwidth.spreadsheet.Workbook.formula;
import static halfwidth.spreadsheet.Workbook.number;
import static halfwidth.spreadsheet.Workbook.styled;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.value.EntryRefused;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What the cells of a workbook are read as, and which workbooks are not read. */
class WorkbookFileTest {
    @TempDir Path folder;

    private static Workbook book() {
        return new Workbook(Workbook.Texts.SHARED);
    }

    private static List<List<String>> cells(Workbook book) {
        return SpreadsheetFile.of("b.xlsx", book.bytes()).rows().stream()
                .map(CsvRow::cells)
                .toList();
    }

    private static void assertRefused(byte[] bytes, String... said) {
        EntryRefused refused =
                assertThrows(EntryRefused.class, () -> SpreadsheetFile.of("b.xlsx", bytes));
        for (String words : said) {
            assertTrue(refused.getMessage().contains(words), refused.getMessage());
        }
    }

    @ParameterizedTest
    @EnumSource(Workbook.Texts.class)
    void readsACellAsOneWouldTypeIt(Workbook.Texts texts) {
        Workbook book = new Workbook(texts);
        List<String> header = List.of(book.text("a"), book.text("b & <c>"), book.text("d"));
        book.sheet(
                "Cuts",
                List.of(
                        header,
                        // The nearest binary number to 0.1 has more digits than were typed.
                        List.of(number(0.1), number(-37.5), book.text("155 in the 90")),
                        List.of(styled(0.125, 2), styled(2.5, 4), Workbook.blank()),
                        // 45 000 days after 1899-12-30.
                        List.of(styled(45000, 1), styled(45000.5, 3), styled(0.25, 3)),
                        List.of(
                                formula("A2*2", "n", "<v>0.2</v>"),
                                formula("C2", "str", "<v>7 in the 150</v>"),
                                "<c r=\"@\" t=\"b\"><v>1</v></c>")));
        assertEquals(
                List.of(
                        List.of("a", "b & <c>", "d"),
                        List.of("0.1", "-37.5", "155 in the 90"),
                        List.of("12.5 %", "2.5", ""),
                        List.of("2023-03-15", "2023-03-15 12:00", "06:00"),
                        List.of("0.2", "7 in the 150", "TRUE")),
                cells(book));
    }

    @Test
    void keepsTheNumbersOfItsRowsAndLeavesTheEmptyOnesOut() {
        Workbook book = book();
        book.sheet(
                "Cuts",
                List.of(
                        List.of(),
                        List.of(book.text("# of June"), Workbook.blank()),
                        List.of(book.text("a"), book.text("b")),
                        List.of(Workbook.blank(), book.text("\u00a0")),
                        List.of("", number(2)),
                        List.of(Workbook.blank(), Workbook.blank(), Workbook.blank())));
        List<CsvRow> rows = SpreadsheetFile.of("b.xlsx", book.bytes()).rows();
        assertEquals(
                List.of(new CsvRow(3, List.of("a", "b")), new CsvRow(5, List.of("", "2"))), rows);
        SpreadsheetFile file = SpreadsheetFile.of("b.xlsx", book.bytes());
        assertEquals("b.xlsx, sheet Cuts, row 5", file.place(rows.get(1)));
    }

    @Test
    void takesTheFirstSheetThatIsNotHiddenOrTheOneThatIsNamed() throws IOException {
        Workbook book = book();
        book.sheet("Lists", List.of(List.of(number(1)))).hidden();
        book.sheet("Pair 3", List.of(List.of(number(3))));
        book.sheet("Pair 4", List.of(List.of(number(4))));
        SpreadsheetFile first = SpreadsheetFile.of("b.xlsx", book.bytes());
        assertEquals(List.of("3"), first.rows().get(0).cells());
        assertEquals(List.of("sheet Pair 3 of 3"), first.remarks());
        Path file = Files.write(folder.resolve("b.xlsx"), book.bytes());
        SpreadsheetFile named = SpreadsheetFile.read(Path.of(file + "#Pair 4"));
        assertEquals(List.of("4"), named.rows().get(0).cells());
        assertEquals("b", SpreadsheetFile.plainName(Path.of(file + "#Pair 4")));
        EntryRefused none =
                assertThrows(
                        EntryRefused.class, () -> SpreadsheetFile.read(Path.of(file + "#Pair 5")));
        assertTrue(none.getMessage().contains("no sheet Pair 5; it has Lists, Pair 3, Pair 4"));
    }

    @Test
    void refusesAFormulaThatFailedOrWasNeverCalculated() {
        for (String type : List.of("e", "str")) {
            Workbook failed = book();
            failed.sheet(
                    "Cuts", List.of(List.of(number(1), formula("1/0", type, "<v>#DIV/0!</v>"))));
            assertRefused(failed.bytes(), "sheet Cuts, cell B1", "#DIV/0!", "mend it");
        }
        Workbook never = book();
        never.sheet("Cuts", List.of(List.of(formula("1+1", "n", ""))));
        assertRefused(never.bytes(), "cell A1", "never calculated", "open and save");
    }

    /** Ten million zeros take ten thousand bytes. */
    @Test
    void refusesWhatUnpacksWithoutEnd() {
        byte[] zeros = new byte[45_000_000];
        Arrays.fill(zeros, (byte) ' ');
        Workbook bomb = book().sheet("Cuts", List.of(List.of(number(1))));
        byte[] bytes = bomb.part("xl/media/picture.bin", zeros).bytes();
        assertTrue(bytes.length < 100_000, bytes.length + " bytes");
        assertRefused(bytes, "unpacks to more than", "workbook of their own");
    }

    @Test
    void refusesEntities() {
        String declared =
                "<!DOCTYPE x [<!ENTITY e SYSTEM \"file:///etc/hostname\">]><worksheet><sheetData>"
                        + "<row r=\"1\"><c r=\"A1\" t=\"inlineStr\"><is><t>&e;</t></is></c></row>"
                        + "</sheetData></worksheet>";
        for (String path :
                List.of("xl/worksheets/sheet1.xml", "xl/sharedStrings.xml", "x/y.rels")) {
            for (var charset : List.of(StandardCharsets.UTF_8, StandardCharsets.UTF_16)) {
                Workbook book = book().sheet("Cuts", List.of(List.of(number(1))));
                book.part(path, declared.getBytes(charset));
                assertRefused(book.bytes(), "XML entities", path, "no spreadsheet writes");
            }
        }
    }

    @Test
    void refusesWhatWouldMakeAReaderKeepRoomForNothing() {
        for (String address : List.of("ZZZZZZ1", "&#90;ZZZZZ1", "A99999999")) {
            Workbook far = book();
            far.raw(
                    "Cuts",
                    "<sheetData><row r=\"1\"><c r=\""
                            + address
                            + "\"><v>1</v></c></row></sheetData>");
            assertRefused(far.bytes(), "a cell at ", "no spreadsheet writes");
        }
        Workbook wide = book();
        wide.raw(
                "Cuts",
                "<sheetData><row>" + "<c><v>1</v></c>".repeat(2_000) + "</row></sheetData>");
        assertRefused(wide.bytes(), "more than 1000 cells in a row");
        Workbook formula = book();
        formula.sheet("Cuts", List.of(List.of(formula("1+".repeat(5_000) + "1", "n", "<v>1</v>"))));
        assertRefused(formula.bytes(), "a formula of more than");
        Workbook deep = book();
        deep.raw(
                "Cuts",
                "<sheetData>" + "<row><c><v>1</v></c></row>".repeat(7_000) + "</sheetData>");
        assertRefused(deep.bytes(), "more than 6000 rows");
    }

    @Test
    void refusesWhatIsNoSuchWorkbook() {
        byte[] whole = book().sheet("Cuts", List.of(List.of(number(1)))).bytes();
        assertRefused(Arrays.copyOf(whole, whole.length / 2), "damaged", "save it anew");
        assertRefused(Workbook.zip(Map.of("mimetype", new byte[3])), "is no xlsx workbook");
        byte[] old = new byte[600];
        old[0] = (byte) 0xd0;
        old[1] = (byte) 0xcf;
        old[2] = 0x11;
        old[3] = (byte) 0xe0;
        assertRefused(old, "of an old kind or has a password", "save it as xlsx");
        Map<String, byte[]> twice = new TreeMap<>();
        twice.put("xl/workbook.xml", "<a/>".getBytes(StandardCharsets.UTF_8));
        twice.put("XL/Workbook.xml", "<a/>".getBytes(StandardCharsets.UTF_8));
        assertRefused(Workbook.zip(twice), "a part twice");
        Workbook malformed = book().raw("Cuts", "<sheetData><row>");
        assertRefused(malformed.bytes(), "malformed XML", "sheet1.xml");
        Workbook empty = book().sheet("Cuts", List.of(List.of(Workbook.blank())));
        assertRefused(empty.bytes(), "has no rows");
    }
}
