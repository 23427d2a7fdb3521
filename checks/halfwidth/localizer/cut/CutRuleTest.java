package halfwidth.localizer.cut;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.localizer.uncertainty.Estimate;
import org.junit.jupiter.api.Test;

class CutRuleTest {
    private final CutRule rule = CutRule.usual(0.001, 1);

    @Test
    void roundsDownToWholeStepsOfTheTool() {
        assertEquals(0.012, rule.roundDown(0.0129), 1e-15);
        // Three steps stay three though 0.003/0.001 is not exact in binary.
        assertEquals(0.003, rule.roundDown(0.003), 1e-15);
        assertEquals(0, rule.roundDown(0.0009));
    }

    @Test
    void takesTheStatedFractionFirst() {
        NextCut cut = rule.first(new Estimate(0.100, 0.01), 16);
        assertEquals(CutVerdict.CUT, cut.verdict());
        assertEquals(0.080, cut.length(), 1e-15);
        assertEquals(1, cut.direction());
        assertFalse(cut.finished());
    }

    @Test
    void keepsTwoStandardUncertaintiesInHandAfterwards() {
        NextCut cut = rule.following(new Estimate(0.020, 0.003), 3, 1);
        assertEquals(0.014, cut.length(), 1e-15);
    }

    @Test
    void cutsOneStepWhereTheUncertaintyIsAsLargeAsTheRest() {
        assertEquals(0.001, rule.following(new Estimate(0.003, 0.003), 2, 1).length());
    }

    @Test
    void namesAnOvershootAndTurnsToTheOtherLine() {
        NextCut cut = rule.following(new Estimate(-0.010, 0.001), -1.6, 1);
        assertEquals(CutVerdict.OVERSHOT, cut.verdict());
        assertEquals(-1, cut.direction());
        assertEquals(0.008, cut.length(), 1e-15);
        assertEquals(0.010, cut.remaining().value());
    }

    @Test
    void stopsAtTheTargetAndBelowTheSmallestCut() {
        NextCut target = rule.following(new Estimate(0.005, 0), 1, 1);
        assertEquals(CutVerdict.AT_TARGET, target.verdict());
        assertTrue(target.finished());
        NextCut small = rule.following(new Estimate(-0.0009, 0), -1.5, 1);
        assertEquals(CutVerdict.BELOW_SMALLEST_CUT, small.verdict());
        assertEquals(0, small.length());
        assertEquals(0, small.direction());
    }

    @Test
    void saysWhatToDoInWords() {
        assertEquals(
                "Cut 80.0 mm off the SBO feed, of 100.0 mm (standard uncertainty 10.0 mm) still to"
                        + " go.",
                rule.first(new Estimate(0.100, 0.01), 16).inWords("SBO feed"));
        NextCut over = rule.following(new Estimate(-0.010, 0.001), -1.6, 1);
        assertTrue(over.inWords("CSB feed").startsWith("Too much was cut"));
        assertTrue(
                rule.following(new Estimate(0.0005, 0), 2, 1)
                        .inWords("")
                        .contains("less than the tool can cut"));
        assertTrue(
                rule.following(new Estimate(0.002, 0), 0.5, 1)
                        .inWords("")
                        .contains("within the target"));
    }

    @Test
    void refusesRulesThatCannotBe() {
        assertThrows(IllegalArgumentException.class, () -> new CutRule(0, 1, 0.8));
        assertThrows(IllegalArgumentException.class, () -> new CutRule(0.001, -1, 0.8));
        assertThrows(IllegalArgumentException.class, () -> new CutRule(0.001, 1, 1.1));
        assertThrows(IllegalArgumentException.class, () -> new CutRule(0.001, 1, Double.NaN));
        assertThrows(
                IllegalArgumentException.class, () -> rule.following(new Estimate(0.01, 0), 2, 0));
        assertThrows(IllegalArgumentException.class, () -> rule.roundDown(-0.001));
    }
}
