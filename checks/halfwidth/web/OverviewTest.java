package halfwidth.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.job.Change;
import halfwidth.job.Job;
import halfwidth.job.Place;
import halfwidth.page.Page;
import halfwidth.page.Pages;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What is shown at a glance, and what is folded away. */
class OverviewTest {
    private static final String REFERENCE = "/fill/record/facility-reference?visit=";

    private static Served served;
    private static Wire friend;

    @BeforeAll
    static void serve() {
        served = Served.scratch(OverviewTest::enter);
        friend = Wire.friend(served);
    }

    @AfterAll
    static void end() {
        served.close();
    }

    private static void enter(Job job) {
        Served.enterExamples(job);
        Page trim = new Pages(Served.NOTEBOOKS).find("transmit/feed-trim");
        for (String visit : List.of("course feeds", "clearance feeds")) {
            job.enter(trim, visit, List.of(Change.to(Place.input("frequency"), "110.3 MHz")));
        }
    }

    @Test
    void theVisitsOfAPageStandWithItAndWhatTheyWaitForIsNamedAsOnTheSheet() {
        friend.post("/fill/transmit/feed-trim?visit=course+feeds", "first=1");
        String list = friend.get("/");
        assertEquals(2, list.split("Feed trim", -1).length, "the page stands there once");
        assertTrue(list.contains(">course feeds</a>"), list);
        assertTrue(list.contains(">clearance feeds</a>"), list);
        assertTrue(list.contains("waiting for: Velocity factor"), list);
        assertFalse(list.contains("waiting for velocityFactor"), list);
    }

    @Test
    void manyRemarksOnValuesAreFoldedIntoOneLine() {
        String sheet = friend.get(REFERENCE);
        assertTrue(sheet.contains(" remarks on the values, the first: "), sheet);
        assertTrue(sheet.contains("is typed here, not taken from "), sheet);
        assertFalse(sheet.contains("<p class=\"remark\">"), sheet);
    }

    /**
     * The sweep sorted, lists of what methods gave and mere rows say nothing to who fills it in.
     */
    @Test
    void onlyTablesThatSayMoreThanTheReadingsAreShownAndTheyAreFoldedAway() {
        String page = "/fill/sweep/ground-check?visit=";
        String sheet = friend.post(page, "first=1");
        assertTrue(sheet.contains("<summary>Table points"), sheet);
        assertFalse(sheet.contains("Table marks"), sheet);
        assertFalse(sheet.contains("Table sectors"), sheet);
        String depths = friend.post("/fill/transmit/modulation?visit=", "first=1");
        assertTrue(depths.contains("<summary>Table worked"), depths);
        assertFalse(depths.contains("Table depth90"), depths);
    }
}
