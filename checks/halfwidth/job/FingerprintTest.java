package halfwidth.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.approval.Role;
import halfwidth.page.Filled;
import halfwidth.page.Page;
import halfwidth.page.Pages;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a signature is given for: all that the sheet shows. */
class FingerprintTest {
    private static final Visit VISIT = new Visit("sweep/width", "");

    @TempDir private Path folder;
    private Job job;

    @BeforeEach
    void fillIn() {
        job = Job.create(folder.resolve("job"), Map.of());
        enter("length", "(300 ± 0.02) m");
        enter("remark", "dry");
        job.enter(
                JobPages.WIDTH,
                "",
                List.of(cell("azimuth", "1", ""), cell("near", "", "lost mark")));
    }

    private void enter(String input, String typed) {
        job.enter(JobPages.WIDTH, "", List.of(Change.to(Place.input(input), typed)));
    }

    private static Change cell(String column, String typed, String reason) {
        return new Change(Place.cell("sweep", 1, column), typed, Optional.empty(), reason);
    }

    private String content() {
        return job.content(JobPages.WIDTH, "");
    }

    @Test
    void isAnotherWithAnotherValueUncertaintyTextUnitOrReason() {
        List<Runnable> changes =
                List.of(
                        () -> enter("length", "(301 ± 0.02) m"),
                        () -> enter("length", "(300 ± 0.2) m"),
                        () -> enter("length", "300 m"),
                        () -> enter("length", "(0.3 ± 0.00002) km"),
                        () -> enter("remark", "wet"),
                        () ->
                                job.enter(
                                        JobPages.WIDTH,
                                        "",
                                        List.of(cell("near", "", "under water"))),
                        () -> job.enter(JobPages.WIDTH, "", List.of(cell("near", "", ""))));
        String before = content();
        for (Runnable change : changes) {
            change.run();
            assertNotEquals(before, content());
            job.undo(Optional.of(VISIT));
            assertEquals(before, content(), "taken back");
        }
    }

    @Test
    void isAnotherWithAnotherTextOfThePage() {
        String text = JobPages.WIDTH.text().replace("# Trial", "# Trials");
        Page other = Pages.parse(VISIT.page(), Path.of("w.md"), text);
        assertNotEquals(content(), job.content(other, ""));
    }

    /** Computed here as programs before 1.1 did: the page's text, then name, length, value. */
    @Test
    void ofAnOlderProgramIsStillReadAsThatOfARun() throws Exception {
        Filled filled = job.filled(JobPages.WIDTH, "").filled();
        String text =
                JobPages.WIDTH.text()
                        + "length:5:300.0\nremark:3:dry\nsweep:0:\n:3:1.0\n:0:\n:0:\n\n";
        byte[] sum =
                MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
        String older = HexFormat.of().formatHex(sum);
        assertTrue(Fingerprint.isOf(older, filled, job.reasons(VISIT)));
        job.state(new Fact.Ran(VISIT, Outcome.of(Outcome.Word.RAN), older));
        Pages pages = JobPages.written(folder.resolve("pages"), JobPages.WIDTH);
        assertEquals("ran", job.standing(VISIT, pages).words());
        enter("length", "301");
        assertEquals("out of date", job.standing(VISIT, pages).words());
    }

    /** It cannot be proved that no uncertainty was changed since, so it heads nothing. */
    @Test
    void aSignatureUnderAnOlderOneIsShownAsForAnEarlierState() {
        Filled filled = job.filled(JobPages.WIDTH, "").filled();
        job.state(new Fact.Ran(VISIT, Outcome.of(Outcome.Word.RAN), "f00"));
        job.state(new Fact.Recorded(VISIT, "r.html", "abc", ""));
        job.state(new Fact.Signed(VISIT, "r.html", "abc", Role.CHECKED, "R. Viewer", ""));
        assertFalse(job.heading(filled, "").containsKey("Checked by"));
        String words = job.approval(VISIT, content()).words().toString();
        assertTrue(words.contains("checked by R. Viewer"), words);
        assertTrue(words.contains("for an earlier state"), words);
    }
}
