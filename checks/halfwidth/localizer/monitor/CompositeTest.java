package halfwidth.localizer.monitor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.laws.Draw;
import halfwidth.laws.Law;
import halfwidth.localizer.monitor.PairReturn.Currents;
import halfwidth.localizer.monitor.PairReturn.Phases;
import halfwidth.localizer.uncertainty.Estimate;
import java.util.List;
import java.util.Random;
import org.hipparchus.complex.Complex;
import org.hipparchus.stat.descriptive.DescriptiveStatistics;
import org.junit.jupiter.api.Test;

class CompositeTest {
    private static final double U = 0.5;

    private static PairReturn pair(String name, double weight, double carrier, double[] phases) {
        return new PairReturn(
                name,
                weight,
                new Currents(carrier, 0.2 * carrier, phases[2]),
                new Phases(new Estimate(phases[0], U), new Estimate(phases[1], U)));
    }

    /** Every element's return delayed and added on its own. */
    private static double bruteForce(double[][] phases, double[] weights, double[] carriers) {
        Complex carrier = Complex.ZERO;
        Complex sbo = Complex.ZERO;
        for (int i = 0; i < phases.length; i++) {
            double excess = phases[i][0];
            double common = phases[i][1];
            double c = weights[i] * carriers[i];
            double s = 0.2 * c;
            Complex left = Phasors.delayed(Complex.ONE, common - excess / 2);
            Complex right = Phasors.delayed(new Complex(phases[i][2], 0), common + excess / 2);
            carrier = carrier.add(left.multiply(c)).add(right.multiply(c));
            sbo = sbo.add(left.multiply(new Complex(0, s))).add(right.multiply(new Complex(0, -s)));
        }
        return 2 * sbo.divide(carrier).getReal();
    }

    @Law
    void sumsEveryElementsReturn(Draw draw) {
        double excess1 = draw.between(-30, 30);
        double excess2 = draw.between(-30, 30);
        double common = draw.between(-30, 30);
        double a = draw.between(0.7, 1.4);
        double[][] phases = {{excess1, common, a}, {excess2, 0, 1}, {3, -2, 1 / a}};
        double[] weights = {1, 0.5, -0.1};
        double[] carriers = {1, 0.8, 0.3};
        Composite composite =
                new Composite(
                        List.of(
                                pair("1", 1, 1, phases[0]),
                                pair("2", 0.5, 0.8, phases[1]),
                                pair("3", -0.1, 0.3, phases[2])));
        assertEquals(bruteForce(phases, weights, carriers), composite.reading().value(), 1e-12);
        List<PairShare> shares = composite.shares();
        assertEquals(
                composite.reading().value(),
                shares.stream().mapToDouble(PairShare::ddm).sum(),
                1e-12);
        assertEquals(1, shares.stream().mapToDouble(PairShare::carrierPart).sum(), 1e-12);
        assertEquals(
                composite.reading().standardUncertainty(),
                Math.sqrt(
                        shares.stream()
                                .mapToDouble(s -> Math.pow(s.standardUncertainty(), 2))
                                .sum()),
                1e-12);
    }

    @Test
    void readsOnePairAsItReadsAlone() {
        Composite alone = new Composite(List.of(pair("1", 2, 3, new double[] {12, 77, 0.9})));
        assertEquals(new PairModel(0.4, 0.9).readingAt(12), alone.reading().value(), 1e-12);
        assertEquals(0.4, 2 * Currents.ofSensitivity(3, 0.4).sideband() / 3, 1e-12);
    }

    @Test
    void readsNothingWhenEveryPairIsNulled() {
        double[] nulled = {0, 0, 1};
        Composite composite =
                new Composite(List.of(pair("1", 1, 1, nulled), pair("2", 1, 0.6, nulled)));
        assertEquals(0, composite.reading().value(), 1e-15);
        // Near the null a degree of pair 1 is worth −K/2·π/180 times its part of the carrier.
        assertEquals(-0.4 / 2 * Math.PI / 180 / 1.6, composite.shares().get(0).perDegree(), 1e-9);
    }

    @Test
    void turnsOverWithTheSides() {
        Composite one =
                new Composite(
                        List.of(
                                pair("1", 1, 1, new double[] {10, 3, 1}),
                                pair("2", 1, 0.5, new double[] {-4, 0, 1})));
        Composite mirrored =
                new Composite(
                        List.of(
                                pair("1", 1, 1, new double[] {-10, 3, 1}),
                                pair("2", 1, 0.5, new double[] {4, 0, 1})));
        assertEquals(-one.reading().value(), mirrored.reading().value(), 1e-12);
    }

    @Test
    void statesTheUncertaintyThatDrawsShow() {
        double[][] phases = {{6, 4, 0.9}, {-8, 0, 1}, {3, -5, 1.1}};
        double[] weights = {1, 1, 1};
        double[] carriers = {1, 0.7, 0.4};
        Composite composite =
                new Composite(
                        List.of(
                                pair("1", 1, 1, phases[0]),
                                pair("2", 1, 0.7, phases[1]),
                                pair("3", 1, 0.4, phases[2])));
        Random random = new Random(3);
        DescriptiveStatistics draws = new DescriptiveStatistics();
        for (int i = 0; i < 50_000; i++) {
            double[][] drawn = new double[3][];
            for (int n = 0; n < 3; n++) {
                drawn[n] =
                        new double[] {
                            phases[n][0] + U * random.nextGaussian(),
                            phases[n][1] + U * random.nextGaussian(),
                            phases[n][2]
                        };
            }
            draws.addValue(bruteForce(drawn, weights, carriers));
        }
        double u = composite.reading().standardUncertainty();
        // 50 000 draws know a standard deviation to 0.32 %; three times that.
        assertEquals(draws.getStandardDeviation(), u, 0.01 * u);
        // A reading off by two standard uncertainties of the difference.
        double off = 2 * Math.hypot(u, 0.001);
        Estimate measured = new Estimate(composite.reading().value() + off, 0.001);
        assertEquals(2, composite.departure(measured), 1e-9);
    }

    @Test
    void refusesWhatHasNoReading() {
        double[] nulled = {0, 0, 1};
        assertThrows(IllegalArgumentException.class, () -> new Composite(List.of()));
        IllegalArgumentException refusal =
                assertThrows(
                        IllegalArgumentException.class,
                        () ->
                                new Composite(
                                        List.of(
                                                pair("1", 1, 1, nulled),
                                                pair("2", -1, 1, nulled))));
        assertTrue(refusal.getMessage().contains("must not cancel"));
        assertThrows(
                IllegalArgumentException.class,
                () -> new Composite(List.of(pair("1", 1, 1, nulled), pair("1", 1, 1, nulled))));
        assertThrows(IllegalArgumentException.class, () -> new Currents(1, 0.2, 0));
        assertThrows(IllegalArgumentException.class, () -> pair("1", Double.NaN, 1, nulled));
    }
}
