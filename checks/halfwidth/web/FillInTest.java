package halfwidth.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.openqa.selenium.Keys;

/** A technician at the fill-in view, in Chromium. */
@ExtendWith(Browser.class)
@Tag("long")
class FillInTest {
    private static Served served;

    @BeforeAll
    static void serve() {
        served = Served.scratch();
    }

    @AfterAll
    static void end() {
        served.close();
    }

    private static String journal() {
        return served.journal();
    }

    /** Types into whatever has the focus, as a person does who has no mouse. */
    private static void type(CharSequence... keys) {
        Browser.driver().switchTo().activeElement().sendKeys(keys);
    }

    private static String focused() {
        return String.valueOf(
                Browser.run(
                        "return document.activeElement.id || document.activeElement.ariaLabel"));
    }

    private static String value(String css) {
        return String.valueOf(
                Browser.run("return document.querySelector(arguments[0]).value", css));
    }

    @Test
    void wholeVisitGoesByKeyboardAlone() {
        served.fill("transmit/feed-trim", "keys");
        for (int i = 0; i < 40 && !focused().equals("f-frequency"); i++) {
            type(Keys.TAB);
        }
        type("110.30 MHz", Keys.TAB, "0.83", Keys.ENTER, "0.02", Keys.ENTER);
        type("0.5", Keys.ENTER, "1/16", Keys.ENTER, "0.5", Keys.ENTER);
        assertEquals("f-firstFraction", focused());
        Browser.untilShown("#s-smallestCut", "0.0625 in");
        type(Keys.TAB);
        assertEquals("phasing, row 1, SBO cut", focused());
        // Down each column with Enter: the state before any cut, one cut, another.
        type("0", Keys.ENTER);
        type("0", Keys.ENTER);
        type("0", Keys.ENTER);
        assertEquals("phasing, row 4, SBO cut", focused());
        type(Keys.ENTER);
        assertEquals("phasing, row 1, CSB cut", focused());
        type("0", Keys.ARROW_DOWN);
        type("1 1/2", Keys.ARROW_DOWN);
        type("2 1/4", Keys.TAB);
        assertEquals("phasing, row 3, offset 1", focused());
        type("-4.5", Keys.TAB);
        type("-0.5", Keys.ARROW_UP);
        type("-4", Keys.chord(Keys.SHIFT, Keys.TAB));
        type("-8", Keys.ARROW_UP);
        type("-14", Keys.TAB);
        type("-10", Keys.TAB);
        // The worked example's values, so the worked example's answer: half an inch off the CSB.
        Browser.untilShown("#answers", "Now cut the CSB feed by 1/2 in (12.7 mm)");
        Browser.untilShown("#stands", "ran");
        assertTrue(journal().contains("2 1/4"), journal());
    }

    @Test
    void anEntryIsReadBackAtOnceAndARefusedOneStaysAsTyped() {
        served.fill("transmit/feed-trim", "read");
        Browser.find("#f-smallestCut").sendKeys("3.2 mm");
        Browser.untilShown("#s-smallestCut", "0.125984252 in");
        Browser.find("#f-target").sendKeys("1,234", Keys.TAB);
        Browser.until(
                "document.querySelector('#f-target').getAttribute('aria-invalid') === 'true'");
        assertEquals("1,234", value("#f-target"));
        assertTrue(Browser.text("#s-target").contains("1.234"), Browser.text("#s-target"));
        served.fill("transmit/feed-trim", "read");
        Browser.until("document.querySelector('#f-target').value === '1,234'");
        assertEquals("3.2 mm", value("#f-smallestCut"));
    }
}
