package halfwidth.localizer.monitor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import halfwidth.laws.Draw;
import halfwidth.laws.Law;
import halfwidth.localizer.cut.CutRule;
import halfwidth.localizer.cut.CutVerdict;
import halfwidth.localizer.cut.NextCut;
import halfwidth.localizer.uncertainty.Distribution;
import halfwidth.localizer.uncertainty.Draws;
import halfwidth.localizer.uncertainty.Estimate;
import halfwidth.localizer.uncertainty.MonteCarlo;
import org.junit.jupiter.api.Test;

class AdapterTrialTest {
    private static final double FINE = 1e-9;

    private static Adapter adapter(ArraySide side, double degrees) {
        return new Adapter(side, Estimate.exact(degrees));
    }

    private static AdapterTrial measured(
            PairModel pair, double excess, Adapter adapter, double resolution) {
        double k = pair.sensitivity();
        double a = pair.amplitudeRatio();
        return new AdapterTrial(
                Phasors.reading(k, a, excess, 0),
                Phasors.reading(k, a, excess + adapter.excess(), 0),
                adapter,
                resolution);
    }

    @Test
    void solvesAnExampleByHand() {
        // t = 0.1, τ = 0.2, K = 0.5: d0 = −0.05, d1 = −0.5·0.3/(1 − 0.02) = −0.1530612.
        double epsilon = Math.toDegrees(2 * Math.atan(0.2));
        AdapterTrial trial =
                new AdapterTrial(-0.05, -0.15 / 0.98, adapter(ArraySide.ON_150, epsilon), 0.001);
        assertEquals(Math.toDegrees(2 * Math.atan(0.1)), trial.excess().value(), 1e-9);
        assertEquals(0.5, trial.sensitivity().value(), 1e-9);
        assertEquals(ArraySide.ON_150, trial.sideToCut());
        assertTrue(trial.movedAsExpected());
        // Beside it the rule for small angles: ε·0.05/0.1030612 = 10.974 of 11.421 deg.
        assertEquals(10.974, trial.smallAngleExcess(), 0.001);
        // The first cut at 160 deg/m is 0.8 of 71.38 mm, in whole millimetres.
        NextCut cut = trial.firstCut(new Estimate(160, 5), new CutRule(0.001, 0.5, 0.8));
        assertEquals(0.057, cut.length(), 1e-12);
        assertEquals(ArraySide.ON_150, ArraySide.of(cut));
        assertEquals(0.07138, trial.length(new Estimate(160, 5)).value(), 0.00001);
    }

    @Law
    void findsTheExcessOfEqualReturns(Draw draw) {
        double excess = draw.between(-85, 85);
        double epsilon = draw.between(2, 80);
        double k = draw.between(0.05, 0.4);
        boolean in150 = draw.flag();
        Adapter adapter = adapter(in150 ? ArraySide.ON_150 : ArraySide.ON_90, epsilon);
        // Beyond this sum the other root is the pair's, as the class says.
        double with = excess + adapter.excess();
        assumeTrue(Math.abs(excess) + Math.abs(with) < 175);
        assumeTrue(Math.abs(Phasors.reading(k, 1, with, 0)) < 1);
        AdapterTrial trial = measured(PairModel.ofEqualReturns(k), excess, adapter, FINE);
        assertEquals(excess, trial.excess().value(), 1e-6);
        assertEquals(k, trial.sensitivity().value(), 1e-8);
        assertTrue(trial.movedAsExpected());
    }

    @Law
    void mirrorsWithTheSides(Draw draw) {
        double excess = draw.between(-40, 40);
        double epsilon = draw.between(5, 40);
        PairModel pair = PairModel.ofEqualReturns(0.4);
        AdapterTrial one = measured(pair, excess, adapter(ArraySide.ON_150, epsilon), FINE);
        AdapterTrial mirrored = measured(pair, -excess, adapter(ArraySide.ON_90, epsilon), FINE);
        assertEquals(one.excess().value(), -mirrored.excess().value(), 1e-9);
        assertEquals(one.smallAngleExcess(), -mirrored.smallAngleExcess(), 1e-9);
        assertEquals(
                one.excess().standardUncertainty(), mirrored.excess().standardUncertainty(), 1e-9);
    }

    @Law
    void agreesWithTheSmallAngleRuleWhateverTheAmplitudes(Draw draw) {
        double a = draw.between(0.5, 2);
        double excess = draw.between(-2, 2);
        AdapterTrial trial =
                measured(new PairModel(0.4, a), excess, adapter(ArraySide.ON_150, 2), FINE);
        // What is left out is of the third order in angles of at most 4 deg = 0.07.
        assertEquals(excess, trial.smallAngleExcess(), 0.01);
        assertEquals(excess, trial.excess().value(), 0.01);
    }

    @Test
    void needsNoCutAtTheNull() {
        AdapterTrial trial = new AdapterTrial(0, -0.05, adapter(ArraySide.ON_150, 20), 0.001);
        assertEquals(0, trial.excess().value());
        assertEquals(ArraySide.NEITHER, trial.sideToCut());
        NextCut cut = trial.firstCut(new Estimate(160, 5), new CutRule(0.001, 0.5, 0.8));
        assertEquals(CutVerdict.AT_TARGET, cut.verdict());
    }

    @Test
    void noticesAReadingThatMovedTheOtherWay() {
        AdapterTrial trial = new AdapterTrial(0.02, 0.06, adapter(ArraySide.ON_150, 20), 0.001);
        assertFalse(trial.movedAsExpected());
        assertTrue(trial.sensitivity().value() < 0);
    }

    @Test
    void agreesWithDrawsOfTheReadings() {
        // The quadratic solved by its textbook formula for each draw (JCGM 101:2008).
        double resolution = 0.002;
        Adapter adapter = new Adapter(ArraySide.ON_150, new Estimate(25, 0.5));
        AdapterTrial trial = measured(PairModel.ofEqualReturns(0.4), 18, adapter, resolution);
        MonteCarlo draws =
                MonteCarlo.of(
                        x -> {
                            double tau = Math.tan(Math.toRadians(x[2]) / 2);
                            double b = -(x[1] - x[0]);
                            double root = Math.sqrt(b * b - 4 * x[1] * tau * x[0] * tau);
                            double one = (-b + root) / (2 * x[1] * tau);
                            double other = (-b - root) / (2 * x[1] * tau);
                            double t = Math.abs(one) < Math.abs(other) ? one : other;
                            return 2 * Math.toDegrees(Math.atan(t));
                        },
                        new Draws(100_000, 1),
                        Distribution.rectangular(trial.without(), resolution / 2),
                        Distribution.rectangular(trial.with(), resolution / 2),
                        Distribution.normal(new Estimate(25, 0.5)));
        double u = trial.excess().standardUncertainty();
        assertEquals(draws.estimate().value(), trial.excess().value(), 0.02);
        // 0.22 % for the number of draws, the rest for the curve of the formula.
        assertEquals(draws.estimate().standardUncertainty(), u, 0.02 * u);
    }

    @Test
    void saysInWordsThatAnAdapterWithoutEffectTellsNothing() {
        Adapter adapter = adapter(ArraySide.ON_150, 20);
        for (double with : new double[] {0.05, 0.051}) {
            IllegalArgumentException refusal =
                    assertThrows(
                            IllegalArgumentException.class,
                            () -> new AdapterTrial(0.05, with, adapter, 0.001));
            assertTrue(refusal.getMessage().contains("says nothing of the phase"));
        }
    }

    @Test
    void refusesReadingsThatNoPairGives() {
        IllegalArgumentException refusal =
                assertThrows(
                        IllegalArgumentException.class,
                        () -> new AdapterTrial(0.5, 0.52, adapter(ArraySide.ON_150, 60), 0.001));
        assertTrue(refusal.getMessage().contains("no excess gives"));
        assertThrows(
                IllegalArgumentException.class,
                () -> new AdapterTrial(Double.NaN, 0, adapter(ArraySide.ON_150, 20), 0.001));
        assertThrows(IllegalArgumentException.class, () -> adapter(ArraySide.NEITHER, 20));
        assertThrows(IllegalArgumentException.class, () -> adapter(ArraySide.ON_90, 0));
        assertThrows(IllegalArgumentException.class, () -> adapter(ArraySide.ON_90, -20));
    }
}
