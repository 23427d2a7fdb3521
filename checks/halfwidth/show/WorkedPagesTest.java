package halfwidth.show;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.engine.PageHere;
import halfwidth.page.Filled;
import halfwidth.page.Page;
import halfwidth.page.Pages;
import halfwidth.run.Budget;
import halfwidth.run.OpenPage;
import halfwidth.run.Outcome;
import halfwidth.run.Run;
import halfwidth.run.Script;
import halfwidth.run.Shown;
import halfwidth.run.Values;
import halfwidth.run.Workshop;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Every numeric step of every shipped page, as a reviewer gets to see it. */
@Tag("long")
class WorkedPagesTest {
    private record OnPage(String page, PageHere here, WorkedStep step) {
        private String words() {
            return page + ":" + step.step().line() + " " + step.text();
        }
    }

    private record RowsOnPage(String page, PageHere here, WorkedRows rows) {
        private String words() {
            return page + ":" + rows.step().line() + " " + String.join("\n    ", rows.text());
        }
    }

    /** A method with a loop, or one too long to be read as a formula, is shown in Java alone. */
    private static final int FEW = 10;

    private static final List<OnPage> STEPS = new ArrayList<>();
    private static final List<RowsOnPage> ROWS = new ArrayList<>();
    private static int numeric;

    @BeforeAll
    static void worksEveryPage() throws Exception {
        try (Workshop workshop = Workshop.withoutSpare(Budget.USUAL)) {
            for (Page page : new Pages(Path.of("notebooks")).all()) {
                try (OpenPage open = workshop.open(Script.of(page))) {
                    Values values = Values.of(Filled.example(page));
                    Run run = open.work(values);
                    PageHere here = PageHere.of(Script.of(page), values);
                    run.steps().forEach(ran -> take(page, here, run, ran));
                }
            }
        }
    }

    private static void take(Page page, PageHere here, Run run, Run.Ran ran) {
        WorkedStep.of(run, ran).ifPresent(step -> STEPS.add(new OnPage(page.name(), here, step)));
        WorkedRows.of(run, ran).forEach(rows -> ROWS.add(new RowsOnPage(page.name(), here, rows)));
        boolean number =
                ran.outcome() instanceof Outcome.Done done
                        && (done.value() instanceof Shown.Real
                                || done.value() instanceof Shown.Measured)
                        && !ran.step().unit().isEmpty();
        numeric += number ? 1 : 0;
    }

    @Test
    void everyNumericStepIsAWorkedStep() {
        long shown =
                STEPS.stream()
                        .filter(
                                one ->
                                        one.step().value() instanceof Shown.Real
                                                || one.step().value() instanceof Shown.Measured)
                        .filter(one -> !one.step().step().unit().isEmpty())
                        .count();
        assertEquals(numeric, shown);
        assertTrue(shown > 500, shown + " steps");
    }

    @Test
    void theUnitsOfNineteenInTwentyAreProved() {
        List<OnPage> open =
                STEPS.stream().filter(one -> !one.step().worked().proof().proved()).toList();
        System.out.printf(
                "units of %s of %s steps proved; not of:%n",
                STEPS.size() - open.size(), STEPS.size());
        open.forEach(
                one ->
                        System.out.println(
                                one.page()
                                        + ":"
                                        + one.step().step().line()
                                        + " "
                                        + one.step().step().name()
                                        + ": "
                                        + one.step().worked().proof().why()));
        assertTrue(open.size() <= 0.05 * STEPS.size(), open.size() + " of " + STEPS.size());
    }

    @Test
    void theNumbersShownGiveTheResultShownForEveryStep() {
        Tally tally = new Tally();
        STEPS.forEach(one -> tally.add(one.words(), one.here(), Displayed.of(one.step())));
        tally.print("steps");
        assertEquals("", tally.wrong());
        assertEquals("", tally.not());
        assertTrue(tally.byMethods() <= FEW, tally.byMethods() + " rest on what is not shown");
    }

    @Test
    void theNumbersShownForAMethodGiveItsValue() {
        Tally tally = new Tally();
        for (OnPage one : STEPS) {
            for (NumbersPut.Defined method : one.step().methods()) {
                Displayed.of(one.step(), method)
                        .ifPresent(
                                shown ->
                                        tally.add(
                                                one.words() + "\n    " + shown.text(),
                                                one.here(),
                                                Optional.of(shown)));
            }
        }
        tally.print("methods called once");
        assertEquals("", tally.wrong());
        assertTrue(tally.again() > 30, tally.again() + " worked out again");
    }

    @Test
    void theConditionsShownWereMetAsSaid() {
        int conditions = 0;
        List<String> wrong = new ArrayList<>();
        for (OnPage one : STEPS) {
            for (NumbersPut.Branch branch : one.step().branches()) {
                Displayed shown = Displayed.of(one.step()).orElseThrow();
                TermEvaluator evaluator = new TermEvaluator(one.here(), shown, null, 0);
                conditions++;
                if (!evaluator.of(branch.numbers()).equals(branch.held())) {
                    wrong.add(one.words() + "\n    " + branch.words());
                }
            }
        }
        System.out.printf("%s conditions found as said%n", conditions - wrong.size());
        assertEquals("", String.join("\n", wrong));
        assertTrue(conditions > 30, conditions + " conditions");
    }

    @Test
    void theNumbersShownForARowGiveItsResult() {
        Tally tally = new Tally();
        for (RowsOnPage one : ROWS) {
            for (WorkedRows.OneRow row : one.rows().shown()) {
                for (WorkedRows.Came came : row.numbers()) {
                    tally.add(
                            row.label() + " of " + one.words(),
                            one.here(),
                            Displayed.of(one.rows(), row, came));
                }
            }
        }
        tally.print("numbers of rows");
        assertEquals("", tally.wrong());
        assertTrue(tally.again() > 450, tally.again() + " worked out again");
    }

    @Test
    void aFormulaThatIsWrongInOnePlaceDoesNotGiveTheResult() {
        Noticed noticed = new Noticed();
        for (OnPage one : STEPS) {
            List<WorkedStep> ofPage =
                    STEPS.stream()
                            .filter(other -> other.page().equals(one.page()))
                            .map(OnPage::step)
                            .toList();
            Displayed.of(one.step())
                    .ifPresent(shown -> noticed.add(one.words(), one.here(), shown, ofPage));
        }
        noticed.print();
        assertEquals("", noticed.seldom());
        assertTrue(noticed.made() > 3000, noticed.made() + " wrong formulas");
    }
}
