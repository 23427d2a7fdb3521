package halfwidth.record;

import static org.junit.jupiter.api.Assertions.assertEquals;

import halfwidth.adapt.AdaptedPages;
import halfwidth.approval.Decision;
import halfwidth.approval.Evidence;
import halfwidth.approval.PageDifference;
import halfwidth.approval.Role;
import halfwidth.approval.Rule;
import halfwidth.job.Change;
import halfwidth.job.Job;
import halfwidth.job.Place;
import halfwidth.job.Visit;
import halfwidth.page.Filled;
import halfwidth.page.Page;
import halfwidth.page.Pages;
import halfwidth.run.Budget;
import halfwidth.run.OpenPage;
import halfwidth.run.Run;
import halfwidth.run.Script;
import halfwidth.run.Values;
import halfwidth.run.Workshop;
import halfwidth.show.Sheet;
import halfwidth.show.Stamp;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A sample of the combinations of {@code ApprovalsUnderFireTest} from end to end: entered, run,
 * recorded, signed and verified from the record's file alone.
 */
@Tag("long")
class ApprovedRecordsTest {
    private static final String NAME = "trial/double";
    private static final String TEXT =
            """
            # Double

            ```csv inputs
            name,unit,kind,example,default,least,most,label
            length,mm,number,5,,0,100,Length
            tape,,text,new,,,,Tape
            ```

            ```java
            double twice = 2 * length; // mm
            ```

            ```csv results
            name,unit,decimals,most,source,label
            twice,mm,1,12,invented for this test,Twice the length
            ```

            ```java check
            assert twice == 10 : "arithmetic";
            ```
            """;

    /**
     * A sheet that P. Reparer prepared, and what became of it.
     *
     * @param factor by which the page multiplies the length; that of the shipped page is 2
     * @param changed what is entered after it was prepared, as {@code name=typed}; "" for nothing
     * @param by who signs it as checked
     * @param override the reason that is stated for an override; "" for none
     * @param allowed whether that may be, by the words of the rule
     */
    private record Case(
            String factor,
            String length,
            String changed,
            String by,
            String override,
            boolean allowed) {}

    private static final String REASON = "Flown and accepted by the inspector";
    private static final List<Case> SAMPLE =
            List.of(
                    new Case("2", "5 ± 0.02", "", "R. Viewer", "", true),
                    new Case("2", "5 ± 0.02", "", "p reparer", "", false),
                    new Case("2", "5 ± 0.02", "", "p reparer", REASON, true),
                    new Case("2", "5 ± 0.02", "length=5 ± 0.2", "R. Viewer", "", false),
                    new Case("2", "5 ± 0.02", "length=5.1 ± 0.02", "R. Viewer", REASON, true),
                    new Case("2", "5 ± 0.02", "tape=worn", "R. Viewer", "", false),
                    new Case("2", "7", "", "R. Viewer", "", false),
                    new Case("2", "7", "", "R. Viewer", REASON, true),
                    new Case("2.02", "5", "", "R. Viewer", "", false),
                    new Case("2.02", "5", "", "R. Viewer", REASON, true),
                    new Case("(1 + 1)", "5", "", "R. Viewer", "", false),
                    new Case("(1 + 1)", "5", "", "R. Viewer", " . ", false));

    @TempDir private Path folder;
    private final Map<Page, OpenPage> open = new HashMap<>();
    private final List<String> disagreements = new ArrayList<>();
    private Workshop workshop;
    private Job job;

    @BeforeEach
    void create() throws IOException {
        workshop =
                Workshop.withoutSpare(
                        new Budget(Duration.ofMinutes(2), 256, Budget.USUAL.outputBytes()));
        job = Job.create(folder.resolve("job"), Map.of());
        Path shipped = folder.resolve("notebooks/" + NAME + ".md");
        Files.createDirectories(shipped.getParent());
        Files.writeString(shipped, TEXT);
    }

    @AfterEach
    void close() {
        open.values().forEach(OpenPage::close);
        workshop.close();
        job.close();
    }

    private SheetEvidence run(Page page, Visit visit) {
        Filled filled = job.filled(page, visit.name()).filled();
        OpenPage at = open.computeIfAbsent(page, one -> workshop.open(Script.of(one)));
        Run run = at.work(Values.of(filled));
        Stamp stamp = Stamp.now("1.0", page);
        Sheet sheet = new Sheet(filled, run, job.heading(filled, visit.name()), stamp);
        Run example = at.run(Values.of(Filled.example(page)));
        return new SheetEvidence(sheet, example, job.reasons(visit));
    }

    private Optional<PageDifference> difference(Page page) {
        return AdaptedPages.difference(folder.resolve("notebooks"), NAME, page.text());
    }

    private void enter(Page page, Visit visit, String input, String typed) {
        job.enter(page, visit.name(), List.of(Change.to(Place.input(input), typed)));
    }

    /** Writes a record and signs it if that may be; returns it, and whether it was signed. */
    private Signed sign(Page page, Visit visit, Signing signing) {
        SheetEvidence now = run(page, visit);
        Evidence evidence = now.evidence(job.isFilledIn(visit), difference(page));
        Path record = RecordFile.write(job, now.sheet(), visit.name());
        Decision decision = Signatures.decide(job, visit, signing, evidence, page);
        try {
            Signatures.sign(job, record, signing, evidence, page);
            return new Signed(record, true, decision.isAllowed());
        } catch (RecordRefused refusal) {
            return new Signed(record, false, decision.isAllowed());
        }
    }

    private record Signed(Path record, boolean signed, boolean decided) {}

    private void tryOut(Case one, Visit visit) {
        String text = TEXT.replace("2 * length", one.factor() + " * length");
        Page page = Pages.parse(NAME, Path.of(NAME + ".md"), text);
        enter(page, visit, "length", one.length());
        enter(page, visit, "tape", "new");
        Signed prepared =
                sign(page, visit, new Signing(Role.PREPARED, "P. Reparer", "", false, ""));
        agree(one, "prepared", true, prepared.signed());
        if (!one.changed().isEmpty()) {
            String[] change = one.changed().split("=");
            enter(page, visit, change[0], change[1]);
        }
        Signing signing = new Signing(Role.CHECKED, one.by(), "", false, one.override());
        Signed checked = sign(page, visit, signing);
        agree(one, "decided", one.allowed(), checked.decided());
        agree(one, "signed", one.allowed(), checked.signed());
        Map<String, String> heading = run(page, visit).sheet().heading();
        agree(one, "shown", one.allowed(), one.by().equals(heading.get("Checked by")));
        boolean overridden = one.allowed() && one.override().equals(REASON);
        String despite = heading.getOrDefault("Checked despite", "");
        agree(one, "override shown", overridden, despite.contains(REASON));
        verify(one, visit, checked.record());
    }

    private void verify(Case one, Visit visit, Path record) {
        Verification verified = Verification.of(ReadRecord.of(record), workshop);
        agree(one, "unchanged", true, verified.holds());
        Evidence evidence = verified.evidence(difference(verified.record().filled().page()));
        agree(one, "checks hold", !one.factor().equals("2.02"), evidence.checks().isEmpty());
        Rule rule = Signatures.standing(job, record, visit, evidence);
        boolean counts = rule.approval().checked().isPresent() && rule.doubts().isEmpty();
        agree(one, "verified", one.allowed(), counts);
    }

    private void agree(Case one, String what, boolean expected, boolean found) {
        if (expected != found) {
            disagreements.add(one + ": " + what + " is " + found);
        }
    }

    @Test
    void aSampleIsAllowedShownAndVerifiedFromItsFileAsTheRuleSays() {
        for (int i = 0; i < SAMPLE.size(); i++) {
            tryOut(SAMPLE.get(i), new Visit(NAME, "case " + i));
        }
        System.out.printf(
                "Approved records: %d cases from end to end, %d disagreements%n",
                SAMPLE.size(), disagreements.size());
        assertEquals(List.of(), disagreements);
    }
}
