package halfwidth.approval;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.approval.Event.Answered;
import halfwidth.approval.Event.SentBack;
import halfwidth.approval.Event.Signed;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A sheet that was sent back is neither prepared nor checked until that is answered. */
class SentBackTest {
    private static final OffsetDateTime NOON = OffsetDateTime.parse("2026-06-12T12:00:00Z");
    private static final Evidence SOUND =
            new Evidence("a", true, List.of(), List.of(), List.of(), List.of(), Optional.empty());

    private final List<Event> events = new ArrayList<>();

    private long sign(Role role, String by, String content) {
        events.add(
                new Signed(next(), NOON, by, role, content, "r.html", "", "", "", Keyed.WITHOUT));
        return events.size();
    }

    private long sendBack(String content) {
        events.add(new SentBack(next(), NOON, "R. Viewer", content, "line 4", "which source?"));
        return events.size();
    }

    private int next() {
        return events.size() + 1;
    }

    private Approval shown(String content) {
        return Approval.of(events, content);
    }

    private Rule rule() {
        return new Rule(SOUND, shown("a"), "a");
    }

    @Test
    void isNeitherPreparedNorCheckedAndIsNotSigned() {
        sign(Role.PREPARED, "P", "a");
        sign(Role.CHECKED, "C", "a");
        sendBack("a");
        assertTrue(shown("a").prepared().isEmpty());
        assertTrue(shown("a").checked().isEmpty());
        assertTrue(shown("a").words().contains("sent back by R. Viewer, at line 4: which source?"));
        assertTrue(
                shown("a")
                        .words()
                        .toString()
                        .contains("prepared by P, 2026-06-12, signed without a key, not before"));
        String heading = shown("a").heading().toString();
        assertEquals("{Sent back by=R. Viewer, at line 4: which source?}", heading);
        assertFalse(rule().prepare("P").isAllowed());
        assertFalse(rule().check("C", false, "The owner wants it in service").isAllowed());
    }

    /** Whoever alters a line of somebody's leaves a key that does not fit; that is no signature. */
    @Test
    void aSignatureWhoseKeyDoesNotFitIsNone() {
        Keyed fits = new Keyed("3f9a", true);
        Keyed wrong = new Keyed("3f9a", false);
        for (Keyed key : List.of(fits, wrong)) {
            events.clear();
            Role role = Role.PREPARED;
            events.add(new Signed(1, NOON, "P", role, "a", "r.html", "", "", "", key));
            assertEquals(key.fits(), shown("a").prepared().isPresent());
            String box = shown("a").heading().getOrDefault("Prepared with key", "");
            assertEquals(key.fits() ? "3f9a" : "", box);
            assertTrue(shown("a").words().toString().contains(key.words()));
            assertEquals(key.fits(), rule().check("C", false, "").isAllowed(), "nobody did");
            sendBack("b");
            events.add(new Signed(3, NOON, "P", role, "c", "r.html", "", "", "", key));
            assertEquals(key.fits() ? 0 : 1, shown("c").sentBack().size(), "nor an answer");
        }
    }

    @Test
    void anAnswerBringsBackWhoPreparedItButNotWhoCheckedIt() {
        sign(Role.PREPARED, "P", "a");
        sign(Role.CHECKED, "C", "a");
        long back = sendBack("a");
        assertFalse(shown("a").answer("", back, "Annex 10").isAllowed());
        assertFalse(shown("a").answer("P", back, " ").isAllowed());
        assertFalse(shown("a").answer("P", 1, "Annex 10").isAllowed());
        assertTrue(shown("a").answer("P", back, "Annex 10").isAllowed());
        events.add(new Answered(next(), NOON, "P", back, "Annex 10"));
        assertTrue(shown("a").prepared().isPresent());
        assertTrue(shown("a").checked().isEmpty());
        assertTrue(
                shown("a")
                        .words()
                        .toString()
                        .contains("checked by C, 2026-06-12, signed without a key, withdrawn"));
        assertFalse(rule().doubts().isEmpty(), "a record of it is not checked either");
        assertTrue(rule().check("C", false, "").isAllowed());
    }

    @Test
    void aChangedValueAnswersItOnceItWasPreparedAnew() {
        sign(Role.PREPARED, "P", "b");
        sendBack("b");
        assertFalse(shown("a").sentBack().isEmpty(), "changed, and not yet prepared");
        assertTrue(rule().prepare("P").isAllowed());
        sign(Role.PREPARED, "P", "a");
        assertTrue(shown("a").sentBack().isEmpty());
        assertTrue(shown("a").prepared().isPresent());
    }

    @Test
    void preparingTheSameAgainIsNoAnswer() {
        sendBack("a");
        sign(Role.PREPARED, "P", "a");
        assertFalse(shown("a").sentBack().isEmpty());
    }

    /** Else who checked it could become the one who prepared it as well. */
    @Test
    void preparingItAgainWithdrawsTheCheck() {
        sign(Role.PREPARED, "P", "a");
        sign(Role.CHECKED, "C", "a");
        sign(Role.PREPARED, "C", "a");
        assertTrue(shown("a").checked().isEmpty());
        assertFalse(rule().check("C", false, "").isAllowed());
    }

    @Test
    void namesAreTheSameWhateverTheirCaseSpacesAndPunctuation() {
        assertTrue(Names.same("A. Nother", "another"));
        assertTrue(Names.same("Weiß", "WEISS"));
        assertTrue(Names.same("Zoe\u0308 O'Hara", "ZOË OHARA"));
        assertFalse(Names.same("A. Nother", "B. Nother"));
        assertFalse(rule().prepare(" . ").isAllowed());
    }
}
