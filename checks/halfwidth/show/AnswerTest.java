package halfwidth.show;

import static org.junit.jupiter.api.Assertions.assertEquals;

import halfwidth.laws.Draw;
import halfwidth.laws.Law;
import halfwidth.page.Page;
import halfwidth.page.Part;
import halfwidth.page.Result;
import halfwidth.page.ShownWhen;
import halfwidth.run.Outcome;
import halfwidth.run.Run;
import halfwidth.run.Run.Ran;
import halfwidth.run.Shown;
import halfwidth.run.Step;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class AnswerTest {
    private static final String NONE = "";

    /** A result v of two decimals with limits, its uncertainty in u. */
    private static Result result(String least, String most) {
        return new Result(
                9,
                "v",
                "mm",
                2,
                given(least),
                given(most),
                "handbook",
                Optional.of("u"),
                "V",
                NONE);
    }

    private static Optional<String> given(String limit) {
        return Optional.of(limit).filter(text -> !text.isEmpty());
    }

    private static Answer answer(Result result, Map<String, Shown> finals, Ran... steps) {
        Page page =
                new Page(
                        "demo",
                        Path.of("demo.md"),
                        "Demo",
                        List.of(new Part.Results(8, List.of(result))));
        return Answer.of(page, new Run(List.of(steps), List.of(), finals)).get(0);
    }

    private static Answer answer(Result result, double value) {
        return answer(result, Map.of("v", real(value), "u", real(0)));
    }

    private static Shown real(double value) {
        return new Shown.Real(value);
    }

    private static Ran step(String name, Outcome outcome) {
        return new Ran(new Step(0, 5, "code", name, "", ""), outcome);
    }

    @Test
    void meetsALimitThatItLiesOn() {
        assertEquals(Verdict.MET, answer(result("0.5", "2"), 0.5).verdict());
        assertEquals(Verdict.MET, answer(result("0.5", "2"), 2).verdict());
    }

    @Test
    void meetsALimitThatBinarySumsMissByAHair() {
        // 0.1 + 0.2 is 0.30000000000000004 in IEEE 754 doubles.
        assertEquals(Verdict.MET, answer(result(NONE, "0.3"), 0.1 + 0.2).verdict());
    }

    @Test
    void hasNoFigureOfAnActionThatNothingCallsFor() {
        for (ShownWhen.Condition condition :
                List.of(ShownWhen.Condition.WITH_ACTION, ShownWhen.Condition.UNLESS_HELD)) {
            Result figure =
                    new Result(
                            9,
                            "v",
                            "mm",
                            2,
                            Optional.empty(),
                            given("2"),
                            "handbook",
                            Optional.empty(),
                            "V",
                            NONE,
                            Optional.of(new ShownWhen("go", condition)));
            Answer answer = answer(figure, Map.of("v", real(1), "go", new Shown.Nothing()));
            assertEquals(Verdict.NO_LIMIT, answer.verdict());
            assertEquals("none", answer.shownValue());
        }
    }

    @Test
    void judgesTheUnroundedValueAndShowsWhy() {
        Answer answer = answer(result(NONE, "2"), 2.0004);
        assertEquals(Verdict.NOT_MET, answer.verdict());
        assertEquals("2.0004", answer.shownValue());
        assertEquals("0.4996", answer(result("0.5", NONE), 0.4996).shownValue());
    }

    @Test
    void keepsTheDeclaredDecimalsWhereTheyDoNotMislead() {
        assertEquals("1.00", answer(result("0.5", "2"), 0.9996).shownValue());
        assertEquals("2.51", answer(result(NONE, "2"), 2.5051).shownValue());
        assertEquals("3.00", answer(result(NONE, NONE), 2.9999).shownValue());
    }

    @Law
    void neverShowsAValueThatBeliesItsVerdict(Draw draw) {
        double limit = draw.between(-10, 10);
        int power = draw.whole(-9, 1);
        boolean above = draw.flag();
        boolean computed = draw.flag();
        double value = limit + (above ? 1 : -1) * Math.pow(10, power);
        Result result = result(NONE, computed ? "top" : BigDecimal.valueOf(limit).toPlainString());
        Answer answer = answer(result, Map.of("v", real(value), "u", real(0), "top", real(limit)));
        BigDecimal shown = new BigDecimal(answer.shownValue());
        BigDecimal most = new BigDecimal(answer.shownLimits().substring("at most ".length()));
        assertEquals(above ? Verdict.NOT_MET : Verdict.MET, answer.verdict());
        assertEquals(above, shown.compareTo(most) > 0, answer::toString);
    }

    @Test
    void remarksOnALimitNearerThanTwoStandardUncertainties() {
        Answer near = answer(result(NONE, "2"), Map.of("v", real(1.91), "u", real(0.05)));
        assertEquals("met, but the limit is within the uncertainty", near.ruling().words());
        Answer far = answer(result(NONE, "2"), Map.of("v", real(1.89), "u", real(0.05)));
        assertEquals("met", far.ruling().words());
        Answer out = answer(result(NONE, "2"), Map.of("v", real(2.05), "u", real(0.05)));
        assertEquals("not met, but by less than the uncertainty", out.ruling().words());
    }

    @Test
    void saysThatAnUncertaintyDidNotComeOut() {
        Answer answer =
                answer(
                        result("0", "2"),
                        Map.of("v", real(1)),
                        step("u", new Outcome.Waiting(List.of("tape"))));
        assertEquals("met, its uncertainty is waiting for tape", answer.ruling().words());
        assertEquals("", answer.shownUncertainty());
    }

    @Test
    void neverRoundsAnUncertaintyToNothing() {
        Answer answer = answer(result(NONE, NONE), Map.of("v", real(1), "u", real(0.0004)));
        assertEquals("0.0004", answer.shownUncertainty());
        assertEquals("0.00", answer(result(NONE, NONE), 1).shownUncertainty());
    }

    @Test
    void saysWhatAMissingValueWaitsFor() {
        Answer answer =
                answer(
                        result("0", "2"),
                        Map.of(),
                        step("v", new Outcome.Waiting(List.of("r90", "r150"))));
        assertEquals("not judged: waiting for r90, r150", answer.ruling().words());
        assertEquals("", answer.shownValue());
    }

    @Test
    void saysWhichFailureLeftItWithoutAValue() {
        Outcome failed = new Outcome.Failed(6, "no", "", "");
        Result result = result("0", "2");
        assertEquals("failed at line 6", reason(answer(result, Map.of(), step("v", failed))));
        assertEquals(
                "held back, since lines 3, 4 failed",
                reason(answer(result, Map.of(), step("v", new Outcome.Held(List.of(3, 4))))));
        assertEquals("not computed by any step", reason(answer(result, Map.of())));
    }

    private static String reason(Answer answer) {
        return answer.ruling().reason();
    }

    @Test
    void readsLimitsFromPageVariables() {
        Map<String, Shown> finals = new HashMap<>();
        finals.put("v", real(3));
        finals.put("top", real(2.5));
        assertEquals(Verdict.NOT_MET, answer(result(NONE, "top"), finals).verdict());
        finals.put("top", new Shown.Whole(3));
        assertEquals(Verdict.MET, answer(result(NONE, "top"), finals).verdict());
    }

    @Test
    void doesNotJudgeByALimitThatIsNotThere() {
        Answer answer =
                answer(
                        result("0", "top"),
                        Map.of("v", real(1)),
                        step("top", new Outcome.Waiting(List.of("category"))));
        assertEquals("not judged: its limit top is waiting for category", answer.ruling().words());
    }

    @Test
    void isNotMetWhereOneLimitIsBrokenWhateverTheOther() {
        Answer answer = answer(result("0", "top"), Map.of("v", real(-1)));
        assertEquals(Verdict.NOT_MET, answer.verdict());
    }

    @Test
    void doesNotJudgeWords() {
        Answer answer = answer(result("0", "2"), Map.of("v", new Shown.Words("SBO")));
        assertEquals("not judged: the value is not a number", answer.ruling().words());
        assertEquals("SBO", answer.shownValue());
    }

    @Test
    void doesNotJudgeByLimitsThatExcludeEachOther() {
        assertEquals(Verdict.NOT_JUDGED, answer(result("3", "2"), 2.5).verdict());
    }

    @Test
    void hasNoVerdictWithoutLimits() {
        Answer answer = answer(result(NONE, NONE), 1);
        assertEquals(Verdict.NO_LIMIT, answer.verdict());
        assertEquals("", answer.shownLimits());
    }

    @Test
    void writesLimitsInWords() {
        assertEquals("0.5 to 2", answer(result("0.5", "2"), 1).shownLimits());
        assertEquals("at least 0.175", answer(result("0.175", NONE), 1).shownLimits());
        assertEquals("at most 2", answer(result(NONE, "2"), 1).shownLimits());
    }

    @Test
    void saysNoneForAValueThatAStepLeftOut() {
        Answer answer = answer(result("0", "2"), Map.of("v", new Shown.Nothing()));
        assertEquals("none", answer.shownValue());
        assertEquals("", answer.shownUnit());
        assertEquals("not judged: there is no value", answer.ruling().words());
        Answer free = answer(result(NONE, NONE), Map.of("v", new Shown.Nothing()));
        assertEquals(new Ruling(Verdict.NO_LIMIT, "", ""), free.ruling());
    }

    @Test
    void takesTheUncertaintyThatAValueCarries() {
        Result plain =
                new Result(
                        9,
                        "v",
                        "mm",
                        2,
                        Optional.empty(),
                        Optional.of("2"),
                        "handbook",
                        Optional.empty(),
                        "V",
                        NONE);
        Answer answer = answer(plain, Map.of("v", new Shown.Measured(1.9, 0.09)));
        assertEquals("1.90", answer.shownValue());
        assertEquals("0.09", answer.shownUncertainty());
        assertEquals("met, but the limit is within the uncertainty", answer.ruling().words());
    }
}
