package halfwidth.notebooks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.notebooks.FeedTrimTable.Found;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A trim with the feed-trim page on a line that is not quite what its data sheet says. The line
 * exists in this test alone: the page sees no more than the offsets, set in steps of half a degree.
 */
class HiddenLineTest {
    private static FeedTrimTable table;

    @BeforeAll
    static void opensThePage() {
        table = new FeedTrimTable();
    }

    @AfterAll
    static void closesThePage() {
        table.close();
    }

    /** By the data sheet it is 4.042 ± 0.097 °/in. */
    @ParameterizedTest
    @CsvSource({
        "3.87, 31.3, 24.1",
        "4.21, 31.3, 24.1",
        "3.93, -22.6, -26.4",
        "4.17, -8.2, 25.7",
        "4.04, -40.1, 12.3"
    })
    void findsTheLineAndStaysShortOfTheEnd(double degreesPerInch, double offset1, double offset2) {
        double direction = Math.signum(offset1 + offset2);
        double whole = Math.abs(offset1 + offset2) / 2 / degreesPerInch;
        String feed = direction > 0 ? "SBO" : "CSB";
        List<String> rows = new ArrayList<>();
        double cut = 0;
        rows.add(row(direction, cut, offset1, offset2));
        Found found = table.phasings(rows.toArray(String[]::new));
        for (int cuts = 0; cuts < 3; cuts++) {
            assertEquals(feed, found.words("feed"), "cut " + (cuts + 1));
            assertTrue(found.number("nextCut") > 0);
            cut += found.number("nextCut");
            assertTrue(cut <= whole, cut + " in cut where " + whole + " in is all");
            double taken = direction * degreesPerInch * cut;
            rows.add(row(direction, cut, offset1 - taken, offset2 - taken));
            assertExpected(found, "after1", step(offset1 - taken));
            assertExpected(found, "after2", step(offset2 - taken));
            found = table.phasings(rows.toArray(String[]::new));
            if (found.words("feed").equals("NEITHER")) {
                break;
            }
        }
        // Three standard uncertainties: about 99 % for the few readings there are.
        assertEquals(
                degreesPerInch,
                found.number("degreesPerInch"),
                3 * found.number("degreesPerInchUncertainty"));
        assertEquals(whole - cut, found.number("whole"), 3 * found.number("wholeUncertainty"));
        assertEquals(Math.abs(offset1 - offset2) / 2, found.number("halfSpread"), 0.5);
    }

    private static void assertExpected(Found found, String name, double read) {
        assertEquals(read, found.number(name), 3 * found.uncertainty(name), name);
    }

    private static String row(double direction, double cut, double offset1, double offset2) {
        String cuts = direction > 0 ? cut + ",0," : "0," + cut + ",";
        return cuts + step(offset1) + "," + step(offset2);
    }

    /** An offset as it is set: to the nearest half degree. */
    private static double step(double offset) {
        return Math.rint(2 * offset) / 2;
    }
}
