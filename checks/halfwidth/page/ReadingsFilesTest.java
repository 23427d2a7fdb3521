package halfwidth.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.spreadsheet.SpreadsheetFile;
import halfwidth.value.Entry;
import halfwidth.value.EntryRefused;
import halfwidth.value.Kind;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the numbers of a file are, whose decimal mark nobody states. */
class ReadingsFilesTest {
    private static final Part.Readings TABLE =
            new Part.Readings(
                    1,
                    "sweep",
                    List.of(
                            new Column("near field", new Kind.Number(), "m"),
                            new Column("azimuth", new Kind.Number(), "\u00b0"),
                            new Column("mark", new Kind.Text(), "", true)),
                    List.of());

    private static SpreadsheetFile file(String text) {
        return SpreadsheetFile.of("f.csv", text.getBytes(StandardCharsets.UTF_8));
    }

    private static List<Object> distances(String text) {
        return new ReadingsReader(TABLE)
                .file(file(text)).stream()
                        .map(row -> row.get(0).map(Entry::value).orElse(null))
                        .collect(Collectors.toList());
    }

    private static void assertRefused(String text, String... said) {
        EntryRefused refused =
                assertThrows(EntryRefused.class, () -> new ReadingsReader(TABLE).file(file(text)));
        for (String words : said) {
            assertTrue(refused.getMessage().contains(words), refused.getMessage());
        }
    }

    /** Another number with a decimal comma, that can be nothing else, leaves one reading. */
    @ParameterizedTest
    @CsvSource({"'0,125'", "'12,5'", "'1234,567'", "'1,2345'", "',5'", "'0,5 ± 0,1'"})
    void takesTheCommaForDecimalOnceAnotherNumberProvesIt(String proof) {
        String text = "near field;azimuth\n1,234;0\n2;" + proof + "\n";
        assertEquals(List.of(1.234, 2.0), distances(text));
        assertEquals(List.of(1.234, 2.0), distances(text.replace(';', '\t')));
    }

    @Test
    void refusesWhatMayBeAThousandOrAThousandthAtItsCell() {
        assertRefused(
                "near field;azimuth\n1,234;0\n",
                "f.csv:2, near field: 1,234 may be 1.234 or 1234",
                "type 1,2340 or 1234");
        assertRefused("near field;azimuth\n1.234;0\n", "1.234 may be 1.234 or 1234", "1,2340");
        assertRefused("near field;azimuth\n1,234;0.5\n", "1,234 may be", "type 1.2340 or 1234");
        assertRefused("near field;azimuth\n1.234;0,5\n", "1.234 may be", "type 1,2340 or 1234");
        assertRefused("near field;azimuth\n1,234;1,5\n7;0.5\n", "1,234 may be");
        assertRefused("near field,azimuth\n\"1,234\",\"0,5\"\n", "1,234 may be 1.234 or 1234");
        assertRefused("near field;azimuth\n1.234,5;0\n", "without separators of thousands, 1234.5");
    }

    /** A word in a column of text is no number, and proves nothing. */
    @Test
    void looksAtNumbersOnly() {
        assertRefused("near field;azimuth;mark\n1,234;0;3,5\n", "1,234 may be");
    }

    @Test
    void takesThePointAsItIsTypedWhereNothingSpeaksAgainstIt() {
        assertEquals(List.of(1.234), distances("near field,azimuth\n1.234,0\n"));
        assertEquals(List.of(1.234), distances("near field\tazimuth\n1.234\t0\n"));
        assertEquals(List.of(1.234), distances("near field;azimuth\n1.234;0.5\n"));
    }

    @Test
    void knowsAHeadingWhateverItsCapitalsAndBlanks() {
        assertEquals(
                List.of(2.0), distances(" NEAR\u00a0Field [m]\u00a0;;Azimuth;\n2;;0,5;\n;;;\n"));
        assertRefused("Near Field,near field,azimuth\n1,2,3\n", "column near field is there twice");
        assertRefused("near field [KM],azimuth\n1,2\n", "stated in [KM], which is not known");
    }

    @Test
    void namesAColumnWithoutHeadingInWhichSomethingStands() {
        assertRefused("near field;;azimuth\n2;x;0,5\n", "f.csv:1: column (empty) is unknown");
    }

    @Test
    void tellsThatADateWasMadeOfAFraction() {
        assertRefused(
                "near field;azimuth\n2024-02-01;0\n",
                "f.csv:2, near field: 2024-02-01 is a date where a number is expected",
                "make the cell text");
    }
}
