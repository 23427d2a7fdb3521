package halfwidth.show;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.engine.PageHere;
import halfwidth.formula.Formula;
import halfwidth.formula.FormulaReader;
import halfwidth.formula.PutIn;
import halfwidth.formula.Term;
import halfwidth.run.Script;
import halfwidth.run.Shown;
import halfwidth.run.Values;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What comes of a formula that is shown, and of one that is wrong; the values are by hand. */
class WorkedAgainTest {
    private static PageHere page;

    @BeforeAll
    static void runsAPage() throws Exception {
        String code =
                """
                import halfwidth.localizer.uncertainty.*;
                DoubleColumn east = DoubleColumn.create("east", 1.5, 2.5);
                DoubleColumn west = DoubleColumn.create("west", 2, 6);
                Table both = Table.create(east, west);
                double half(double whole) { return whole / 2; }
                OptionalDouble none = OptionalDouble.empty();
                """;
        Script script = new Script(List.of(new Script.Code(1, code, false)), List.of());
        page = PageHere.of(script, new Values(Map.of(), false));
    }

    private static Term term(String java) {
        return formula("double x = " + java + ";").term();
    }

    private static Formula formula(String statement) {
        return new FormulaReader("note").read(List.of(statement)).get(0).formula().orElseThrow();
    }

    private static Displayed shown(Term formula, Term last, Shown value) {
        return new Displayed(formula, last, List.of(), List.of(), List.of(), value);
    }

    /** The formula with these numbers put in, in the order in which they stand. */
    private static Displayed shown(String java, List<String> numbers, double value) {
        Term formula = term(java);
        Term last =
                PutIn.numbers(
                        formula,
                        place ->
                                place < numbers.size()
                                        ? Optional.of(numbers.get(place))
                                        : Optional.empty());
        return shown(formula, last, new Shown.Real(value));
    }

    private static boolean byText(Displayed shown) {
        return WorkedAgain.byText(shown).orElseThrow().same();
    }

    private static boolean byTerms(Displayed shown) {
        return WorkedAgain.byTerms(page, shown).same();
    }

    private static boolean byTerms(String java, double value) {
        return byTerms(shown(java, List.of(), value));
    }

    @Test
    void aQuotientUpsideDownIsNoticed() {
        assertTrue(byText(shown("a / b", List.of("3", "8"), 0.375)));
        assertTrue(byTerms(shown("a / b", List.of("3", "8"), 0.375)));
        assertFalse(byText(shown("b / a", List.of("8", "3"), 0.375)));
        assertFalse(byTerms(shown("b / a", List.of("8", "3"), 0.375)));
    }

    @Test
    void aWrongSignIsNoticed() {
        assertTrue(byText(shown("100 * (a / b - 1)", List.of("4.2", "4"), 5)));
        assertTrue(byTerms(shown("100 * (a / b - 1)", List.of("4.2", "4"), 5)));
        assertFalse(byText(shown("100 * (a / b + 1)", List.of("4.2", "4"), 5)));
        assertFalse(byTerms(shown("100 * (a / b + 1)", List.of("4.2", "4"), 5)));
    }

    @Test
    void anotherColumnIsNoticed() {
        assertTrue(byTerms("both.doubleColumn(\"east\").sum()", 4));
        assertFalse(byTerms("both.doubleColumn(\"west\").sum()", 4));
        assertTrue(byTerms("both.stream().mapToDouble(row -> row.getDouble(\"west\")).max()", 6));
        assertFalse(byTerms("both.stream().mapToDouble(row -> row.getDouble(\"west\")).min()", 6));
    }

    @Test
    void theDigitsThatAreNotPrintedMayMoveTheResultAndNoFarther() {
        // 1/3 to six digits is 0.333333; a thousand of it differ from 1000/3 by 0.00033.
        assertTrue(byText(shown("1000 * a", List.of("0.333333"), 1000 / 3.0)));
        assertTrue(byTerms(shown("1000 * a", List.of("0.333333"), 1000 / 3.0)));
        // The text alone does not tell that 1000 is exact.
        assertFalse(byText(shown("1000 * a", List.of("0.333337"), 1000 / 3.0)));
        assertFalse(byTerms(shown("1000 * a", List.of("0.333335"), 1000 / 3.0)));
    }

    @Test
    void aMethodOfThePageGoesByTheFormulaThatIsShownForIt() {
        Term call = term("half(3)");
        Shown value = new Shown.Real(1.5);
        List<NumbersPut.Defined> right = defined("double half(double whole) { return whole / 2; }");
        List<NumbersPut.Defined> wrong = defined("double half(double whole) { return whole * 2; }");
        Displayed shown = new Displayed(call, call, right, List.of(), List.of(), value);
        Displayed shownWrong = new Displayed(call, call, wrong, List.of(), List.of(), value);

        assertTrue(byText(shown));
        assertTrue(byTerms(shown));
        assertFalse(byText(shownWrong));
        assertFalse(byTerms(shownWrong));
        assertEquals(
                1, WorkedAgain.byTerms(page, shown(call, call, value)).asTheyAre().size(), "else");
    }

    private static List<NumbersPut.Defined> defined(String method) {
        return new NumbersPut(Map.of()).methods(List.of(formula(method)));
    }

    @Test
    void aValueAndItsUncertaintyAreBothWorkedOut() {
        Term formula = term("new Estimate(2 * 3, 0.5 / 2)");

        assertTrue(byText(shown(formula, formula, new Shown.Measured(6, 0.25))));
        assertTrue(byTerms(shown(formula, formula, new Shown.Measured(6, 0.25))));
        assertFalse(byText(shown(formula, formula, new Shown.Measured(6, 0.2))));
        assertFalse(byTerms(shown(formula, formula, new Shown.Measured(6, 0.2))));
    }

    @Test
    void nothingIsNotNought() {
        Term none = term("none");

        assertTrue(byTerms(shown(none, none, new Shown.Nothing())));
        assertFalse(byTerms(shown(none, none, new Shown.Real(0))));
        assertFalse(byTerms(shown(term("0"), term("0"), new Shown.Nothing())));
    }

    @Test
    void aNameThatNothingIsSaidOfIsNoNumber() {
        assertThrows(NotSaid.class, () -> byTerms("2 * unheardOf", 0));
        assertTrue(WorkedAgain.byText(shown("2 * unheardOf", List.of(), 0)).isEmpty());
    }
}
