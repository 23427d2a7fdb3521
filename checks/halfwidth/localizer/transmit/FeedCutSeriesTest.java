package halfwidth.localizer.transmit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.laws.Draw;
import halfwidth.laws.Law;
import halfwidth.localizer.cut.CutRule;
import halfwidth.localizer.cut.CutVerdict;
import halfwidth.localizer.cut.NextCut;
import halfwidth.localizer.uncertainty.Estimate;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.hipparchus.stat.descriptive.DescriptiveStatistics;
import org.junit.jupiter.api.Test;

class FeedCutSeriesTest {
    private static final double BLANK = Double.NaN;
    private static final Estimate DATA_SHEET = new Estimate(155, 8);
    private static final CutRule RULE = new CutRule(0.001, 0.5, 0.8);

    private static CutRow sbo(double total, double offset1, double offset2) {
        return CutRow.onFeed(Feed.SBO, total, offset1, offset2);
    }

    private static FeedCutSeries series(CutRow... rows) {
        return new FeedCutSeries(List.of(rows), DATA_SHEET, 0.1);
    }

    @Test
    void goesByTheDataSheetBeforeTheFirstCut() {
        FeedCutSeries none = series(sbo(0, 35, 27));
        assertEquals(0, none.cutsMade());
        assertTrue(none.measuredPhaseConstant().isEmpty());
        assertEquals(DATA_SHEET, none.phaseConstant());
        assertEquals(31, none.aim().value(), 1e-12);
        assertEquals(4, none.halfSpread(), 1e-12);
        // 31/155 = 0.2 m, of which 0.8 at first.
        assertEquals(0.2, none.remaining().value(), 1e-12);
        // u(middle) = 0.1/√12/√2 = 0.020412 deg; u(L)² = (0.020412/155)² + (31·8/155²)².
        assertEquals(0.020412, none.aim().standardUncertainty(), 1e-6);
        assertEquals(0.01032343, none.remaining().standardUncertainty(), 1e-8);
        assertEquals(0.160, none.next(RULE).length(), 1e-12);
        assertEquals(Feed.SBO, Feed.of(none.next(RULE)));
    }

    @Test
    void weighsTheDataSheetWithTheOnlyCut() {
        // 0.1 m took 16 deg off both: 160 deg/m. Each offset is good to 0.1/√12 deg, Σ(x−x̄)² is
        // 2·0.1²/2 = 0.01 m², so u = 0.028868/0.1 = 0.28868 deg/m.
        FeedCutSeries one = series(sbo(0, 35, 27), sbo(0.1, 19, 11));
        Estimate measured = one.measuredPhaseConstant().orElseThrow();
        assertEquals(160, measured.value(), 1e-9);
        assertEquals(0.28868, measured.standardUncertainty(), 0.00001);
        double a = 1 / (0.28868 * 0.28868);
        double b = 1 / (8.0 * 8.0);
        assertEquals((160 * a + 155 * b) / (a + b), one.phaseConstant().value(), 1e-6);
        assertEquals(Math.sqrt(1 / (a + b)), one.phaseConstant().standardUncertainty(), 0.00001);
        // 5/√(8² + 0.28868²)
        assertEquals(0.62459, one.departureFromDataSheet().orElseThrow(), 0.00001);
    }

    @Test
    void goesByTheCutsAloneFromTheSecondOn() {
        FeedCutSeries two = series(sbo(0, 35, 27), sbo(0.1, 19, 11), sbo(0.15, 11, 3));
        assertEquals(160, two.phaseConstant().value(), 1e-9);
        assertEquals(two.measuredPhaseConstant().orElseThrow(), two.phaseConstant());
        // Middle 7 deg at 160 deg/m.
        assertEquals(7, two.aim().value(), 1e-9);
        assertEquals(7.0 / 160, two.remaining().value(), 1e-9);
        // 43.75 mm less two standard uncertainties, in whole millimetres, takes off 0.16 deg each.
        NextCut next = two.next(RULE);
        assertEquals(7 - 160 * next.length(), two.middle(0.15 + next.length()).value(), 1e-9);
    }

    @Test
    void keepsTheDataSheetWhileSmallCutsSayLess() {
        // Two cuts of 1 mm with readings to 1 deg: u(β) is hundreds of degrees per metre.
        FeedCutSeries small =
                new FeedCutSeries(
                        List.of(sbo(0, 35, BLANK), sbo(0.001, 35, BLANK), sbo(0.002, 35, BLANK)),
                        DATA_SHEET,
                        1);
        assertEquals(155, small.phaseConstant().value(), 1);
    }

    @Test
    void acceptsReadingsMissingOnOneTransmitter() {
        // Transmitter 2 was read at the start only; its line runs beside that of transmitter 1.
        FeedCutSeries one = series(sbo(0, 35, 27), sbo(0.1, 19, BLANK), sbo(0.15, 11, BLANK));
        assertEquals(160, one.phaseConstant().value(), 1e-9);
        assertEquals(4, one.halfSpread(), 1e-9);
        assertEquals(7, one.aim().value(), 1e-9);
    }

    @Test
    void countsTheCutsOfBothFeedsAgainstEachOther() {
        OptionalDouble none = OptionalDouble.empty();
        FeedCutSeries over =
                series(
                        new CutRow(0, 0, OptionalDouble.of(32), none),
                        new CutRow(0.22, 0, OptionalDouble.of(-3.2), none));
        NextCut next = over.next(RULE);
        assertEquals(CutVerdict.OVERSHOT, next.verdict());
        assertEquals(Feed.CSB, Feed.of(next));
        FeedCutSeries back =
                series(
                        new CutRow(0, 0, OptionalDouble.of(32), none),
                        new CutRow(0.22, 0, OptionalDouble.of(-3.2), none),
                        new CutRow(0.22, 0.015, OptionalDouble.of(-0.8), none));
        assertEquals(160, back.phaseConstant().value(), 1e-6);
        assertEquals(Feed.CSB, Feed.of(back.next(RULE)));
        assertEquals(CutVerdict.CUT, back.next(RULE).verdict());
    }

    @Test
    void mirrorsWithTheFeeds() {
        FeedCutSeries sbo = series(sbo(0, 35, 27), sbo(0.1, 19.3, 10.8));
        FeedCutSeries csb =
                series(
                        CutRow.onFeed(Feed.CSB, 0, -35, -27),
                        CutRow.onFeed(Feed.CSB, 0.1, -19.3, -10.8));
        assertEquals(sbo.phaseConstant().value(), csb.phaseConstant().value(), 1e-9);
        assertEquals(sbo.remaining().value(), -csb.remaining().value(), 1e-12);
        assertEquals(Feed.CSB, Feed.of(csb.next(RULE)));
        assertEquals(sbo.next(RULE).length(), csb.next(RULE).length(), 1e-12);
    }

    /** The scatter of many fits of noisy offsets is the uncertainty that one fit states. */
    @Test
    void statesTheUncertaintyThatManySeriesShow() {
        Random random = new Random(5);
        DescriptiveStatistics remaining = new DescriptiveStatistics();
        DescriptiveStatistics aim = new DescriptiveStatistics();
        DescriptiveStatistics statedRemaining = new DescriptiveStatistics();
        DescriptiveStatistics statedAim = new DescriptiveStatistics();
        for (int i = 0; i < 4000; i++) {
            FeedCutSeries made = series(noisy(0, random), noisy(0.1, random), noisy(0.15, random));
            remaining.addValue(made.remaining().value());
            aim.addValue(made.aim().value());
            statedRemaining.addValue(made.remaining().standardUncertainty());
            statedAim.addValue(made.aim().standardUncertainty());
        }
        assertEquals(7, aim.getMean(), 0.005);
        assertEquals(7.0 / 160, remaining.getMean(), 0.00005);
        // The larger of residuals and resolution is used. With two degrees of freedom χ²/2 is
        // exponential, so on average that states E max(1, √y) = 1 − 1/e + Γ(3/2, 1) = 1.139 times
        // the deviation, which 4000 series know to 1.1 %.
        assertEquals(1.139, statedAim.getMean() / aim.getStandardDeviation(), 0.045);
        assertEquals(1.139, statedRemaining.getMean() / remaining.getStandardDeviation(), 0.045);
    }

    /** Offsets of a line of 160 deg/m; transmitter 2 is not read before the first cut. */
    private static CutRow noisy(double cut, Random random) {
        double u = 0.1 / Math.sqrt(12);
        double one = 35 - 160 * cut + u * random.nextGaussian();
        double two = 27 - 160 * cut + u * random.nextGaussian();
        return sbo(cut, one, cut == 0 ? BLANK : two);
    }

    /**
     * A line of unknown phase constant, offsets read to 0.1 deg: the trim ends, no cut too long.
     */
    @Law(tries = 300)
    void convergesInFewCutsWithoutOvershoot(Draw draw) {
        double hiddenBeta = draw.between(132, 182);
        double hidden1 = draw.between(-60, 60);
        double difference = draw.between(-12, 12);
        double hidden2 = hidden1 + difference;
        double start = (hidden1 + hidden2) / 2;
        List<CutRow> rows = new ArrayList<>();
        double sbo = 0;
        double csb = 0;
        for (int cuts = 0; ; cuts++) {
            double taken = hiddenBeta * (sbo - csb);
            rows.add(
                    new CutRow(
                            sbo,
                            csb,
                            OptionalDouble.of(Math.rint((hidden1 - taken) * 10) / 10),
                            OptionalDouble.of(Math.rint((hidden2 - taken) * 10) / 10)));
            double beyond = -(start - taken) * Math.signum(start) / hiddenBeta;
            assertTrue(beyond <= RULE.smallestCut(), "cut " + beyond + " m too much");
            NextCut next = new FeedCutSeries(rows, new Estimate(157, 10), 0.1).next(RULE);
            if (next.finished()) {
                // The target, and the rounding of the two offsets.
                assertEquals(0, start - taken, RULE.targetPhase() + 0.1);
                assertTrue(cuts <= 6, cuts + " cuts");
                return;
            }
            sbo += next.direction() > 0 ? next.length() : 0;
            csb += next.direction() < 0 ? next.length() : 0;
        }
    }

    @Test
    void takesOneStepTheWrongWayForRounding() {
        // A cut of 0.1 mm is worth 0.016 deg; two readings of 0.1 deg may part by a step.
        FeedCutSeries rounded = series(sbo(0, 35, 27), sbo(0.0001, 35.1, 27));
        assertEquals(155, rounded.phaseConstant().value(), 3);
    }

    @Test
    void refusesARecordThatShrinks() {
        refuses("must not shrink", sbo(0, 35, 27), sbo(0.1, 19, 11), sbo(0.05, 11, 3));
    }

    @Test
    void refusesAPhaseThatMovesTheWrongWay() {
        refuses("wrong line cut, or a sign mistyped", sbo(0, 35, 27), sbo(0.1, 51, 43));
        // One transmitter's sign alone.
        refuses("wrong line cut, or a sign mistyped", sbo(0, -35, 27), sbo(0.1, 19, 11));
    }

    @Test
    void refusesAPhaseThatNoSuchLineGives() {
        refuses("moved too little", sbo(0, 35, 27), sbo(0.1, 35, 27));
        refuses("moved too much", sbo(0, 35, 27), sbo(0.01, 19, 11));
    }

    @Test
    void refusesARecordWithoutAnyOffset() {
        assertThrows(IllegalArgumentException.class, () -> series(sbo(0, BLANK, BLANK)));
        assertThrows(IllegalArgumentException.class, () -> sbo(BLANK, 1, 1));
        assertThrows(IllegalArgumentException.class, () -> sbo(-0.1, 1, 1));
        assertThrows(IllegalArgumentException.class, () -> sbo(0, 181, 1));
        assertThrows(IllegalArgumentException.class, () -> series());
        assertThrows(IllegalArgumentException.class, () -> CutRow.onFeed(Feed.NEITHER, 0, 1, 1));
    }

    private static void refuses(String words, CutRow... rows) {
        IllegalArgumentException refusal =
                assertThrows(IllegalArgumentException.class, () -> series(rows));
        assertTrue(refusal.getMessage().contains(words), refusal.getMessage());
    }

    /**
     * 20° at about 160°/m are 125 mm; of 100 mm cut, nothing was read since. What is left is by the
     * data sheet 25 mm, and nothing is cut before a phasing.
     */
    @Test
    void countsACutThatWasNotPhasedAfter() {
        OptionalDouble none = OptionalDouble.empty();
        FeedCutSeries series =
                new FeedCutSeries(
                        List.of(
                                new CutRow(0, 0, OptionalDouble.of(20), none),
                                new CutRow(0.1, 0, none, none)),
                        new Estimate(160, 3),
                        0.5);
        assertEquals(20 / 160.0 - 0.1, series.remaining().value(), 1e-12);
        assertEquals(0, series.cutsMade());
        NextCut next = series.next(RULE);
        assertEquals(CutVerdict.READ_FIRST, next.verdict());
        assertEquals(0, next.length(), 0);
        assertFalse(next.finished());
        assertThrows(
                IllegalArgumentException.class,
                () ->
                        new FeedCutSeries(
                                List.of(new CutRow(0, 0, none, none)), new Estimate(160, 3), 0.5));
    }
}
