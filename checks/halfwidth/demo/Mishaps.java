package halfwidth.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.localizer.array.Place;
import java.time.LocalDate;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Each mishap of the season is pointed out by the page where a technician would look. */
abstract class Mishaps {

    /** E_n above 1 says that two ways do not agree (ISO/IEC 17043:2010, B.3.1.3; from memory). */
    @Test
    void theFeedsAreOfAnotherLineThanTheirDataSheet() {
        Visit feeds = Demo.visit("lines/phase-constant/feeds");
        assertTrue(feeds.number("sheetTrial") > 1);
        assertTrue(feeds.number("sheetSlope") > 1);
        assertTrue(feeds.number("trialSlope") <= 1);
        Visit returns = Demo.visit("lines/phase-constant/returns");
        assertTrue(returns.number("sheetTrial") <= 1, "the returns are what their data sheet says");
    }

    @Test
    void lostMarksAreListedAsNotJudged() {
        Visit check = Demo.visit(Sweeping.place(Sweeping.COMMISSIONED));
        List<Place> lost = List.copyOf(Demo.season().station().simulated().truth().lostMarks());
        assertEquals(2, lost.size());
        for (Place mark : lost) {
            String side = mark.azimuth() > 0 ? "150" : "90";
            String place = Surveying.plain(Math.abs(mark.azimuth())) + "° on the " + side + " side";
            assertTrue(check.words("notJudged").contains(place), check.words("notJudged"));
        }
    }

    @Test
    void theMistypedToneIsDoubtedUntilItIsPutRight() {
        String doubted = Demo.visit("sweep/ground-check/2021-06-15-as-typed").words("mistyped");
        assertTrue(doubted.contains("Tx 2") && doubted.contains("15°"), doubted);
        assertEquals("none", Demo.visit(Sweeping.place(Sweeping.COMMISSIONED)).words("mistyped"));
    }

    @Test
    void theDeadElementAndTheLongCableAreNamed() {
        Visit page = Demo.visit("array/distribution-check");
        assertEquals(String.valueOf(Arraying.DEAD), page.words("dead"));
        assertEquals("element " + Arraying.LONG_CABLE, page.words("feedToCut"));
        assertEquals("none", page.words("otherFindings"));
    }

    @Test
    void theCutTooFarIsNamedAndTurnedToTheOtherSide() {
        String pair = "monitor/pair-null/pair-" + Monitoring.OVERCUT + "-reading-";
        Visit before = Demo.visit(pair + 1);
        Visit after = Demo.visit(pair + 2);
        assertTrue(after.words("advice").startsWith("Too much was cut"), after.words("advice"));
        assertNotEquals(before.words("side"), after.words("side"));
        Visit end = Demo.last("monitor/pair-null/pair-" + Monitoring.OVERCUT);
        assertTrue(end.words("advice").startsWith("Stop"), end.words("advice"));
    }

    @Test
    void thePairsExplainTheComposite() {
        Visit page = Demo.visit("monitor/composite");
        assertTrue(page.words("advice").startsWith("The pairs explain"), page.words("advice"));
        double difference = page.number("difference");
        assertTrue(Math.abs(difference) <= page.number("mostDifference"), "" + difference);
    }

    @Test
    void theDriftIsDated() {
        Visit page = Demo.visit("record/periodic-check");
        Matcher dated =
                Pattern.compile(
                                "TX 1 width \\+[0-9.]+° a year since about (\\S+) \\(between (\\S+)"
                                        + " and (\\S+)\\)")
                        .matcher(page.words("drifts"));
        assertTrue(dated.matches(), page.words("drifts"));
        LocalDate earliest = LocalDate.parse(dated.group(2));
        LocalDate latest = LocalDate.parse(dated.group(3));
        assertFalse(earliest.isAfter(Sweeping.DRIFT_BEGINS), page.words("drifts"));
        assertFalse(latest.isBefore(Sweeping.DRIFT_BEGINS), page.words("drifts"));
        // Checks are half a year apart, so the day is known to about that.
        assertTrue(latest.isBefore(earliest.plusMonths(18)), page.words("drifts"));
        assertEquals("none", page.words("atChange"), "the later drift is no step at that day");
    }
}
