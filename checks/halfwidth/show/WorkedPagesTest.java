package halfwidth.show;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.engine.PageHere;
import halfwidth.formula.PlainFormula;
import halfwidth.formula.Term;
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
import java.util.OptionalDouble;
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
    void theNumbersShownGiveTheResultShown() {
        int byText = 0;
        int byTerms = 0;
        List<String> asTheyAre = new ArrayList<>();
        List<String> not = new ArrayList<>();
        List<String> wrong = new ArrayList<>();
        for (OnPage one : STEPS) {
            Optional<WorkedAgain.Display> display = WorkedAgain.Display.of(one.step());
            Optional<WorkedAgain> text = display.flatMap(WorkedAgain::byText);
            text.filter(again -> !again.same())
                    .ifPresent(again -> wrong.add(one.words() + "\n    text: " + again.found()));
            byText += text.isPresent() ? 1 : 0;
            if (display.isEmpty()) {
                not.add(one.words() + "\n    has no formula");
                continue;
            }
            try {
                WorkedAgain again = WorkedAgain.byTerms(one.here(), display.get());
                if (!again.same()) {
                    wrong.add(one.words() + "\n    terms: " + again.found());
                }
                if (text.isEmpty() && !again.asTheyAre().isEmpty()) {
                    asTheyAre.add(one.words() + "\n    " + again.asTheyAre());
                } else if (text.isEmpty()) {
                    byTerms++;
                }
            } catch (RuntimeException why) {
                not.add(one.words() + "\n    " + why);
            }
        }
        System.out.printf(
                "%s steps: %s by text, %s by terms, %s with undisplayed method, not %s; wrong %s%n",
                STEPS.size(), byText, byTerms, asTheyAre.size(), not.size(), wrong.size());
        asTheyAre.forEach(s -> System.out.println("ASIS " + s));
        not.forEach(s -> System.out.println("NOT " + s));
        assertEquals("", String.join("\n", wrong));
    }

    @Test
    void theNumbersShownForARowGiveItsResult() {
        int again = 0;
        int all = 0;
        List<String> wrong = new ArrayList<>();
        for (RowsOnPage one : ROWS) {
            for (WorkedRows.OneRow row : one.rows().shown()) {
                for (WorkedRows.Came came : row.numbers()) {
                    Optional<Boolean> same = came.numbers().flatMap(n -> same(n, came.value()));
                    all++;
                    again += same.isPresent() ? 1 : 0;
                    same.filter(agrees -> !agrees)
                            .ifPresent(no -> wrong.add(row.label() + " of " + one.words()));
                }
            }
        }
        System.out.printf(
                "%s of %s numbers of rows worked out again, of %s rules and loops%n",
                again, all, ROWS.size());
        assertEquals("", String.join("\n", wrong));
        assertTrue(again > 100, again + " worked out again");
    }

    /**
     * Whether a formula with numbers gives a result within the digits printed; empty where it holds
     * a call of a method, whose value stands as it is.
     */
    private static Optional<Boolean> same(Term numbers, Shown value) {
        OptionalDouble result = number(value);
        if (result.isEmpty()) {
            return Optional.empty();
        }
        try {
            SecondEvaluator.Worked worked = SecondEvaluator.of(PlainFormula.of(numbers));
            double apart = Math.abs(worked.value() - result.getAsDouble());
            double digits = SecondEvaluator.halfUnit(result.getAsDouble());
            return Optional.of(apart <= 1.01 * worked.within() + digits + 1e-12);
        } catch (IllegalArgumentException call) {
            return Optional.empty();
        }
    }

    private static OptionalDouble number(Shown value) {
        if (value instanceof Shown.Real real) {
            return OptionalDouble.of(real.value());
        }
        return value instanceof Shown.Whole whole
                ? OptionalDouble.of(whole.value())
                : OptionalDouble.empty();
    }
}
