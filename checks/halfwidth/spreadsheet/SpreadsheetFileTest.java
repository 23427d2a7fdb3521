package halfwidth.spreadsheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.value.EntryRefused;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the bytes of a text file are read as, and which are refused. */
class SpreadsheetFileTest {
    private static List<List<String>> cells(byte[] bytes) {
        return SpreadsheetFile.of("f.csv", bytes).rows().stream().map(CsvRow::cells).toList();
    }

    private static List<List<String>> cells(String text) {
        return cells(text.getBytes(StandardCharsets.UTF_8));
    }

    private static void assertRefused(byte[] bytes, String... said) {
        EntryRefused refused =
                assertThrows(EntryRefused.class, () -> SpreadsheetFile.of("f.csv", bytes));
        for (String words : said) {
            assertTrue(refused.getMessage().contains(words), refused.getMessage());
        }
    }

    /** These bytes are °, µ, ±, é and ü in every code page of Europe and America. */
    @Test
    void readsACodePageWhereItMakesNoDifference() {
        String text = "phase [°];µA;who\n1 ± 0,5;3;Rémy Müller\n";
        SpreadsheetFile file =
                SpreadsheetFile.of("f.csv", text.getBytes(Charset.forName("windows-1252")));
        assertEquals(List.of("1 ± 0,5", "3", "Rémy Müller"), file.rows().get(1).cells());
        assertEquals(List.of("its letters read as code page 1252"), file.remarks());
        assertEquals(
                List.of(),
                SpreadsheetFile.of("f.csv", text.getBytes(StandardCharsets.UTF_8)).remarks());
    }

    /** An old system's degree sign, another's, Polish, Cyrillic and Greek names. */
    @Test
    void refusesACodePageThatCannotBeTold() {
        for (String charset : List.of("IBM850", "x-MacRoman", "windows-1250", "windows-1251")) {
            String text =
                    charset.endsWith("51")
                            ? "who\nЖуков\n"
                            : charset.endsWith("50") && !charset.startsWith("I")
                                    ? "who\nŁukasz\n"
                                    : "who\n30°\n";
            assertRefused(
                    text.getBytes(Charset.forName(charset)),
                    "f.csv:2: has bytes that are not UTF-8",
                    "save it in the spreadsheet as \"CSV UTF-8\" or as xlsx");
        }
    }

    @Test
    void refusesWhatIsNoText() {
        assertRefused("a,b\n1,2\n".getBytes(StandardCharsets.UTF_16LE), "no text", "save it");
        byte[] half = {(byte) 0xff, (byte) 0xfe, 'a', 0, 0};
        assertRefused(half, "begins like UTF-16LE");
        byte[] broken = {(byte) 0xef, (byte) 0xbb, (byte) 0xbf, 'a', (byte) 0xb0};
        assertRefused(broken, "begins like UTF-8");
        assertRefused(new byte[2_000_001], "too many; at most 2000000");
        assertRefused(new byte[0], "has no rows");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "sep=;\na;b\n1,5;2\n",
                "SEP=;\r\na;b\r\n1,5;2\r\n",
                "# note\n\nsep=;\na;b\n1,5;2"
            })
    void takesTheSeparatorThatIsStated(String text) {
        assertEquals(List.of(List.of("a", "b"), List.of("1,5", "2")), cells(text));
    }

    @Test
    void refusesASeparatorThatIsNone() {
        assertRefused(
                "sep=|\na|b\n".getBytes(StandardCharsets.UTF_8), "f.csv:1: states |", "commas");
    }

    @Test
    void findsTheSeparatorOutsideOfQuotationMarks() {
        assertEquals(
                List.of(List.of("a;b", "c"), List.of("1", "x\ty")),
                cells("\"a;b\",c\n1,\"x\ty\"\n"));
    }

    @Test
    void leavesOutRowsAndColumnsInWhichNothingStands() {
        assertEquals(
                List.of(List.of("a", "b"), List.of("1", ""), List.of("", "2")),
                cells("a,b,,\n1,,,\n,\u00a0,,\n,2, ,\n,,,\n\n,,,\n"));
    }

    /** The blank at the end would hide that a decimal comma moved the cells before it. */
    @Test
    void keepsTheLengthOfARowThatIsLongerThanTheHeader() {
        assertEquals(List.of("1", "5", "2", ""), cells("a,b,c\n1,5,2,\n").get(1));
    }
}
