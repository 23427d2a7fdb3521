package halfwidth.run;

import static halfwidth.run.Bench.page;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.laws.Draw;
import halfwidth.laws.Law;
import halfwidth.localizer.uncertainty.Estimate;
import halfwidth.run.Response.Manner;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What inputs do to the steps of a page, found by running its own code. */
class PagePropagationTest {
    private static final Duration TIME = Duration.ofMinutes(2);
    private static Bench bench;

    @BeforeAll
    static void open() {
        bench = new Bench(new Budget(Duration.ofMinutes(5), 512, 200_000));
    }

    @AfterAll
    static void close() {
        bench.close();
    }

    private record Input(String name, double value, double uncertainty) {
        Input(String name, Estimate estimate) {
            this(name, estimate.value(), estimate.standardUncertainty());
        }

        InputQuantity quantity() {
            double step = uncertainty > 0 ? uncertainty : 1e-4;
            return new InputQuantity(name, "", 0, value, uncertainty, step);
        }
    }

    private static Propagation propagate(String code, int draws, Input... inputs) {
        List<String> names = Arrays.stream(inputs).map(Input::name).toList();
        Script page = page(names, code);
        Script script = new Script(page.pieces(), List.of("y"));
        // Freed of bounds, since one of them ends its worker.
        try (OpenPage open = bench.openUnbounded(script)) {
            return open.propagate(
                    values(inputs),
                    Arrays.stream(inputs).map(Input::quantity).toList(),
                    draws,
                    TIME);
        }
    }

    private static Values values(Input... inputs) {
        Map<String, java.io.Serializable> given = new HashMap<>();
        Arrays.stream(inputs).forEach(input -> given.put(input.name(), input.value()));
        return new Values(given, true);
    }

    /** |c u| of an input on the result y; 0 where it does not move it. */
    private static double contribution(Propagation found, int input) {
        return response(found, input)
                .map(r -> r.sensitivity() * found.inputs().get(input).standardUncertainty())
                .map(Math::abs)
                .orElse(0.0);
    }

    private static Optional<Response> response(Propagation found, int input) {
        return found.results().get("y").responses().stream()
                .filter(response -> response.input() == input)
                .findFirst();
    }

    private static double combined(Propagation found) {
        double squares = 0;
        for (int i = 0; i < found.inputs().size(); i++) {
            squares += Math.pow(contribution(found, i), 2);
        }
        return Math.sqrt(squares);
    }

    /** JCGM 100:2008, H.1: lengths in nm; the values of table H.1. */
    @Test
    void givesTheEndGaugeOfTheGuide() {
        Propagation found =
                propagate(
                        "double thermal = ls * (da * theta + as * dt);\n"
                                + "double y = ls + d - thermal;",
                        0,
                        new Input("ls", 50_000_623, 25),
                        new Input("d", 215, 9.7),
                        new Input("da", Estimate.within(0, 1e-6)),
                        new Input("theta", -0.1, 0.41),
                        new Input("as", Estimate.within(11.5e-6, 2e-6)),
                        new Input("dt", Estimate.within(0, 0.05)));
        double[] printed = {25, 9.7, 2.9, 0, 0, 16.6}; // table H.1, last column
        for (int i = 0; i < printed.length; i++) {
            assertEquals(printed[i], contribution(found, i), 0.05, "input " + i);
        }
        assertEquals(32, combined(found), 0.5); // H.1.4
    }

    /** JCGM 100:2008, H.2, with its inputs taken as independent, through loops and a method. */
    @Test
    void givesTheImpedanceOfTheGuideWithoutCorrelations() {
        Propagation found =
                propagate(
                        """
                        double ratio(double a, double b) { return a / b; }
                        double y = 0;
                        for (int i = 0; i < 10; i++) { y += ratio(v, a) * cos(phi) / 10; }
                        """,
                        0,
                        new Input("v", 4.9990, 0.0032),
                        new Input("a", 0.019661, 0.0000095),
                        new Input("phi", 1.04446, 0.00075));
        // H.2.4 (figure from memory): u(R) = 0.195 Ω without correlations.
        assertEquals(0.195, combined(found), 1e-3);
    }

    /** JCGM 101:2008, 9.2.2: four standard normal inputs added; u = 2.0, 95 % within ± 3.92. */
    @Test
    void drawsTheAdditiveModelOfSupplementOne() {
        Propagation found =
                propagate(
                        "double y = p + q + r + s;",
                        20_000,
                        new Input("p", 0, 1),
                        new Input("q", 0, 1),
                        new Input("r", 0, 1),
                        new Input("s", 0, 1));
        assertEquals(2.0, combined(found), 1e-9);
        Drawn drawn = found.draws().get("y");
        assertEquals(20_000, drawn.draws());
        // Within four standard errors: 2/√M, 2/√(2M), and 2.671·2/√M for an end (normal law).
        double error = 2 / Math.sqrt(20_000);
        assertEquals(0, drawn.mean(), 4 * error);
        assertEquals(2.0, drawn.standardDeviation(), 4 * error / Math.sqrt(2));
        assertEquals(-3.92, drawn.low(), 4 * 2.671 * error);
        assertEquals(3.92, drawn.high(), 4 * 2.671 * error);
    }

    /**
     * JCGM 101:2008, 9.3: calibration of a mass, in mg. First order gives 0.0539, which misses that
     * the air's density is uncertain (table 5: with the terms of higher order 0.0750). The
     * densities are drawn here from normal laws of the same standard deviations.
     */
    @Test
    void drawsTellThatFirstOrderMissesTheBuoyancyOfSupplementOne() {
        Propagation found =
                propagate(
                        "double y = (m + dm) * (1 + (air - 1.2) * (1 / weight - 1 / standard))"
                                + " - 100000;",
                        20_000,
                        new Input("m", 100_000, 0.050),
                        new Input("dm", 1.234, 0.020),
                        new Input("air", Estimate.within(1.2, 0.1)),
                        new Input("weight", Estimate.within(8000, 1000)),
                        new Input("standard", Estimate.within(8000, 50)));
        assertEquals(0.0539, combined(found), 0.5e-4);
        assertEquals(1.234, found.draws().get("y").mean(), 0.003);
        assertEquals(0.0750, found.draws().get("y").standardDeviation(), 0.002);
    }

    @Law(tries = 20)
    void isExactWhereAPageIsLinear(Draw draw) {
        List<Double> factors = draw.list(3, 3, () -> draw.between(-9, 9));
        List<Double> uncertainties = draw.list(3, 3, () -> draw.between(0.01, 5));
        List<Double> at = draw.list(3, 3, () -> draw.between(-100, 100));
        List<Input> inputs = new ArrayList<>();
        double squares = 0;
        for (int i = 0; i < 3; i++) {
            inputs.add(new Input("x" + i, at.get(i), uncertainties.get(i)));
            squares += Math.pow(factors.get(i) * uncertainties.get(i), 2);
        }
        Propagation found =
                propagate(
                        "double[] c = {%s, %s, %s};\ndouble y = c[0]*x0 + c[1]*x1 + c[2]*x2 + 7;"
                                .formatted(factors.toArray()),
                        0,
                        inputs.toArray(Input[]::new));
        assertEquals(Math.sqrt(squares), combined(found), 1e-9 * (1 + Math.sqrt(squares)));
        assertTrue(
                found.results().get("y").responses().stream()
                        .allMatch(response -> response.manner() == Manner.STRAIGHT));
    }

    @Test
    void reportsAConditionThatFallsOtherwiseAndDoesNotAverageIt() {
        Propagation found =
                propagate(
                        "double steep = x > 1 ? 10 : 1;\ndouble y = steep * x;",
                        0,
                        new Input("x", 0.95, 0.1));
        assertEquals(Manner.TURNS, response(found, 0).orElseThrow().manner());
        assertFalse(response(found, 0).orElseThrow().firstOrder());
        assertEquals(1, found.turns().size(), "only the step where it begins: " + found.turns());
        assertTrue(found.turns().get(0).up());
    }

    @Test
    void takesABranchThatGoesOnStraightAsStraight() {
        Propagation found =
                propagate(
                        "double y = x > 1 ? 2 * x : 1 + x + (x - 1);", 0, new Input("x", 1.0, 0.1));
        assertEquals(Manner.STRAIGHT, response(found, 0).orElseThrow().manner());
        assertEquals(0.2, contribution(found, 0), 1e-12);
    }

    @Test
    void tellsAValueThatBendsByBothSides() {
        Propagation found = propagate("double y = x * x;", 0, new Input("x", 0.0, 0.5));
        Response response = response(found, 0).orElseThrow();
        assertEquals(Manner.BENT, response.manner());
        assertEquals(0.25, response.up());
        assertEquals(0.25, response.down());
    }

    @Test
    void tellsWhereAValueEnds() {
        Propagation found =
                propagate(
                        "OptionalDouble y = x > 0 ? OptionalDouble.of(3 * x) :"
                                + " OptionalDouble.empty();",
                        0,
                        new Input("x", 1.0, 2.0));
        // An optional that holds a number is one.
        Response response = response(found, 0).orElseThrow();
        assertEquals(Manner.ENDS, response.manner());
        assertEquals(3, response.sensitivity(), 1e-9);
        assertTrue(Double.isNaN(response.down()));
    }

    @Test
    void countsDrawsWithoutAValue() {
        Propagation found =
                propagate(
                        "double y = 1 / 0.0 * 0 + 1;\nif (x < 0) { throw new"
                                + " IllegalArgumentException(); }\ny = x;",
                        0,
                        new Input("x", 1.0, 0.1));
        assertTrue(found.results().isEmpty(), "a result that is no number has no trace");
        Drawn drawn =
                propagate(
                                "double y = Double.valueOf(x < 0 ? \"none\" : \"1\") + x;",
                                4000,
                                new Input("x", 0.0, 1))
                        .draws()
                        .get("y");
        assertEquals(4000, drawn.draws() + drawn.without());
        assertEquals(2000, drawn.without(), 4 * Math.sqrt(1000)); // half of them: binomial law
    }

    @Test
    void tracesAResultBackToInputsAndStepsByName() {
        Propagation found =
                propagate(
                        """
                        double a = p * p;
                        double b = q + 1;
                        double[] kept = {0};
                        kept[0] = a;
                        double y = kept[0] + 0 * r;
                        """,
                        0, new Input("p", 3, 0.1), new Input("q", 1, 0.1), new Input("r", 1, 0.1));
        Trace trace = found.results().get("y");
        assertEquals(List.of("p", "r"), trace.inputs());
        assertEquals(List.of(3, 5, 6, 7), trace.steps(), "all but the step of b");
        assertEquals(List.of(0), trace.responses().stream().map(Response::input).toList());
    }

    @Test
    void movesEachCellOfAColumnByItself() {
        Script script =
                new Script(
                        List.of(
                                new Script.Variable(1, "t", Script.TABLE),
                                new Script.Code(
                                        2,
                                        "double y = t.doubleColumn(\"a\").get(0)"
                                                + " + 10 * t.doubleColumn(\"a\").get(2);",
                                        false)),
                        List.of("y"));
        Values.Columns columns =
                new Values.Columns(
                        List.of(
                                new Values.ColumnValues(
                                        "a", Double.class, Arrays.asList(1.0, null, 3.0))));
        List<InputQuantity> cells =
                List.of(
                        new InputQuantity("t", "a", 1, 1.0, 0.5, 0.5),
                        new InputQuantity("t", "a", 3, 3.0, 0.5, 0.5));
        try (OpenPage open = bench.open(script)) {
            Propagation found =
                    open.propagate(new Values(Map.of("t", columns), true), cells, 0, TIME);
            assertEquals(0.5, contribution(found, 0), 1e-9);
            assertEquals(5, contribution(found, 1), 1e-9);
        }
    }

    @Test
    void stopsWhenTheTimeIsOver() {
        Script page = page(List.of("x"), "Thread.sleep(200);\ndouble y = x;");
        List<InputQuantity> many = new ArrayList<>();
        for (int i = 0; i < 50; i++) {
            many.add(new InputQuantity("x", "", 0, 1, 0.1, 0.1));
        }
        try (OpenPage open = bench.openUnbounded(page)) {
            Propagation found =
                    open.propagate(values(new Input("x", 1, 0)), many, 0, Duration.ofMillis(500));
            assertTrue(found.moved() >= 1 && found.moved() < 50, found.moved() + " moved");
            assertFalse(found.complete());
        }
    }

    @Test
    void runsTheRestWhereAStepEndsItsWorker() {
        Propagation found =
                propagate(
                        "double bad = x > 1.05 ? exit() : 1;\ndouble y = 2 * x;\n"
                                + "double exit() { System.exit(3); return 0; }",
                        0,
                        new Input("x", 1.0, 0.1));
        assertEquals(0.2, contribution(found, 0), 1e-9);
    }
}
