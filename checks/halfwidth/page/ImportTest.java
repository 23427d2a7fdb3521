package halfwidth.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.spreadsheet.SpreadsheetFile;
import halfwidth.value.Kind;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class ImportTest {
    private static final Part.Readings SWEEP =
            new Part.Readings(
                    1,
                    "sweep",
                    List.of(
                            new Column("azimuth", new Kind.Number(), "\u00b0"),
                            new Column("near", new Kind.Ddm(), "DDM"),
                            new Column("mark", new Kind.Text(), "")),
                    List.of());

    private static Import proposed(String text) {
        return proposed(text, Map.of());
    }

    private static Import proposed(String text, Map<String, String> stated) {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        return Import.propose(SWEEP, SpreadsheetFile.of("log.csv", bytes), stated);
    }

    private static Object value(Import proposed, int row, int column) {
        String typed = proposed.rows().get(row).get(column);
        return SWEEP.columns().get(column).read(typed).orElseThrow().value();
    }

    @Test
    void takesAFileWhoseHeadingsSayAll() {
        Import proposed =
                proposed("Mark;Near [\u00b5A, + in the 90];AZIMUTH [\u00b0]\nA;150;1.5\n;;-2,5\n");
        assertEquals(List.of(), proposed.questions());
        assertEquals(List.of(), proposed.problems());
        assertEquals(1.5, value(proposed, 0, 0));
        assertEquals(-2.5, value(proposed, 1, 0));
        // ICAO Annex 10 Vol I, 3.1.1: 150 uA is 0.155 DDM; positive here where 150 Hz predominates.
        assertEquals(-0.155, (Double) value(proposed, 0, 1), 1e-12);
        assertEquals("", proposed.rows().get(1).get(1), "a blank stays a missing reading");
        assertEquals("A", proposed.rows().get(0).get(2));
    }

    @Test
    void asksForUnitsAndSidesThatAreNotStated() {
        Import proposed = proposed("azimuth,near\n1,0.1\n");
        assertTrue(proposed.rows().isEmpty());
        assertEquals(3, proposed.questions().size(), proposed.questions().toString());
        assertTrue(proposed.questions().get(0).startsWith("azimuth: in which unit"));
        assertTrue(proposed.questions().get(1).startsWith("near: in which unit"));
        assertTrue(proposed.questions().get(2).startsWith("near: on which side"));
        assertEquals(List.of("mark"), proposed.absent());
        Import stated =
                proposed(
                        "azimuth,near\n1,0.1\n",
                        Map.of(
                                "azimuth", "azimuth [rad]",
                                "near", "near [DDM, + in the 150]"));
        assertTrue(stated.isClear());
        assertEquals(Math.toDegrees(1), (Double) value(stated, 0, 0), 1e-12);
        assertEquals(0.1, value(stated, 0, 1));
    }

    @Test
    void asksNothingWhereEachCellSaysIt() {
        Import proposed = proposed("azimuth\tnear\n1\u00b0\t155 in the 90\n2\u00b0\t-3 \u00b5A\n");
        assertTrue(proposed.isClear(), proposed.questions().toString());
        assertEquals(-0.155, value(proposed, 0, 1));
    }

    @Test
    void takesAPastedBlockWithoutHeaderInTheOrderOfTheTable() {
        Import proposed = proposed("1\u00b0\t155 in the 90\tA\n2\u00b0\t\tB\n");
        assertTrue(proposed.isClear(), proposed.questions().toString());
        assertEquals(
                List.of("column 1", "column 2", "column 3"),
                proposed.mapping().stream().map(Mapped::heading).toList());
        assertEquals(List.of("2\u00b0", "", "B"), proposed.rows().get(1));
    }

    @Test
    void asksWhichColumnAnUnknownHeadingIs() {
        Import proposed = proposed("azimuth [\u00b0],weather\n1,sun\n");
        assertTrue(proposed.questions().get(0).startsWith("weather: which column is it?"));
        Import left = proposed("azimuth [\u00b0],weather\n1,sun\n", Map.of("weather", ""));
        assertTrue(left.isClear());
        assertEquals("weather \u2192 left out", left.mapping().get(1).words());
    }

    /** The columns of the table that a spreadsheet leaves empty are no question. */
    @Test
    void leavesOutAColumnInWhichNothingStands() {
        Import proposed = proposed("azimuth [\u00b0];;mark\n1;;A\n2,5;;B\n;;\n");
        assertTrue(proposed.isClear(), proposed.questions().toString());
        assertEquals(2, proposed.rows().size());
        assertEquals(2.5, value(proposed, 1, 0));
    }

    @Test
    void asksWhatMayBeAThousandOrAThousandth() {
        Import unproved = proposed("azimuth [\u00b0];mark\n1,234;A\n");
        assertTrue(unproved.problems().get(0).startsWith("line 2, azimuth: 1,234 may be 1.234 or"));
        Import proved = proposed("azimuth [\u00b0];mark\n1,234;A\n0,5;B\n");
        assertTrue(proved.isClear(), proved.problems().toString());
        assertEquals(1.234, value(proved, 0, 0));
    }

    @Test
    void turnsASignThatIsReversed() {
        Import proposed = proposed("\"azimuth [\u00b0, reversed]\"\n1\n-2\n\u22123\n");
        assertEquals(-1.0, value(proposed, 0, 0));
        assertEquals(2.0, value(proposed, 1, 0));
        assertEquals(3.0, value(proposed, 2, 0));
        assertEquals(
                "azimuth [\u00b0, reversed] \u2192 azimuth [\u00b0, reversed], converted to \u00b0",
                proposed.mapping().get(0).words());
    }

    @Test
    void tellsEveryCellThatIsNotUnderstoodAndTakesNone() {
        Import proposed = proposed("azimuth [\u00b0]\n1\ntwo\nthree\n");
        assertFalse(proposed.isClear());
        assertEquals(2, proposed.problems().size());
        assertTrue(proposed.problems().get(0).startsWith("line 3, azimuth: "));
        assertTrue(proposed.rows().isEmpty());
    }
}
