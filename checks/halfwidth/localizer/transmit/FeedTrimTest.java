package halfwidth.localizer.transmit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.laws.Draw;
import halfwidth.laws.Law;
import halfwidth.localizer.cut.CutRule;
import halfwidth.localizer.cut.CutVerdict;
import halfwidth.localizer.cut.NextCut;
import halfwidth.localizer.line.Line;
import halfwidth.localizer.uncertainty.Estimate;
import java.util.List;
import org.junit.jupiter.api.Test;

class FeedTrimTest {
    /** The rule of thumb of 4 degrees per inch (common practice, no source), inch = 0.0254 m. */
    private static final Estimate FOUR_DEGREES_PER_INCH = new Estimate(4 / 0.0254, 0);

    private static final CutRule RULE = new CutRule(0.0254 / 16, 0.5, 0.8);

    @Test
    void aimsAtTheMiddleAndLeavesHalfTheSpread() {
        FeedTrim trim = FeedTrim.fromOffsets(1, 20, 12);
        assertEquals(16, trim.aim().value());
        assertEquals(4, trim.halfSpread());
        assertEquals(Feed.SBO, trim.feed());
        // 16 degrees at 4 degrees per inch are 4 inches.
        assertEquals(4 * 0.0254, trim.length(FOUR_DEGREES_PER_INCH).value(), 1e-15);
        // 0.8 of 4 in = 3.2 in = 51.2 sixteenths: 51 whole ones.
        NextCut first = trim.firstCut(FOUR_DEGREES_PER_INCH, RULE);
        assertEquals(51 * 0.0254 / 16, first.length(), 1e-15);
        assertEquals(Feed.SBO, Feed.of(first));
    }

    @Test
    void cutsTheCarrierFeedForANegativeAim() {
        FeedTrim trim = FeedTrim.fromOffsets(1, -20, -12);
        assertEquals(Feed.CSB, trim.feed());
        assertEquals(Feed.CSB, Feed.of(trim.firstCut(FOUR_DEGREES_PER_INCH, RULE)));
        assertEquals(4 * 0.0254, trim.length(FOUR_DEGREES_PER_INCH).value(), 1e-15);
        List<Estimate> after = trim.offsetsAfter(4 * 0.0254, FOUR_DEGREES_PER_INCH);
        assertEquals(-4, after.get(0).value(), 1e-12);
        assertEquals(4, after.get(1).value(), 1e-12);
    }

    @Test
    void needsOnlyOneTransmitter() {
        FeedTrim trim = FeedTrim.fromOffsets(1, 30);
        assertEquals(30, trim.aim().value());
        assertEquals(0, trim.halfSpread());
    }

    @Test
    void leavesAnAimWithinTheResolutionAlone() {
        FeedTrim trim = FeedTrim.fromOffsets(1, 6, -4);
        assertEquals(Feed.NEITHER, trim.feed());
        assertEquals(0, trim.length(FOUR_DEGREES_PER_INCH).value());
        assertEquals(CutVerdict.AT_TARGET, trim.firstCut(FOUR_DEGREES_PER_INCH, RULE).verdict());
        assertEquals(5, trim.halfSpread());
    }

    @Test
    void takesTheLengthOfAFoamLineFromItsVelocityFactor() {
        // A degree is VF c/(360 f) = 0.85 × 299 792 458/(360 × 110e6) = 6.435 mm at 110 MHz.
        Estimate beta = new Estimate(new Line(0.85, 110e6).phaseConstant(), 0);
        double length = FeedTrim.fromOffsets(0.1, 10).length(beta).value();
        assertEquals(0.06435, length, 0.000005);
    }

    @Test
    void addsTheUncertaintiesOfPhaseAndLine() {
        // Two offsets, each within half a step of 1 deg: u(aim) = 1/√12/√2 = 0.20412 deg.
        // u(L)² = (0.20412/150)² + (0.1·15/150)² for 15 deg at (150 ± 15) deg/m: 10.09 mm.
        FeedTrim trim = FeedTrim.fromOffsets(1, 14, 16);
        assertEquals(0.20412, trim.aim().standardUncertainty(), 0.00001);
        Estimate length = trim.length(new Estimate(150, 15));
        assertEquals(0.1, length.value(), 1e-15);
        assertEquals(0.01009, length.standardUncertainty(), 0.00001);
        // After the whole cut: √((1/√12)² + (0.1·15)²) = 1.5275 deg.
        Estimate after = trim.offsetsAfter(0.1, new Estimate(150, 15)).get(0);
        assertEquals(1.5275, after.standardUncertainty(), 0.0001);
    }

    /** The feeds as two waves that arrive together: the offset makes up for the longer path. */
    @Law
    void whatIsCutBringsTheTwoWavesTogether(Draw draw) {
        double sboExcess = draw.between(0, 0.45);
        double csbExcess = draw.between(0, 0.45);
        double beta = 155.4;
        double needed = beta * (sboExcess - csbExcess);
        FeedTrim trim = FeedTrim.fromOffsets(1e-9, needed);
        double cut = trim.length(new Estimate(beta, 0)).value();
        double sbo = sboExcess - (trim.feed() == Feed.SBO ? cut : 0);
        double csb = csbExcess - (trim.feed() == Feed.CSB ? cut : 0);
        assertEquals(0, beta * (sbo - csb), 1e-6);
        assertEquals(0, trim.offsetsAfter(cut, new Estimate(beta, 0)).get(0).value(), 1e-6);
    }

    @Test
    void refusesWhatCannotBeAnOffset() {
        assertThrows(IllegalArgumentException.class, () -> FeedTrim.fromOffsets(1));
        assertThrows(IllegalArgumentException.class, () -> FeedTrim.fromOffsets(1, Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> FeedTrim.fromOffsets(1, 180.5));
        assertThrows(IllegalArgumentException.class, () -> FeedTrim.fromOffsets(0, 10));
        assertThrows(
                IllegalArgumentException.class,
                () -> FeedTrim.fromOffsets(1, 10).length(new Estimate(0, 1)));
    }

    @Test
    void refusesOffsetsWhoseMiddleIsNotKnown() {
        IllegalArgumentException refusal =
                assertThrows(
                        IllegalArgumentException.class, () -> FeedTrim.fromOffsets(1, 170, -170));
        assertTrue(refusal.getMessage().contains("differ by more than 180 deg"));
    }
}
