package halfwidth.localizer.uncertainty;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.laws.Draw;
import halfwidth.laws.Law;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;

/** JCGM 100:2008, annex H.1 and H.2, and the laws of first-order propagation. */
class PropagationTest {

    /** JCGM 100:2008, H.1.2: l = ls + d − ls (δα θ + αs δθ), lengths in nm. */
    private static double gaugeBlock(double[] x) {
        return x[0] + x[1] - x[0] * (x[2] * x[3] + x[4] * x[5]);
    }

    /** The inputs of table H.1, with their degrees of freedom. */
    private static Propagation gaugeBlockOfTableH1() {
        return Propagation.of(
                PropagationTest::gaugeBlock,
                new Quantity("standard", new Estimate(50_000_623, 25), 18),
                new Quantity("difference", new Estimate(215, 9.7), 25.6),
                new Quantity("expansion difference", Estimate.within(0, 1e-6), 50),
                Quantity.of("temperature", new Estimate(-0.1, 0.41)),
                Quantity.of("expansion", Estimate.within(11.5e-6, 2e-6)),
                new Quantity("temperature difference", Estimate.within(0, 0.05), 2));
    }

    @Test
    void givesTheGaugeBlockOfTheGuide() {
        Estimate length = gaugeBlockOfTableH1().result();

        // H.1.6: l = 50.000 838 mm, printed to the nanometre.
        assertEquals(50_000_838, length.value(), 0.5);
        // H.1.4: u = 32 nm, printed to the nanometre.
        assertEquals(32, length.standardUncertainty(), 0.5);
    }

    @Test
    void givesTheContributionsOfTheGaugeBlock() {
        List<Contribution> contributions = gaugeBlockOfTableH1().contributions();

        // Table H.1, printed to the digits below.
        assertEquals(25, contributions.get(0).standardUncertainty(), 0.5);
        assertEquals(16.6, contributions.get(1).standardUncertainty(), 0.05);
        assertEquals(9.7, contributions.get(2).standardUncertainty(), 0.05);
        assertEquals(2.9, contributions.get(3).standardUncertainty(), 0.05);
        // The two of zero first-order sensitivity.
        assertEquals(0, contributions.get(4).standardUncertainty(), 1e-6);
        assertEquals(0, contributions.get(5).standardUncertainty(), 1e-6);
    }

    @Test
    void namesTheLargestContribution() {
        assertEquals("standard", gaugeBlockOfTableH1().largest().name());
    }

    @Test
    void givesTheDegreesOfFreedomOfTheGaugeBlock() {
        // H.1.6 prints 16.7, cut and not rounded, and goes on with 16.
        double degrees = gaugeBlockOfTableH1().effectiveDegreesOfFreedom();

        assertEquals(16.75, degrees, 0.05);
        // H.1.6: t99(16) = 2.92 and U99 = 93 nm, printed to the digits shown.
        double factor = Coverage.factor(0.99, Math.floor(degrees));
        assertEquals(2.92, factor, 0.005);
        assertEquals(93, factor * 32, 0.5);
    }

    /** Table H.2: V (V), I (A), φ (rad), read together five times. */
    private static final double[][] TABLE_H2 = {
        {5.007, 19.663e-3, 1.0456},
        {4.994, 19.639e-3, 1.0438},
        {5.005, 19.640e-3, 1.0468},
        {4.990, 19.685e-3, 1.0428},
        {4.999, 19.678e-3, 1.0433}
    };

    private static double resistance(double[] x) {
        return x[0] / x[1] * Math.cos(x[2]);
    }

    private static double reactance(double[] x) {
        return x[0] / x[1] * Math.sin(x[2]);
    }

    private static double impedance(double[] x) {
        return x[0] / x[1];
    }

    private static Quantity column(String name, int column) {
        double[] readings = new double[TABLE_H2.length];
        for (int row = 0; row < readings.length; row++) {
            readings[row] = TABLE_H2[row][column];
        }
        return Quantity.ofReadings(name, readings);
    }

    private static Propagation fromMeans(
            ToDoubleFunction<double[]> function, Correlations correlations) {
        return Propagation.of(
                function, List.of(column("V", 0), column("I", 1), column("φ", 2)), correlations);
    }

    private static Propagation fromMeans(ToDoubleFunction<double[]> function) {
        return fromMeans(function, Correlations.ofReadings(TABLE_H2));
    }

    @Test
    void givesTheMeansOfTableH2() {
        // Printed in table H.2 to the digits shown.
        assertEquals(4.9990, column("V", 0).estimate().value(), 5e-5);
        assertEquals(0.0032, column("V", 0).estimate().standardUncertainty(), 5e-5);
        assertEquals(19.6610e-3, column("I", 1).estimate().value(), 5e-8);
        assertEquals(0.0095e-3, column("I", 1).estimate().standardUncertainty(), 5e-8);
        assertEquals(1.04446, column("φ", 2).estimate().value(), 5e-6);
        assertEquals(0.00075, column("φ", 2).estimate().standardUncertainty(), 5e-6);
        assertEquals(4, column("V", 0).degreesOfFreedom(), 0);
    }

    @Test
    void givesTheCorrelationsOfTableH2() {
        Correlations correlations = Correlations.ofReadings(TABLE_H2);

        // Printed in table H.2 to two digits.
        assertEquals(-0.36, correlations.between(0, 1), 0.005);
        assertEquals(0.86, correlations.between(0, 2), 0.005);
        assertEquals(-0.65, correlations.between(1, 2), 0.005);
    }

    @Test
    void givesTableH3() {
        // Table H.3 (first approach). The tolerance is a unit of the last digit printed: the guide
        // propagated values it had rounded.
        assertEquals(127.732, fromMeans(PropagationTest::resistance).result().value(), 1e-3);
        assertEquals(219.847, fromMeans(PropagationTest::reactance).result().value(), 1e-3);
        assertEquals(254.260, fromMeans(PropagationTest::impedance).result().value(), 1e-3);
        assertEquals(0.071, uncertainty(PropagationTest::resistance), 1e-3);
        assertEquals(0.295, uncertainty(PropagationTest::reactance), 1e-3);
        assertEquals(0.236, uncertainty(PropagationTest::impedance), 1e-3);
    }

    private static double uncertainty(ToDoubleFunction<double[]> function) {
        return fromMeans(function).result().standardUncertainty();
    }

    @Test
    void givesTheCorrelationsOfTheResultsOfTableH3() {
        Propagation r = fromMeans(PropagationTest::resistance);
        Propagation x = fromMeans(PropagationTest::reactance);
        Propagation z = fromMeans(PropagationTest::impedance);

        // Table H.3; the third digit from memory. A unit of it as tolerance, as above.
        assertEquals(-0.588, r.correlationWith(x), 1e-3);
        assertEquals(-0.485, r.correlationWith(z), 1e-3);
        assertEquals(0.993, x.correlationWith(z), 1e-3);
    }

    @Test
    void agreesWithTheSecondApproachOfTableH4() {
        // Table H.4: R, X and Z of each row, then their means.
        Estimate r = meanOfRows(PropagationTest::resistance);
        Estimate x = meanOfRows(PropagationTest::reactance);
        Estimate z = meanOfRows(PropagationTest::impedance);

        assertEquals(127.732, r.value(), 1e-3);
        assertEquals(0.071, r.standardUncertainty(), 1e-3);
        assertEquals(219.847, x.value(), 1e-3);
        assertEquals(0.295, x.standardUncertainty(), 1e-3);
        assertEquals(254.260, z.value(), 1e-3);
        assertEquals(0.236, z.standardUncertainty(), 1e-3);
    }

    private static Estimate meanOfRows(ToDoubleFunction<double[]> function) {
        double[] rows = new double[TABLE_H2.length];
        for (int row = 0; row < rows.length; row++) {
            rows[row] = function.applyAsDouble(TABLE_H2[row]);
        }
        return Quantity.ofReadings("row", rows).estimate();
    }

    @Test
    void givesTheLargerErrorOfNeglectedCorrelations() {
        // JCGM 100:2008, H.2.4 (figures from memory): 0.195, 0.201 and 0.204 without correlations.
        Correlations none = Correlations.none(3);
        Estimate r = fromMeans(PropagationTest::resistance, none).result();
        Estimate x = fromMeans(PropagationTest::reactance, none).result();
        Estimate z = fromMeans(PropagationTest::impedance, none).result();

        assertEquals(0.195, r.standardUncertainty(), 1e-3);
        assertEquals(0.201, x.standardUncertainty(), 1e-3);
        assertEquals(0.204, z.standardUncertainty(), 1e-3);
    }

    @Test
    void findsTheSensitivityOfACurve() {
        // d(sin x)/dx = cos x, at a place and with an uncertainty typical of a phase in radians.
        Propagation sine =
                Propagation.of(x -> Math.sin(x[0]), Quantity.of("x", new Estimate(0.6, 0.01)));

        // What the extrapolated differences leave out is of the order (u/8)^4.
        assertEquals(Math.cos(0.6), sine.largest().sensitivity(), 1e-9);
    }

    @Law
    void propagatesASumOfIndependentInputsAsTheRootOfSquares(Draw draw) {
        double first = draw.between(-1e6, 1e6);
        double firstUncertainty = draw.between(0.01, 1000);
        double secondUncertainty = draw.between(0.01, 1000);
        Estimate sum =
                Propagation.of(
                                x -> x[0] + x[1],
                                Quantity.of("first", new Estimate(first, firstUncertainty)),
                                Quantity.of("second", new Estimate(0, secondUncertainty)))
                        .result();

        double expected = Math.hypot(firstUncertainty, secondUncertainty);
        // Differences of a million in steps of ten thousandths keep about nine digits.
        assertEquals(expected, sum.standardUncertainty(), 1e-6 * expected);
    }

    @Law
    void cancelsWhatIsCommonToBothSidesOfADifference(Draw draw) {
        double uncertainty = draw.between(0.01, 1000);
        Quantity left = Quantity.of("left", new Estimate(10, uncertainty));
        Quantity right = Quantity.of("right", new Estimate(4, uncertainty));
        Correlations same = Correlations.none(2).with(0, 1, 1);

        Estimate difference = Propagation.of(x -> x[0] - x[1], List.of(left, right), same).result();

        assertEquals(0, difference.standardUncertainty(), 1e-4 * uncertainty);
    }

    @Test
    void refusesDegreesOfFreedomOfCorrelatedInputs() {
        Propagation correlated = fromMeans(PropagationTest::impedance);

        assertThrows(IllegalStateException.class, correlated::effectiveDegreesOfFreedom);
    }

    @Test
    void refusesAFunctionThatIsNotFinite() {
        Quantity zero = Quantity.of("zero", new Estimate(0, 0.1));

        IllegalArgumentException refusal =
                assertThrows(
                        IllegalArgumentException.class,
                        () -> Propagation.of(x -> Math.log(x[0]), zero));
        assertTrue(refusal.getMessage().contains("must be finite"), refusal.getMessage());
    }

    @Test
    void refusesCorrelationsThatCannotBe() {
        // Two inputs that both follow a third exactly cannot run against each other.
        Correlations two = Correlations.none(3).with(0, 1, 0.9).with(1, 2, 0.9);

        assertThrows(
                IllegalArgumentException.class,
                () -> fromMeans(PropagationTest::impedance, two.with(0, 2, -0.9)));
        assertThrows(IllegalArgumentException.class, () -> two.with(0, 1, 1.01));
        assertThrows(IllegalArgumentException.class, () -> two.with(1, 1, 0.5));
        assertThrows(IllegalArgumentException.class, () -> two.with(0, 3, 0.5));
    }

    @Test
    void refusesCorrelationsOfAnInputThatDidNotVary() {
        double[][] rows = {{1, 5}, {2, 5}, {3, 5}};

        assertThrows(IllegalArgumentException.class, () -> Correlations.ofReadings(rows));
    }
}
