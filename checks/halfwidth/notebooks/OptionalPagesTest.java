package halfwidth.notebooks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import halfwidth.page.Column;
import halfwidth.page.Field;
import halfwidth.page.Filled;
import halfwidth.page.Page;
import halfwidth.page.Pages;
import halfwidth.page.Part;
import halfwidth.run.Budget;
import halfwidth.run.OpenPage;
import halfwidth.run.Outcome;
import halfwidth.run.Run;
import halfwidth.run.Script;
import halfwidth.run.Values;
import halfwidth.run.Workshop;
import halfwidth.show.Answer;
import halfwidth.show.Verdict;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Every page that says that something may be left blank is done without it. */
@Tag("long")
class OptionalPagesTest {
    private static final Pages PAGES = new Pages(Path.of("notebooks"));
    private static final Workshop WORKSHOP = Workshop.withoutSpare(Budget.USUAL);

    @AfterAll
    static void close() {
        WORKSHOP.close();
    }

    private static boolean hasOptional(Page page) {
        return page.fields().stream().anyMatch(Field::optional)
                || page.readings().stream().anyMatch(Part.Readings::optional)
                || page.readings().stream()
                        .flatMap(table -> table.columns().stream())
                        .anyMatch(Column::optional);
    }

    /** The worked example without some inputs, tables and columns. */
    private static Filled without(Page page, Predicate<String> blank) {
        Filled filled = Filled.none(page);
        for (Field field : page.fields()) {
            if (!(field.optional() && blank.test(field.name()))) {
                filled = filled.with(field.name(), field.example());
            }
        }
        for (Part.Readings table : page.readings()) {
            if (!(table.optional() && blank.test(table.name()))) {
                filled = filled.withReadings(table.name(), rows(table, blank));
            }
        }
        return filled;
    }

    private static List<List<String>> rows(Part.Readings table, Predicate<String> blank) {
        return table.example().stream()
                .map(
                        row ->
                                IntStream.range(0, row.size())
                                        .mapToObj(i -> isLeft(table, i, blank) ? "" : row.get(i))
                                        .toList())
                .toList();
    }

    private static boolean isLeft(Part.Readings table, int column, Predicate<String> blank) {
        Column heading = table.columns().get(column);
        return heading.optional() && blank.test(heading.name());
    }

    private static Run run(Filled filled) {
        try (OpenPage open = WORKSHOP.open(Script.of(filled.page()))) {
            return open.run(Values.of(filled));
        }
    }

    private static long notJudged(Page page, Run run) {
        return Answer.of(page, run).stream()
                .filter(answer -> answer.verdict() == Verdict.NOT_JUDGED)
                .count();
    }

    @TestFactory
    Stream<DynamicTest> nothingWaitsFailsOrStaysUnjudgedForWantOfIt() {
        return PAGES.names().stream()
                .map(PAGES::find)
                .filter(OptionalPagesTest::hasOptional)
                // An alarm needs one of the two; a comparison without a prediction an earlier
                // sweep.
                .filter(page -> !page.name().equals("monitor/alarm-points"))
                .filter(page -> !page.name().equals("sweep/comparison"))
                .map(page -> dynamicTest(page.name(), () -> isDoneWithout(page)));
    }

    private static void isDoneWithout(Page page) {
        Run example;
        Run run;
        try (OpenPage open = WORKSHOP.open(Script.of(page))) {
            example = open.run(Values.of(Filled.example(page)));
            run = open.run(Values.of(without(page, name -> true)));
        }
        for (Run.Ran ran : run.steps()) {
            assertTrue(
                    ran.outcome() instanceof Outcome.Done
                            || ran.outcome() instanceof Outcome.Skipped,
                    () -> page.file() + ":" + ran.step().line() + ": " + ran.outcome());
        }
        assertEquals(notJudged(page, example), notJudged(page, run));
    }

    private static Answer answer(Page page, Run run, String name) {
        return Answer.of(page, run).stream()
                .filter(answer -> answer.result().name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aResultThatRestsOnItIsBlankAndSaysWhy() {
        Page page = PAGES.find("site/course-geometry");
        Answer answer = answer(page, run(without(page, name -> true)), "inUseSensitivity");
        assertEquals(Verdict.BLANK, answer.verdict());
        assertEquals("not filled in: optional (widthInUse)", answer.ruling().words());
        assertEquals("", answer.shownValue());
    }

    @Test
    void aGroundCheckWithoutAReferenceIsJudgedOnTheRest() {
        Page page = PAGES.find("sweep/ground-check");
        Run run = run(without(page, name -> true));
        Answer answer = answer(page, run, "worstToReference");
        assertEquals(Verdict.BLANK, answer.verdict());
        assertEquals("not filled in: optional", answer.ruling().words());
        assertTrue(!answer(page, run, "notJudged").shownValue().contains("reference"));
    }

    @Test
    void thePhaseConstantIsTheLeastUncertainOfTheWaysThatAreFilledIn() {
        Page page = PAGES.find("lines/phase-constant");
        List<String> slope =
                List.of(
                        "slope",
                        "slopeMeasurement",
                        "slopePhaseStep",
                        "lineLength",
                        "lengthUncertainty");
        Run withoutSlope = run(without(page, slope::contains));
        assertEquals("trial cuts", answer(page, withoutSlope, "best").shownValue());
        assertEquals(
                answer(page, withoutSlope, "trialPerInch").number(),
                answer(page, withoutSlope, "bestPerInch").number());
        Run sheetAlone = run(without(page, name -> true));
        // By hand: 360 · 110.30e6 · 0.0254/(299792458 · 0.85) = 3.958 °/in.
        assertEquals("3.958", answer(page, sheetAlone, "bestPerInch").shownValue());
        assertTrue(
                answer(page, sheetAlone, "advice")
                        .shownValue()
                        .endsWith("nothing was measured to hold it against."));
    }

    @Test
    void aStationOfOneCarrierHasNoClearanceToModulate() {
        Page page = PAGES.find("transmit/modulation");
        Filled filled =
                Filled.example(page)
                        .with("carriers", "one")
                        .withReadings(
                                "depths",
                                List.of(
                                        List.of("1", "course", "19.9", "20.1", "2 in the 150"),
                                        List.of("2", "course", "20.2", "19.9", "3 in the 90")));
        Run run = run(filled);
        assertEquals(0, notJudged(page, run));
        assertEquals(Verdict.BLANK, answer(page, run, "sumClearance1").verdict());
    }
}
