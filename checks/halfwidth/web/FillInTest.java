package halfwidth.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.job.Visit;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WindowType;
import org.openqa.selenium.print.PrintOptions;

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
        Browser.untilShown("#stands", "to do");
        assertTrue(journal().contains("2 1/4"), journal());
    }

    @Test
    void anEntryIsReadBackAtOnceAndARefusedOneStaysAsTyped() {
        served.fill("transmit/feed-trim", "read");
        Browser.find("#f-smallestCut").sendKeys("3.2 mm");
        Browser.untilShown("#s-smallestCut", "0.126 in (3.2 mm typed)");
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
    void whatWasEnteredTogetherIsTakenBackOnlyWhenThatIsSaidAndIsGoneFromTheScreen() {
        served.fill("transmit/feed-trim", "back");
        focus(1, "SBO cut");
        paste("0\t0\t-14\t-10\n0\t1.5\t-8\t-4\n");
        Browser.untilShown("#count-phasing", "2 rows, none missing.");
        type(Keys.chord(Keys.CONTROL, "z"));
        Browser.untilShown("#notice", "Take back 8 values entered together ");
        Browser.untilShown("#notice", "phasing, row 2, CSB cut = 1.5; and 2 more?");
        assertEquals("Take 8 values back", Browser.run("return document.activeElement.innerText"));
        Browser.find("[data-do=leave]").click();
        assertEquals("", Browser.text("#notice"));
        assertEquals("1.5", cell(2, "CSB cut"));
        Browser.find("[data-do=undo]").click();
        Browser.untilShown("#notice", "Take back 8 values");
        type(Keys.ENTER);
        Browser.untilShown("#notice", "Taken back: ");
        Browser.untilShown("#count-phasing", "Not filled in.");
        assertEquals(
                "",
                Browser.run(
                        "return [...document.querySelectorAll('td [data-entry]')]"
                                + ".map(cell => cell.value).join('')"));
    }

    @Test
    void aSingleEntryIsTakenBackAtOnce() {
        served.fill("transmit/feed-trim", "single");
        Browser.find("#f-target").sendKeys("0.5", Keys.TAB);
        Browser.untilShown("#s-target", "0.5");
        Browser.find("[data-do=undo]").click();
        Browser.untilShown("#notice", "Taken back: target = 0.5");
        Browser.until("document.querySelector('#f-target').value === ''");
    }

    @Test
    void aPastedLineThatNamesTheColumnsIsNoReading() {
        served.fill("transmit/feed-trim", "headed");
        focus(1, "SBO cut");
        paste("SBO cut [in]\tCSB cut\toffset 1\toffset 2\n0\t0\t-14\t-10\n");
        Browser.untilShown("#count-phasing", "1 row, none missing.");
        assertEquals("-14", cell(1, "offset 1"));
        assertTrue(Browser.text("#notice").contains("names the columns"), Browser.text("#notice"));
    }

    @Test
    void aRefusedCellKeepsItsReasonInSightAndAFileThatIsLoadedTakesItsPlace(@TempDir Path folder)
            throws IOException {
        Path file = folder.resolve("cuts.csv");
        Files.writeString(file, "SBO cut,CSB cut,offset 1,offset 2\n0,0,-4.5,-8\n");
        served.fill("transmit/feed-trim", "mended");
        focus(1, "offset 1");
        type("oops", Keys.TAB);
        Browser.untilShown("tr.why", "offset 1: ");
        type("-8", Keys.TAB);
        Browser.untilShown("#count-phasing", "1 row");
        Browser.untilShown("tr.why", "offset 1: ");
        // The total that is not typed yet is asked for as well.
        Browser.untilShown("[data-cell=phasing]", "2 entries are refused.");
        Browser.find("[data-load=phasing]").sendKeys(file.toString());
        Browser.untilShown("#count-phasing", "1 row, none missing.");
        assertEquals("-4.5", cell(1, "offset 1"));
        assertEquals("", Browser.text("[data-cell=phasing]"));
        assertEquals(0L, Browser.run("return document.querySelectorAll('tr.why').length"));
    }

    @Test
    void whatIsRefusedOfABlockSaysWhyBelowItsOwnRow() {
        served.fill("sweep/ground-check", "refused block");
        focus(1, "azimuth");
        paste(
                "-35\t254\t257 in the 90\n-25\t211 in the 90\t213 in the 90\n-20\t244\t246 in the 90\n");
        Browser.untilShown("[data-cell=sweep]", "2 entries are refused.");
        assertEquals(
                "transmitter 1: 254 may be thousandths or µA; type 254 in the 150, 254 in the 90"
                        + " or 254 µA",
                below(1));
        assertEquals("", below(2));
        assertTrue(below(3).startsWith("transmitter 1: 244 may be"), below(3));
        // Rows are counted, entered and walked through as if nothing stood between them.
        focus(1, "transmitter 1");
        type(Keys.chord(Keys.CONTROL, "a"), "254 in the 90", Keys.ENTER);
        assertEquals("sweep, row 2, transmitter 1", focused());
        Browser.until("document.querySelectorAll('tr.why').length === 1");
        assertEquals("", below(1));
        assertEquals("211 in the 90", cell(2, "transmitter 1"));
    }

    /** What is said between a row and the next one. */
    private static String below(int row) {
        return String.valueOf(
                Browser.run(
                        "const row = document.querySelector(`[data-row='${arguments[0]}']`)"
                                + ".closest('tr').nextElementSibling;"
                                + "return row?.matches('.why') ? row.innerText.trim() : ''",
                        row));
    }

    @Test
    void aQuestionAboutTakingBackGoesWhenSomethingElseIsEntered() {
        served.fill("sweep/ground-check", "question");
        focus(1, "azimuth");
        paste("-35\t254 in the 90\t257 in the 90\n");
        Browser.untilShown("#count-sweep", "1 row, none missing.");
        Browser.find("[data-do=undo]").click();
        Browser.untilShown("#notice", "Take back");
        Browser.find("#f-markDistance").sendKeys("300", Keys.TAB);
        Browser.until("document.querySelector('#f-markDistance').dataset.seen === '300'");
        assertEquals("", Browser.text("#notice"));
        // What another window enters makes it stale as well.
        focus(2, "azimuth");
        paste("-30\t211 in the 90\t213 in the 90\n");
        Browser.untilShown("#count-sweep", "2 rows, none missing.");
        Browser.find("[data-do=undo]").click();
        Browser.untilShown("#notice", "Take back");
        Browser.run(
                "return fetch(document.body.dataset.root"
                        + " + '/enter/sweep/ground-check?visit=question', {method: 'POST',"
                        + " body: new URLSearchParams({name: 'category', row: 0, column: '',"
                        + " typed: 'I', seen: ''})}).then((r) => r.status)");
        Browser.until("document.querySelector('#notice').textContent === ''");
    }

    @Test
    void aMissingReadingMayHaveAnyReasonInParentheses() {
        served.fill("sweep/ground-check", "reasons");
        focus(1, "azimuth");
        paste("-35\t254 in the 90\t257 in the 90\n-25\tunder water\t\n");
        Browser.untilShown("tr.why", "or as in (under water)");
        focus(2, "transmitter 1");
        type(Keys.chord(Keys.CONTROL, "a"), "(under water, 2 ft)", Keys.TAB);
        Browser.until(
                "document.querySelector('[data-row=\"2\"][placeholder=\"under water, 2 ft\"]')!==null");
        assertTrue(journal().contains("under water, 2 ft"), journal());
        assertEquals("", cell(2, "transmitter 1"));
    }

    @Test
    void everySheetSaysWhichVisitItIsOf() {
        served.fill("transmit/feed-trim", "course feed");
        assertTrue(Browser.text(".heading").contains("course feed"), Browser.text(".heading"));
        served.open(Address.of("/record", new Visit("transmit/feed-trim", "course feed")));
        assertTrue(Browser.text(".heading").contains("course feed"), Browser.text(".heading"));
        assertTrue(
                Browser.driver()
                        .getPageSource()
                        .replaceAll("\\\\0000[0-9a-f]{2} ", "·")
                        .contains("North Field· runway 09· course feed"),
                "in the margin of each printed page, too");
    }

    @Test
    void besideTheAnswersItIsSaidThatARefusedEntryDoesNotCount() {
        served.fill("transmit/feed-trim", "refused");
        Browser.find("#f-velocityFactor").sendKeys("oops", Keys.TAB);
        Browser.untilShown("#answers", "Not entered: Velocity factor");
        Browser.find("#f-velocityFactor").clear();
        Browser.find("#f-velocityFactor").sendKeys("0.83", Keys.TAB);
        Browser.until("document.querySelector('.refused-ones') === null");
    }

    /** Lays a block on the clipboard and pastes it into the cell that has the focus. */
    private static void paste(String block) {
        Browser.run(
                "const data = new DataTransfer();"
                        + "data.setData('text/plain', arguments[0]);"
                        + "document.activeElement.dispatchEvent(new ClipboardEvent('paste',"
                        + " { clipboardData: data, bubbles: true, cancelable: true }));",
                block);
    }

    private static void focus(int row, String column) {
        Browser.run(
                "document.querySelector("
                        + "`[data-row=\"${arguments[0]}\"][data-column=\"${arguments[1]}\"]`)"
                        + ".focus()",
                row,
                column);
    }

    private static String cell(int row, String column) {
        return value("[data-row=\"%s\"][data-column=\"%s\"]".formatted(row, column));
    }

    @Test
    void aPastedSweepKeepsItsMissingMarksAndTheirReasons() {
        served.fill("sweep/ground-check", "pasted");
        focus(1, "azimuth");
        // As a spreadsheet copies it: tabs, a mark without readings, one whose tone side is
        // missing.
        paste("-35\t254 in the 90\t257 in the 90\n-25\t\t\n-20\t0.244\t246 in the 90\n");
        Browser.untilShown("#count-sweep", "3 rows, 2 readings missing.");
        assertEquals("", cell(2, "transmitter 1"));
        assertEquals("246 in the 90", cell(3, "transmitter 2"));
        focus(2, "transmitter 1");
        type("lost mark", Keys.TAB);
        Browser.until(
                "document.querySelector('[data-row=\"2\"][placeholder=\"lost mark\"]')!==null");
        assertTrue(journal().contains("lost mark"), journal());
        Browser.untilShown("#count-sweep", "3 rows, 1 reading missing, 1 blank with a reason.");
        // A column alone, with a blank line for the mark that cannot be read.
        focus(1, "reference");
        paste("254 in the 90\n\n244 in the 90\n\n267 in the 90\n");
        Browser.untilShown("#count-sweep", "5 rows, ");
        assertEquals("", cell(2, "reference"));
        assertEquals("", cell(4, "reference"));
        assertEquals("267 in the 90", cell(5, "reference"));
        type(Keys.chord(Keys.CONTROL, "z"));
        Browser.until("document.querySelector('[data-do=take]') !== null");
        type(Keys.ENTER);
        Browser.untilShown("#count-sweep", "3 rows, ");
    }

    @Test
    void twoWindowsOnOneFieldNeverOverwriteEachOtherInSilence() {
        served.fill("transmit/feed-trim", "two");
        String first = Browser.driver().getWindowHandle();
        Browser.driver().switchTo().newWindow(WindowType.TAB);
        String second = Browser.driver().getWindowHandle();
        served.fill("transmit/feed-trim", "two");
        Browser.find("#f-target").sendKeys("0.7");
        Browser.driver().switchTo().window(first);
        Browser.find("#f-target").sendKeys("0.6", Keys.TAB);
        Browser.until("document.querySelector('#f-target').dataset.seen === '0.6'");
        Browser.driver().switchTo().window(second);
        Browser.find("#f-target").sendKeys(Keys.TAB);
        Browser.untilShown("#s-target", "it is “0.6” now. You typed “0.7”");
        assertEquals("0.7", value("#f-target"));
        Browser.find("#s-target [data-do=mine]").click();
        Browser.until("document.querySelector('#f-target').dataset.seen === '0.7'");
        Browser.driver().close();
        Browser.driver().switchTo().window(first);
        Browser.until("document.querySelector('#f-target').value === '0.7'");
    }

    @Test
    void aFileIsNotLoadedOverWhatAnotherWindowEnteredMeanwhile(@TempDir Path folder)
            throws IOException {
        Path file = folder.resolve("cuts.csv");
        Files.writeString(file, "SBO cut,CSB cut,offset 1,offset 2\n0,0,-4.5,-8\n0,1.5,-0.5,-4\n");
        served.fill("transmit/feed-trim", "load");
        // This window does not get to know what others change, which it asks for all the time.
        Browser.run(
                "window.asks = window.fetch; window.fetch = (to, how) =>"
                        + " String(to).startsWith('/fill/') ? new Promise(() => {})"
                        + " : window.asks(to, how)");
        String first = Browser.driver().getWindowHandle();
        Browser.driver().switchTo().newWindow(WindowType.TAB);
        served.fill("transmit/feed-trim", "load");
        focus(1, "offset 1");
        type("-7", Keys.TAB);
        Browser.until(
                "document.querySelector('[data-row=\"1\"][data-column=\"offset 1\"]').dataset.seen"
                        + " === '-7'");
        Browser.driver().close();
        Browser.driver().switchTo().window(first);
        Browser.find("[data-load=phasing]").sendKeys(file.toString());
        Browser.untilShown("#notice", "phasing, row 1, offset 1 was changed meanwhile");
        Browser.run("window.fetch = window.asks");
        Browser.until(
                "document.querySelector('[data-row=\"1\"][data-column=\"offset 1\"]').dataset.seen"
                        + " === '-7'");
        Browser.find("[data-load=phasing]").sendKeys(file.toString());
        Browser.untilShown("#count-phasing", "2 rows, none missing.");
        assertEquals("-4.5", cell(1, "offset 1"));
        assertEquals("", Browser.text("#notice"));
    }

    @Test
    void whatIsTypedWhileTheProgramIsStoppedIsEnteredWhenItRunsAgain() throws Exception {
        try (Served stopped = Served.scratch()) {
            stopped.fill("transmit/feed-trim", "stopped");
            int port = stopped.port();
            stopped.stop();
            Browser.find("#f-target").sendKeys("0.4", Keys.TAB);
            Browser.untilShown("#notice", "The program does not answer.");
            assertFalse(stopped.journal().contains("0.4"), stopped.journal());
            stopped.start(port);
            Browser.untilShown("#notice", "Open the address that it printed");
            assertEquals("0.4", value("#f-target"));
            String window = Browser.driver().getWindowHandle();
            Browser.driver().switchTo().newWindow(WindowType.TAB);
            Browser.driver().get(stopped.key());
            Browser.driver().close();
            Browser.driver().switchTo().window(window);
            Browser.until("document.querySelector('#f-target').dataset.seen === '0.4'");
            assertTrue(stopped.journal().contains("0.4"), stopped.journal());
            assertEquals("", Browser.text("#notice"));
        }
    }

    @Test
    void aScriptThatIsTypedStaysText() {
        String script = "<img src=x onerror=\"document.title='taken'\">";
        served.fill("record/facility-reference", "script");
        Browser.find("#f-station").sendKeys(script, Keys.TAB);
        Browser.untilShown("#s-station", "onerror");
        served.fill("record/facility-reference", "script");
        assertEquals(script, value("#f-station"));
        assertFalse(Browser.driver().getTitle().contains("taken"));
        served.open("/find?words=" + "%3Cimg%20src%3Dx%20onerror%3Dalert(1)%3E");
        assertEquals(0L, Browser.run("return document.querySelectorAll('main img').length"));
    }

    @Test
    void theRecordPrintsAsASheetOfItsOwn() {
        served.fill("transmit/feed-trim", "print");
        Browser.find("#f-frequency").sendKeys("110.30 MHz", Keys.TAB);
        Browser.untilShown("#s-frequency", "110\u202f300\u202f000 Hz");
        served.open(Address.of("/record", new Visit("transmit/feed-trim", "print")));
        String pdf =
                new String(
                        Base64.getDecoder()
                                .decode(Browser.driver().print(new PrintOptions()).getContent()),
                        StandardCharsets.ISO_8859_1);
        long pages = Pattern.compile("/Type\\s*/Page[^s]").matcher(pdf).results().count();
        assertTrue(pages >= 1 && pages <= 4, pages + " pages");
        assertTrue(
                Browser.text("body").contains("110\u202f300\u202f000 Hz"),
                "the record shows what was entered");
        assertEquals(0L, Browser.run("return document.querySelectorAll('.bar').length"));
    }
}
