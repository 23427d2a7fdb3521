package halfwidth.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WindowType;

/** A technician at the fill-in view, in Chromium. */
@ExtendWith(Browser.class)
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
                Browser.run("return document.activeElement.id || document.activeElement.ariaLabel"));
    }

    private static String value(String css) {
        return String.valueOf(Browser.run("return document.querySelector(arguments[0]).value", css));
    }

    private static String cell(int row, String column) {
        return "[data-row='%s'][data-column='%s']".formatted(row, column);
    }

    private static void paste(String css, String block) {
        Browser.find(css).click();
        Browser.run(
                """
                const data = new DataTransfer();
                data.setData('text/plain', arguments[1]);
                document.querySelector(arguments[0]).dispatchEvent(
                  new ClipboardEvent('paste', {clipboardData: data, bubbles: true, cancelable: true}));
                """,
                css,
                block);
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

    @Test
    void aPastedSweepKeepsItsMissingMarks() {
        served.fill("sweep/ground-check", "paste");
        String block =
                IntStream.rangeClosed(-7, 7)
                        .map(i -> i * 5)
                        .mapToObj(
                                azimuth ->
                                        azimuth == 15
                                                ? "15\tlost mark\t\t"
                                                : azimuth + "\t" + ddm(azimuth) + "\t"
                                                        + ddm(azimuth) + "\t")
                        .collect(Collectors.joining("\n"));
        paste(cell(1, "azimuth"), block);
        Browser.untilShown("#count-sweep", "15 rows, 17 readings missing.");
        assertEquals("", value(cell(11, "transmitter 1")));
        assertEquals(
                "lost mark",
                Browser.find(cell(11, "transmitter 1")).getAttribute("placeholder"));
        assertEquals("15", value(cell(11, "azimuth")));
        assertTrue(journal().contains("lost mark"), journal());
        Browser.find("[data-do=undo]").click();
        Browser.untilShown("#count-sweep", "Not filled in.");
    }

    private static String ddm(int azimuth) {
        return azimuth == 0 ? "0" : azimuth < 0 ? "210 in the 90" : "210 in the 150";
    }

    @Test
    void neitherOfTwoWindowsOverwritesTheOtherInSilence() {
        served.fill("transmit/feed-trim", "windows");
        String first = Browser.driver().getWindowHandle();
        Browser.driver().switchTo().newWindow(WindowType.TAB);
        served.fill("transmit/feed-trim", "windows");
        Browser.find("#f-target").sendKeys("0.5", Keys.TAB);
        Browser.untilShown("#s-target", "0.5 °");
        String second = Browser.driver().getWindowHandle();
        Browser.driver().switchTo().window(first);
        Browser.until("document.querySelector('#f-target').value === '0.5'"); // it looks by itself
        Browser.find("#f-target").sendKeys(Keys.END, "5"); // not yet entered
        Browser.driver().switchTo().window(second);
        Browser.find("#f-target").clear();
        Browser.find("#f-target").sendKeys("0.7", Keys.TAB);
        Browser.untilShown("#s-target", "0.7 °");
        Browser.driver().switchTo().window(first);
        Browser.find("#f-target").sendKeys(Keys.TAB);
        Browser.untilShown("#s-target", "Changed meanwhile in another window: it is “0.7” now");
        assertEquals("0.55", value("#f-target"));
        Browser.find("#s-target [data-do=mine]").click();
        Browser.untilShown("#s-target", "0.55 °");
        Browser.driver().switchTo().window(second);
        Browser.until("document.querySelector('#f-target').value === '0.55'");
        Browser.driver().close();
        Browser.driver().switchTo().window(first);
    }

    @Test
    void losesNothingWhenTheProgramIsStoppedAndStartedWhileSomebodyTypes() {
        served.fill("transmit/feed-trim", "stopped");
        int port = served.port();
        Browser.find("#f-velocityFactor").sendKeys("0.83", Keys.TAB);
        Browser.untilShown("#s-velocityFactor", "0.83");
        Browser.find("#f-target").sendKeys("0.");
        served.stop();
        Browser.find("#f-target").sendKeys("7", Keys.TAB);
        Browser.untilShown("#notice", "does not answer");
        Browser.find("#f-resolution").sendKeys("0.5", Keys.TAB);
        assertFalse(journal().contains("0.7"), journal());
        served.start(port);
        Browser.untilShown("#notice", "Open the address that it printed");
        String waiting = Browser.driver().getWindowHandle();
        Browser.driver().switchTo().newWindow(WindowType.TAB).get(served.key());
        Browser.driver().close();
        Browser.driver().switchTo().window(waiting);
        Browser.untilShown("#s-target", "0.7 °");
        Browser.untilShown("#s-resolution", "0.5 °");
        assertEquals("0.83", value("#f-velocityFactor"));
        Browser.until("document.querySelector('#notice').innerText === ''");
        assertTrue(journal().contains("0.7"), journal());
    }

    @Test
    void scriptInWhatIsTypedIsShownAndNotRun() {
        served.fill("array/prediction", "script");
        String script = "<img src=x onerror=\"document.title='run'\">";
        Browser.find("#f-arrayFile").sendKeys(script, Keys.TAB);
        Browser.untilShown("#s-arrayFile", script);
        served.fill("array/prediction", "script");
        assertEquals(script, value("#f-arrayFile"));
        assertFalse(Browser.driver().getTitle().equals("run"));
    }
}
