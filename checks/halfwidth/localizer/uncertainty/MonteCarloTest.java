package halfwidth.localizer.uncertainty;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import halfwidth.localizer.Range;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** JCGM 101:2008 (GUM Supplement 1), and closed forms. */
class MonteCarloTest {
    private static final Draws DRAWS = new Draws(200_000, 20080901);

    private static double sum(double[] x) {
        return Arrays.stream(x).sum();
    }

    @Test
    void addsFourNormalInputs() {
        // JCGM 101:2008, 9.2.2: four of mean 0 and deviation 1 give 0, 2.0 and ±3.92 at 95 %.
        Distribution normal = Distribution.normal(new Estimate(0, 1));
        MonteCarlo sum = MonteCarlo.of(MonteCarloTest::sum, DRAWS, normal, normal, normal, normal);

        // Four standard deviations of a mean, of a deviation and of a percentile of 200 000 draws.
        assertEquals(0, sum.estimate().value(), 4 * 2 / Math.sqrt(200_000));
        assertEquals(2, sum.estimate().standardUncertainty(), 4 * 2 / Math.sqrt(400_000));
        assertEquals(-3.92, sum.coverageInterval(0.95).least(), 0.05);
        assertEquals(3.92, sum.coverageInterval(0.95).most(), 0.05);
    }

    @Test
    void addsFourRectangularInputs() {
        // JCGM 101:2008, 9.2.3 and annex E (from memory): deviation 1 each, ends at
        // ±2√3 (2 − (3/5)^¼) = ±3.88, nearer than the ±3.92 of the normal distribution.
        Distribution rectangular = Distribution.rectangular(0, Math.sqrt(3));
        MonteCarlo sum =
                MonteCarlo.of(
                        MonteCarloTest::sum,
                        DRAWS,
                        rectangular,
                        rectangular,
                        rectangular,
                        rectangular);

        double end = 2 * Math.sqrt(3) * (2 - Math.pow(0.6, 0.25));
        assertEquals(3.88, end, 0.005);
        assertEquals(end, sum.coverageInterval(0.95).most(), 0.03);
        assertEquals(-end, sum.coverageInterval(0.95).least(), 0.03);
    }

    @Test
    void dwellsAtTheEndsOfASwing() {
        MonteCarlo swing = MonteCarlo.of(x -> x[0], DRAWS, Distribution.arcsine(3, 2));

        // JCGM 101:2008, 6.4.6.3: a/√2; the distribution function is ½ + asin((x−c)/a)/π.
        assertEquals(2 / Math.sqrt(2), swing.estimate().standardUncertainty(), 0.01);
        assertEquals(3 + 2 * Math.sin(Math.PI * 0.25), swing.percentile(75), 0.02);
        assertEquals(0.5, swing.partWithin(new Range(3 - Math.sqrt(2), 3 + Math.sqrt(2))), 0.01);
    }

    @Test
    void agreesWithFirstOrderForCorrelatedNormals() {
        Estimate first = new Estimate(5, 0.3);
        Estimate second = new Estimate(7, 0.4);
        Correlations correlations = Correlations.none(2).with(0, 1, -0.6);

        MonteCarlo drawn =
                MonteCarlo.of(
                        MonteCarloTest::sum,
                        DRAWS,
                        List.of(Distribution.normal(first), Distribution.normal(second)),
                        correlations);

        // √(0.09 + 0.16 − 2·0.6·0.3·0.4), exact for a sum; four deviations of the estimate.
        assertEquals(Math.sqrt(0.106), drawn.estimate().standardUncertainty(), 0.0021);
    }

    @Test
    void followsExactlyWhereTheCorrelationIsOne() {
        MonteCarlo difference =
                MonteCarlo.of(
                        x -> x[0] - x[1],
                        DRAWS,
                        List.of(
                                Distribution.normal(new Estimate(1, 0.2)),
                                Distribution.normal(new Estimate(1, 0.2))),
                        Correlations.none(2).with(0, 1, 1));

        assertEquals(0, difference.estimate().standardUncertainty(), 1e-9);
    }

    @Test
    void givesTheSameFiguresFromTheSameSeed() {
        Distribution normal = Distribution.normal(new Estimate(0, 1));
        Draws few = new Draws(1_000, 42);

        assertArrayEquals(
                MonteCarlo.of(x -> x[0], few, normal).sortedResults(),
                MonteCarlo.of(x -> x[0], few, normal).sortedResults());
    }

    @Test
    void refusesCorrelatedInputsThatAreNotNormal() {
        List<Distribution> inputs =
                List.of(Distribution.rectangular(0, 1), Distribution.normal(new Estimate(0, 1)));
        Correlations correlations = Correlations.none(2).with(0, 1, 0.5);

        assertThrows(
                IllegalArgumentException.class,
                () -> MonteCarlo.of(MonteCarloTest::sum, DRAWS, inputs, correlations));
    }

    @Test
    void refusesAFunctionThatIsNotFiniteForADraw() {
        Distribution aroundZero = Distribution.normal(new Estimate(0, 1));

        assertThrows(
                IllegalArgumentException.class,
                () -> MonteCarlo.of(x -> Math.sqrt(x[0]), DRAWS, aroundZero));
        assertThrows(IllegalArgumentException.class, () -> new Draws(10, 1));
    }
}
