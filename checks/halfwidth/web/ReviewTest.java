package halfwidth.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.job.Change;
import halfwidth.job.Job;
import halfwidth.job.Place;
import halfwidth.job.Visit;
import halfwidth.page.Pages;
import halfwidth.record.ReadRecord;
import halfwidth.record.ShownSheet;
import halfwidth.record.Verification;
import halfwidth.run.Budget;
import halfwidth.run.Workshop;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.openqa.selenium.Keys;

/** A reviewer at the review view, in Chromium. */
@ExtendWith(Browser.class)
@Tag("long")
class ReviewTest {
    private static final String PAGE = "site/course-geometry";

    private static Served served;

    @BeforeAll
    static void serve() {
        served = Served.scratch(ReviewTest::measure);
    }

    @AfterAll
    static void end() {
        served.close();
    }

    private static void measure(Job job) {
        List<Change> measured =
                Stream.of(
                                "category=I",
                                "rule=Annex 10",
                                "runwayLength=2750",
                                "displacement=0",
                                "setback=(310 ± 2) m",
                                "distanceUncertainty=2")
                        .map(one -> one.split("="))
                        .map(one -> Change.to(Place.input(one[0]), one[1]))
                        .toList();
        job.enter(new Pages(Served.NOTEBOOKS).find(PAGE), "", measured);
    }

    private static void open() {
        served.open(Address.of("/review", new Visit(PAGE, "")));
    }

    private static void work(String draws) {
        Browser.run("document.querySelector('[name=draws]').value = arguments[0]", draws);
        Browser.find("[data-trace] button").click();
    }

    @Test
    void whereAResultComesFromIsWorkedOutOnRequestAndWhatIsTypedStays() {
        open();
        Browser.find("#check [name=remark]").sendKeys("seen");
        work("1000");
        Browser.untilShown("main", "What moves ");
        // The distance is the setback and more, all else exact: its uncertainty is the setback's.
        Browser.untilShown("#trace-arrayToThreshold", "u = 2.0 m, mostly from setback");
        Browser.untilShown("#trace-arrayToThreshold", "1000 draws");
        Browser.until(
                "[...document.querySelectorAll('.step .uncertain')].some(p =>"
                        + " p.innerText.startsWith('u = 2.0 m to first order'))");
        assertEquals(
                "seen", Browser.run("return document.querySelector('#check [name=remark]').value"));
        assertEquals(
                0L,
                Browser.run(
                        "return [...document.querySelectorAll('.trace a')].filter(a =>"
                                + " !document.querySelector(a.getAttribute('href'))).length"));
    }

    @Test
    void tooFewDrawsAreRefusedInWords() {
        open();
        work("5");
        Browser.untilShown("#notice", "must be 0 for none, or 1000 to 100000");
    }

    private static void sign(String form, String name, String remark) {
        Browser.find("#" + form + " [name=name]").sendKeys(name);
        Browser.find("#" + form + " [name=remark]").sendKeys(remark);
        Browser.find("#" + form + " button").click();
    }

    /** Other values are another sheet: nobody has prepared or checked that. */
    @Test
    void whoSignedHeadsTheSheetItsRecordAndTheListUntilAValueIsChanged() throws IOException {
        open();
        sign("prepare", "P. Reparer", "");
        Browser.untilShown(".heading", "P. Reparer");
        sign("check", "R. Viewer", "by hand, at the mast");
        Browser.untilShown("main", "checked: R. Viewer, with key ");
        Browser.untilShown("main", "by hand, at the mast");
        assertTrue(served.journal().contains(",R. Viewer,"), served.journal());
        Browser.untilShown(".heading", "R. Viewer");
        try (Stream<Path> records = Files.list(served.folder().resolve("records"))) {
            List<Path> all = records.filter(file -> file.toString().endsWith(".html")).toList();
            boolean named = false;
            Budget budget = new Budget(Duration.ofMinutes(2), 256, Budget.USUAL.outputBytes());
            try (Workshop workshop = Workshop.withoutSpare(budget)) {
                for (Path record : all) {
                    ReadRecord read = ReadRecord.of(record);
                    assertEquals(
                            new ShownSheet(ShownSheet.How.SAME, List.of()),
                            Verification.of(read, workshop).shown());
                }
            }
            for (Path record : all) {
                named |= Files.readString(record).contains("<dt>Checked by</dt><dd>R. Viewer</dd>");
            }
            assertTrue(named, "the record that is signed names who signs it");
        }
        served.fill(PAGE, "");
        Browser.untilShown(".heading", "P. Reparer");
        Browser.find("#f-displacement").sendKeys("5", Keys.TAB);
        Browser.until("!document.querySelector('.heading').innerText.includes('P. Reparer')");
        served.open("/");
        Browser.untilShown("main", "prepared by P. Reparer");
        Browser.untilShown("main", "for an earlier state");
        served.fill(PAGE, "");
        Browser.find("[data-do=undo]").click();
        Browser.untilShown(".heading", "P. Reparer");
    }

    @Test
    void theSourceOfALibraryMethodIsOneClickAway() {
        open();
        Browser.until("document.querySelector('.calls a') !== null");
        Browser.run("document.querySelector('.calls a').click()");
        Browser.until(
                "document.querySelector('details.method[open], .method pre:target') !== null");
    }
}
