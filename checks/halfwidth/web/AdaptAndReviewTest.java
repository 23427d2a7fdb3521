package halfwidth.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.job.Change;
import halfwidth.job.Fingerprint;
import halfwidth.job.Job;
import halfwidth.job.Place;
import halfwidth.page.Page;
import halfwidth.page.Pages;
import java.io.IOException;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** An engineer's change of a page's text, and a reviewer's look and signature. */
@Tag("long")
class AdaptAndReviewTest {
    private static final String PAGE = "lines/phase-constant";
    private static final String TEXT = "/text/" + PAGE + "?visit=";

    private static Served served;
    private static Wire friend;
    private static String shipped;

    @BeforeAll
    static void serve() throws IOException {
        served = Served.scratch(AdaptAndReviewTest::enter);
        friend = Wire.friend(served);
        shipped = Files.readString(Served.NOTEBOOKS.resolve(PAGE + ".md"));
    }

    @AfterAll
    static void end() {
        served.close();
    }

    @BeforeEach
    void startAnew() throws IOException {
        Files.deleteIfExists(adapted());
    }

    private static void enter(Job job) {
        Page page = new Pages(Served.NOTEBOOKS).find(PAGE);
        job.enter(page, "measured", List.of(Change.to(Place.input("frequency"), "110.3 MHz")));
    }

    private static List<String> records() throws IOException {
        Path folder = served.folder().resolve("records");
        if (!Files.exists(folder)) {
            return List.of();
        }
        try (var files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).toList();
        }
    }

    private Path adapted() {
        return served.folder().resolve("pages").resolve(PAGE + ".md");
    }

    private String change(String text, String seen) {
        return friend.post(
                TEXT,
                "text="
                        + URLEncoder.encode(text, StandardCharsets.UTF_8)
                        + "&seen="
                        + Fingerprint.of(seen));
    }

    /** The page with one more step in its first block of steps. */
    private String with(String step) {
        return shipped.replaceFirst("```java\n", "```java\n" + step + "\n");
    }

    @Test
    void aChangeThatFailsNamesTheLineAndOneThatWorksIsKeptInTheJob() throws IOException {
        int line = (int) shipped.substring(0, shipped.indexOf("```java\n")).lines().count() + 2;
        assertEquals(303, Wire.status(change(with("double extra = nothing + 1;"), shipped)));
        String failed = friend.get(TEXT);
        assertTrue(failed.contains("<p>Line " + line + ": "), failed);
        assertTrue(failed.contains("nothing"), failed);
        String right = with("double extra = 2 + 1; // 1");
        assertEquals(303, Wire.status(change(right, with("double extra = nothing + 1;"))));
        assertFalse(friend.get(TEXT).contains("class=\"failure\""));
        assertEquals(right, Files.readString(adapted()));
        assertEquals(shipped, Files.readString(Served.NOTEBOOKS.resolve(PAGE + ".md")));
        String review = friend.get("/review/" + PAGE + "?visit=");
        assertTrue(review.contains("= <strong>3</strong>"), review);
        assertTrue(review.contains("double extra = 2 + 1;"), review);
        assertFalse(review.contains("says the same as the shipped one"), review);
    }

    @Test
    void aTextThatIsNoPageStaysInTheWindowAndIsNotTakenOver() {
        String broken = shipped.replace("```java\n", "```jav\n");
        String answer = change(broken, shipped);
        assertEquals(200, Wire.status(answer));
        assertTrue(answer.contains("has no steps"), answer);
        assertTrue(answer.contains("```jav\n"), answer);
        assertFalse(Files.exists(adapted()));
    }

    @Test
    void aChangeUponAnOlderTextIsNotTakenOverInSilence() throws IOException {
        change(with("double first = 1;"), shipped);
        String answer = change(with("double second = 2;"), shipped);
        assertTrue(answer.contains("changed meanwhile"), answer);
        assertTrue(answer.contains("double second = 2;"), answer);
        assertTrue(Files.readString(adapted()).contains("double first"));
    }

    @Test
    void aPageChangedInAnotherEditorIsTheOneShown() throws IOException {
        String fill = "/fill/" + PAGE + "?visit=";
        assertTrue(friend.get(fill).contains("<h1>Phase constant</h1>"));
        Files.createDirectories(adapted().getParent());
        Files.writeString(adapted(), shipped.replace("# Phase constant", "# Another title"));
        assertTrue(friend.get(fill).contains("<h1>Another title</h1>"));
        Files.writeString(adapted(), "no page at all");
        String kept = friend.get(fill);
        assertTrue(kept.contains("<h1>Another title</h1>"), kept);
        assertTrue(friend.post(fill, "seen=").contains("cannot be read as it is now"));
    }

    @Test
    void aReviewerSeesStepsSourcesAndChecksAndSigns() throws IOException {
        String review = "/review/" + PAGE + "?visit=measured";
        String page = friend.get(review);
        assertTrue(page.contains("Different from the shipped page"), page);
        assertTrue(page.contains("Nothing: this page says the same as the shipped one."), page);
        assertTrue(page.matches("(?s).*Checks: (\\d+) of \\1 hold.*"), page);
        assertTrue(page.contains("<summary>halfwidth.localizer."), page);
        String form =
                "name=R.+Viewer&role=checked&remark=step+%3Ci%3E+checked"
                        + "&override=Only+the+frequency+is+known";
        assertEquals(303, Wire.status(friend.post("/sign/" + PAGE + "?visit=measured", form)));
        String signed = friend.get(review);
        assertTrue(signed.contains("checked: R. Viewer, despite "), signed);
        assertTrue(signed.contains("step &lt;i&gt; checked"), signed);
        assertTrue(served.journal().contains(",R. Viewer,"), served.journal());
        assertTrue(served.journal().contains(",step <i> checked,"), served.journal());
        assertTrue(records().stream().anyMatch(name -> name.endsWith(".html")), "a record");
    }

    @Test
    void signsForNobodyWithoutAName() throws IOException {
        List<String> before = records();
        assertEquals(
                409,
                Wire.status(
                        friend.post(
                                "/sign/" + PAGE + "?visit=measured",
                                "name=+&role=checked&remark=")));
        assertEquals(before, records());
    }

    @Test
    void aSheetOnWhichNothingIsFilledInIsNotSigned() throws IOException {
        List<String> before = records();
        String nothing = "othing is filled in on this sheet, so there is nothing to sign yet";
        String page = friend.get("/review/" + PAGE + "?visit=blank");
        assertTrue(page.contains(nothing), page);
        assertFalse(page.contains("<form method=\"post\" action=\"/sign/"), page);
        String answer =
                friend.post("/sign/" + PAGE + "?visit=blank", "name=R&role=checked&remark=");
        assertEquals(409, Wire.status(answer));
        assertTrue(answer.contains(nothing), answer);
        assertEquals(before, records());
    }

    /**
     * With a wrong factor on a step of the job's own copy, and nobody having prepared the sheet.
     */
    @Test
    void aWrongPageIsNotSignedAsCheckedAndWhatIsAgainstItIsSaid() throws IOException {
        change(shipped.replace("0.66), 5.0835, ", "0.66), 6.0835, "), shipped);
        List<String> before = records();
        String sign = "/sign/" + PAGE + "?visit=measured";
        String answer = friend.post(sign, "name=A.+Nother&role=checked&remark=send+back");
        assertEquals(409, Wire.status(answer), answer);
        assertTrue(answer.contains("checks that fail on the worked example: line "), answer);
        assertTrue(answer.contains("other than shipped at line "), answer);
        assertEquals(before, records());
        String review = friend.get("/review/" + PAGE + "?visit=measured");
        assertTrue(review.contains("Refused, unless it is mended or overridden:"), review);
        assertTrue(review.contains("I have looked at what differs"), review);
    }

    @Test
    void whatIsSentBackStandsOnTheListAtTheHeadAndAtItsFieldUntilItIsAnswered() {
        String visit = PAGE + "?visit=measured";
        String back = "name=R.+Viewer&at=frequency&remark=which+%3Ccrystal%3E";
        assertEquals(303, Wire.status(friend.post("/send-back/" + visit, back)));
        String said = "R. Viewer, at frequency: which &lt;crystal&gt;";
        assertTrue(friend.get("/").contains("sent back by " + said));
        String sheet = friend.get("/fill/" + visit);
        assertTrue(sheet.contains("<dt>Sent back by</dt><dd>" + said), sheet);
        String at = sheet.substring(sheet.indexOf("id=\"back-at-frequency\""));
        assertTrue(at.substring(0, at.indexOf("</div>")).contains(said), at);
        String sign = friend.post("/sign/" + visit, "name=P&role=prepared&remark=");
        assertEquals(409, Wire.status(sign), sign);
        String review = friend.get("/review/" + visit);
        String line = review.replaceAll("(?s).*name=\"to\" value=\"(\\d+)\".*", "$1");
        String answer = "to=" + line + "&name=P.+Reparer&text=the+new+one&view=/review";
        assertEquals(303, Wire.status(friend.post("/answer/" + visit, answer)));
        assertFalse(friend.get("/fill/" + visit).contains("Sent back by"));
        assertTrue(friend.get("/review/" + visit).contains("answered: P. Reparer: the new one"));
    }

    /** Typed while the page was still being compiled, and its window closed before the answer. */
    @Test
    void whatIsOnDiskAlreadyIsNotInConflictWithItself() {
        String entry = "name=frequency&row=0&column=&typed=110.5+MHz&seen=";
        String first = friend.post("/enter/" + PAGE + "?visit=reopened", entry);
        String again = friend.post("/enter/" + PAGE + "?visit=reopened", entry);
        for (String answer : List.of(first, again)) {
            assertTrue(answer.contains("data-seen=\"110.5 MHz\""), answer);
            assertFalse(answer.contains("Changed meanwhile"), answer);
            assertFalse(answer.contains("aria-invalid=\"true\""), answer);
        }
    }
}
