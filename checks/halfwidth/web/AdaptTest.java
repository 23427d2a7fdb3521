package halfwidth.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.job.Visit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;

/** An engineer who changes steps where they stand, in Chromium. */
@ExtendWith(Browser.class)
@Tag("long")
class AdaptTest {
    private static final String PAGE = "site/lost-mark";

    /** Beside the invented 0.031 and 0.018 of the worked example, to be seen at once. */
    private static final String STEP = "double stepOfMine = 2.5 * 4; // m";

    private static Served served;
    private static String shipped;

    @BeforeAll
    static void serve() throws IOException {
        served = Served.scratch();
        shipped = Files.readString(Served.NOTEBOOKS.resolve(PAGE + ".md"));
    }

    @AfterAll
    static void end() {
        served.close();
    }

    /** As it is shipped, with nothing typed before. */
    @BeforeEach
    void startAnew() throws IOException {
        Files.deleteIfExists(copy());
        served.open("/");
        Browser.run("localStorage.clear()");
        open();
    }

    private void open() {
        served.open(Address.of("/adapt", new Visit(PAGE, "")));
        Browser.until("document.querySelector('.item.java') !== null");
    }

    private Path copy() {
        return served.folder().resolve("pages").resolve(PAGE + ".md");
    }

    /** Presses a button of the item that holds some text, and returns the field that opens. */
    private static WebElement field(String holding, String how) {
        Browser.run(
                "[...document.querySelectorAll('.item')].find(i =>"
                        + " i.dataset.source.includes(arguments[0]))"
                        + ".querySelector(`[data-how=\"${arguments[1]}\"]`).click()",
                holding,
                how);
        return Browser.driver().switchTo().activeElement();
    }

    private static void untilTried() {
        Browser.until(
                "document.querySelector('.change .trial') !== null"
                        + " && document.querySelector('#busy').hidden");
    }

    private static void keep() {
        Browser.find(".change .hands button[type=submit]").click();
        Browser.until(
                "document.querySelector('.change') === null"
                        + " && document.querySelector('.item.java') !== null");
    }

    @Test
    void aStepThatFailsSaysSoUnderItsLineAndOneThatWorksIsKeptInTheJob() throws IOException {
        String first = firstStep();
        WebElement field = field(first, "after");
        field.sendKeys("double stepOfMine = 2.5 * nothing; // m");
        untilTried();
        Browser.untilShown(".step-editor-problems", "nothing");
        assertEquals("true", field.getAttribute("aria-invalid"));
        field.sendKeys(Keys.chord(Keys.CONTROL, "a"), STEP);
        Browser.until("document.querySelectorAll('.step-editor-problems li').length === 0");
        Browser.untilShown(".change .outcome", "10 m");
        Browser.untilShown(".change .outcome", "No result of the page changes.");
        assertFalse(Files.exists(copy()), "nothing is kept before it is said so");
        keep();
        assertEquals(shipped.replace(first + "\n", first + "\n" + STEP + "\n"), kept());
        assertEquals(shipped, Files.readString(Served.NOTEBOOKS.resolve(PAGE + ".md")));
        Browser.untilShown("main", "the job’s own copy");
    }

    private String kept() throws IOException {
        return Files.readString(copy());
    }

    /** The first step of the page that stands on a line of its own and has a unit. */
    private String firstStep() {
        return shipped.lines()
                .filter(line -> line.matches("double \\w+ = .*; // \\S+"))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aChangedStepShowsWhichResultsMoveAndWhichChecksNoLongerHold() {
        String step = firstStep();
        String name = step.split(" ")[1];
        WebElement field = field(step, "replace");
        field.sendKeys(
                Keys.chord(Keys.CONTROL, "a"),
                "double " + name + " = 12345" + step.substring(step.indexOf(";")));
        untilTried();
        Browser.untilShown(".change .outcome", "What changes");
        Browser.untilShown(".change .outcome", "Checks, with the worked example: ");
        Browser.until("document.querySelector('.change .outcome .warning') !== null");
    }

    @Test
    void whatWasTypedAndNotKeptIsThereAgainWhenTheViewIsOpenedAnew() {
        field(firstStep(), "after").sendKeys(STEP);
        untilTried();
        open();
        Browser.until("document.querySelector('.change textarea')?.value === arguments[0]", STEP);
        Browser.untilShown(".change .outcome", "10 m");
    }

    @Test
    void aPageChangedInAnotherEditorIsShownByItselfAndWhatIsTypedStays() throws IOException {
        field(firstStep(), "after").sendKeys(STEP);
        untilTried();
        Files.createDirectories(copy().getParent());
        Files.writeString(copy(), shipped.replaceFirst("# .*", "# Another title"));
        Browser.untilShown("h1", "Another title");
        Browser.until("document.querySelector('.change textarea')?.value === arguments[0]", STEP);
    }

    @Test
    void aStepThatFailsIsKeptOnlyWhenThatIsSaid() throws IOException {
        field(firstStep(), "after").sendKeys("double stepOfMine = 2.5 * nothing; // m");
        untilTried();
        Browser.untilShown(".step-editor-problems", "nothing");
        assertFalse(Browser.text(".change .outcome").contains("No result of the page changes."));
        Browser.find(".change .hands button[type=submit]").click();
        Browser.untilShown(".change .outcome", "With this change line ");
        assertFalse(Files.exists(copy()));
        Browser.find(".change .outcome button[value=agreed]").click();
        Browser.until("document.querySelector('.change') === null");
        assertTrue(kept().contains("2.5 * nothing"), kept());
    }

    @Test
    void aLineThatIsChangedElsewhereStandsBesideWhatWasTypedForIt() throws IOException {
        String step = firstStep();
        String mine = step.substring(0, step.indexOf(";")) + " + 0.001; // m";
        WebElement field = field(step, "replace");
        field.sendKeys(Keys.chord(Keys.CONTROL, "a"), mine);
        untilTried();
        String other = step.replaceFirst("; // ", " * 1; // ");
        Files.createDirectories(copy().getParent());
        Files.writeString(copy(), shipped.replace(step, other));
        Browser.untilShown(".gone", "were changed meanwhile");
        assertEquals(mine, Browser.run("return document.querySelector('.gone textarea').value"));
        assertEquals(
                other,
                Browser.run(
                        "return document.querySelector('.gone').nextElementSibling.dataset.source"),
                "what stands there now is next to it");
        Browser.find(".gone .hands button").click();
        Browser.until("document.querySelector('.change textarea')?.value === arguments[0]", mine);
        untilTried();
        keep();
        assertEquals(shipped.replace(step, mine), kept());
    }

    @Test
    void aCopyWhoseChecksFailSaysSoWhereverItIsUsed() throws IOException {
        int end = shipped.indexOf("```", shipped.indexOf("```java check\n") + 14);
        String wrong = "agrees(1, 2, 1e-9); // on purpose\n";
        Files.createDirectories(copy().getParent());
        Files.writeString(copy(), shipped.substring(0, end) + wrong + shipped.substring(end));
        served.fill(PAGE, "of a copy");
        String warning = "checks fail: 1 of ";
        Browser.untilShown("#top .copy.broken", warning);
        for (String view : java.util.List.of("/review", "/record")) {
            served.open(Address.of(view, new Visit(PAGE, "of a copy")));
            Browser.untilShown(".copy.broken", warning);
        }
        served.open("/");
        Browser.untilShown("main", "the job’s own copy");
    }

    @Test
    void anInputAndACheckAreAddedWhereTheyBelong() throws IOException {
        String inputs = shipped.substring(shipped.indexOf("```csv inputs\n") + 14);
        String lastRow = inputs.substring(0, inputs.indexOf("\n```"));
        lastRow = lastRow.substring(lastRow.lastIndexOf('\n') + 1);
        String row = "spareTape,m,number,3.5,0,10,A second tape";
        field(lastRow, "after").sendKeys(row);
        untilTried();
        keep();
        String check = "agrees(spareTape, 3.5, 1e-9); // typed above";
        String anyCheck = shipped.substring(shipped.indexOf("```java check\n") + 14);
        field(anyCheck.substring(0, anyCheck.indexOf('\n')), "after").sendKeys(check);
        untilTried();
        Browser.untilShown(".change .outcome", "hold.");
        keep();
        assertTrue(kept().contains(lastRow + "\n" + row + "\n"), kept());
        assertTrue(kept().contains(check + "\n"), kept());
    }

    @Test
    void aLineThatWouldEndTheBlockIsRefusedAtItsLine() {
        field(firstStep(), "after").sendKeys("double a = 1; // m", Keys.ENTER, "```");
        untilTried();
        Browser.untilShown(".step-editor-problems", "would end the block");
        assertFalse(Files.exists(copy()));
    }

    @Test
    void aStepThatNeverEndsShowsHowFarItIsAndIsStoppedByHand() {
        WebElement field = field(firstStep(), "after");
        field.sendKeys("while (true) { Math.random(); }");
        // Longer than what was typed before it was whole may have taken.
        Browser.until(
                "/([5-9]|\\d\\d) s, at step/.test(document.querySelector('#busy').innerText)");
        Browser.find("#busy button").click();
        untilTried();
        Browser.untilShown(".step-editor-problems", "stopped by hand");
        assertEquals("while (true) { Math.random(); }", field.getAttribute("value"));
        field.sendKeys(Keys.chord(Keys.CONTROL, "a"), STEP);
        Browser.untilShown(".change .outcome", "10 m");
    }

    @Test
    void markupInAPageStaysText() {
        WebElement field = field(firstStep(), "after");
        field.sendKeys("String s = \"<img src=x onerror=document.title='taken'>\";");
        untilTried();
        Browser.untilShown(".change .outcome", "<img src=x");
        assertFalse(Browser.driver().getTitle().contains("taken"));
    }

    @Test
    void anAdaptedPageIsTakenBackToTheShippedOneAndTheCopyIsKept() throws IOException {
        field(firstStep(), "after").sendKeys(STEP);
        untilTried();
        keep();
        String adapted = kept();
        Browser.find("main details summary").click();
        Browser.find("form[action*='/shipped/'] button").click();
        Browser.untilShown("main", "A copy that was set aside is ");
        Browser.until("document.querySelector('.item.java') !== null");
        assertFalse(Files.exists(copy()));
        assertFalse(Browser.text("main").contains("stepOfMine"), Browser.text("main"));
        String name = Browser.text("main").replaceAll("(?s).*set aside is (\\S+) in.*", "$1");
        assertEquals(adapted, Files.readString(served.folder().resolve(name)));
    }
}
