package halfwidth.proof;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.source.util.JavacTask;
import halfwidth.localizer.Range;
import halfwidth.localizer.uncertainty.Contribution;
import halfwidth.localizer.uncertainty.Coverage;
import halfwidth.localizer.uncertainty.Distribution;
import halfwidth.localizer.uncertainty.Estimate;
import halfwidth.localizer.uncertainty.LineFit;
import halfwidth.localizer.uncertainty.Propagation;
import halfwidth.localizer.uncertainty.Quantity;
import halfwidth.source.JavaText;
import java.io.IOException;
import java.lang.reflect.Executable;
import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.tools.Diagnostic;
import org.hipparchus.stat.StatUtils;
import org.hipparchus.stat.descriptive.DescriptiveStatistics;
import org.hipparchus.stat.descriptive.StreamingStatistics;
import org.hipparchus.stat.regression.OLSMultipleLinearRegression;
import org.hipparchus.stat.regression.SimpleRegression;
import org.hipparchus.util.FastMath;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import tech.tablesaw.api.DoubleColumn;
import tech.tablesaw.api.IntColumn;
import tech.tablesaw.api.NumericColumn;
import tech.tablesaw.api.Row;
import tech.tablesaw.api.Table;

/**
 * Steps that state wrong units, and right ones, for every method that gives a number. What is right
 * follows from dimensions alone, in {@link DimensionsOfMethods}; nothing is taken from the table
 * that the proof goes by. All steps stand on one page, which is compiled once.
 */
class UnitsUnderFireTest {
    private static final List<String> IMPORTS =
            List.of(
                    "import static java.lang.Math.*;",
                    "import java.util.*;",
                    "import java.util.function.*;",
                    "import java.util.stream.*;",
                    "import it.unimi.dsi.fastutil.doubles.DoubleComparator;",
                    "import halfwidth.localizer.uncertainty.*;",
                    "import org.hipparchus.stat.descriptive.*;",
                    "import org.hipparchus.stat.regression.*;",
                    "import tech.tablesaw.api.*;");

    private static final List<String> STATED = List.of("m", "m²", "1", "s", "mm");

    /**
     * @param what for messages
     * @param right the unit that is right; "" or empty if none is, or none can be known
     */
    private record Step(String what, String java, String unit, Optional<String> right) {
        boolean isRight() {
            return right.filter(unit::equals).isPresent();
        }

        String words() {
            return what + " // " + unit;
        }
    }

    private static final List<PageStatement> PAGE = new ArrayList<>();
    private static final List<Step> STEPS = new ArrayList<>();
    private static final List<Finding> FINDINGS = new ArrayList<>();

    @BeforeAll
    static void provesThePage() {
        inputs();
        calls().forEach(UnitsUnderFireTest::everyUnit);
        WrittenSteps.all().forEach(UnitsUnderFireTest::written);
        int first = PAGE.size();
        for (Step step : STEPS) {
            PAGE.add(
                    new PageStatement(
                            PageStatement.Kind.VARIABLE,
                            "double step%d = %s;".formatted(PAGE.size(), step.java()),
                            "step" + PAGE.size(),
                            "double",
                            true,
                            step.unit(),
                            Map.of()));
        }
        Map<Integer, Finding> found = PageProof.of(IMPORTS, PAGE);
        for (int i = 0; i < STEPS.size(); i++) {
            FINDINGS.add(found.get(first + i));
        }
    }

    private static void inputs() {
        Map<String, String> m = Map.of("", "m");
        input("double", "metres", m);
        input("double", "seconds", Map.of("", "s"));
        input("double", "ratio", Map.of("", "1"));
        input("double", "angle", Map.of("", "°"));
        input("double[]", "array", m);
        input("List<Double>", "list", m);
        input("Double", "boxed", m);
        input("Map<String, Double>", "byName", m);
        input("Table", "t", Map.of("x", "m", "y", "s"));
        input("Row", "row", Map.of("x", "m", "y", "s"));
        input("DescriptiveStatistics", "described", m);
        input("StreamingStatistics", "streamed", m);
        input("SimpleRegression", "line", Map.of("x", "s", "y", "m"));
        input("OLSMultipleLinearRegression", "plane", m);
        input("Estimate", "estimate", m);
        WrittenSteps.members().forEach(PAGE::add);
    }

    private static void input(String type, String name, Map<String, String> units) {
        PAGE.add(new PageStatement(PageStatement.Kind.INPUT, "", name, type, false, "", units));
    }

    private static List<MethodCalls.Call> calls() {
        return Stream.of(
                        MethodCalls.of("t.doubleColumn(\"x\")", DoubleColumn.class),
                        MethodCalls.of(
                                "(NumericColumn<Double>) t.doubleColumn(\"x\")",
                                NumericColumn.class),
                        MethodCalls.of("t.intColumn(\"x\")", IntColumn.class),
                        MethodCalls.of("t", Table.class),
                        MethodCalls.of("row", Row.class),
                        MethodCalls.of("Optional.of(metres)", Optional.class),
                        MethodCalls.of("OptionalDouble.of(metres)", OptionalDouble.class),
                        MethodCalls.of("OptionalInt.of((int) metres)", OptionalInt.class),
                        MethodCalls.of("DoubleStream.of(array)", DoubleStream.class),
                        MethodCalls.of("IntStream.of((int) metres)", IntStream.class),
                        MethodCalls.of("list.stream()", Stream.class),
                        MethodCalls.of("list", List.class),
                        MethodCalls.of(
                                "DoubleStream.of(array).summaryStatistics()",
                                DoubleSummaryStatistics.class),
                        MethodCalls.of("boxed", Double.class),
                        MethodCalls.of("described", DescriptiveStatistics.class),
                        MethodCalls.of("streamed", StreamingStatistics.class),
                        MethodCalls.of("line", SimpleRegression.class),
                        MethodCalls.of("plane", OLSMultipleLinearRegression.class),
                        MethodCalls.of("estimate", Estimate.class),
                        MethodCalls.of("estimate.expanded(2)", Range.class),
                        MethodCalls.of("Quantity.of(\"x\", estimate)", Quantity.class),
                        MethodCalls.of("Distribution.normal(estimate)", Distribution.class),
                        MethodCalls.of("LineFit.of(new double[] {seconds}, array)", LineFit.class),
                        MethodCalls.of(
                                "Propagation.of(v -> v[0] * v[0], Quantity.of(\"x\", estimate))",
                                Propagation.class),
                        MethodCalls.of(
                                "Propagation.of(v -> v[0], Quantity.of(\"x\", estimate)).largest()",
                                Contribution.class),
                        MethodCalls.ofStatic(Estimate.class),
                        MethodCalls.ofStatic(Coverage.class),
                        MethodCalls.ofStatic(Math.class),
                        MethodCalls.ofStatic(StrictMath.class),
                        MethodCalls.ofStatic(FastMath.class),
                        MethodCalls.ofStatic(Double.class),
                        MethodCalls.ofStatic(StatUtils.class))
                .flatMap(List::stream)
                .toList();
    }

    /** One method of the page for each call, and a step that takes its value in each unit. */
    private static void everyUnit(MethodCalls.Call call) {
        String name = "call" + PAGE.size();
        PAGE.add(WrittenSteps.member("double " + name + "() { " + call.body() + " }"));
        Optional<String> right = DimensionsOfMethods.of(call);
        units(right)
                .forEach(
                        unit ->
                                STEPS.add(
                                        new Step(
                                                call.owner()
                                                        + "."
                                                        + call.method()
                                                        + ": "
                                                        + call.java(),
                                                name + "()",
                                                unit,
                                                right)));
    }

    private static Stream<String> units(Optional<String> right) {
        return Stream.concat(STATED.stream(), right.stream())
                .filter(unit -> !unit.isEmpty())
                .distinct();
    }

    private static void written(WrittenSteps.Written one) {
        Optional<String> right = Optional.of(one.unit());
        units(right).forEach(unit -> STEPS.add(new Step(one.java(), one.java(), unit, right)));
    }

    private static List<String> those(java.util.function.BiPredicate<Step, Finding> which) {
        List<String> words = new ArrayList<>();
        for (int i = 0; i < STEPS.size(); i++) {
            if (which.test(STEPS.get(i), FINDINGS.get(i))) {
                words.add(STEPS.get(i).words() + "  " + FINDINGS.get(i).proof().why());
            }
        }
        return words;
    }

    /** A step that the compiler does not take is left open, and would show nothing. */
    @Test
    void everyStepCompiles() throws IOException {
        String text = new PageSource(IMPORTS, PAGE).text();
        List<String> problems = new ArrayList<>();
        JavacTask task =
                JavaText.lookUp(
                        PageSource.CLASS + ".java",
                        text,
                        problem -> {
                            if (problem.getKind() == Diagnostic.Kind.ERROR) {
                                problems.add(
                                        text.split("\n")[(int) problem.getLineNumber() - 1]
                                                + " "
                                                + problem.getMessage(Locale.ROOT));
                            }
                        });
        task.parse();
        task.analyze();

        assertEquals("", String.join("\n", problems));
    }

    /** A misspelt row would leave its method open for ever. */
    @Test
    void everyMethodOfTheTableExists() throws ClassNotFoundException {
        List<String> missing = new ArrayList<>();
        for (Map.Entry<String, Map<String, Effect>> one : KnownMethods.all().entrySet()) {
            Class<?> type = Class.forName(one.getKey());
            Set<String> declared =
                    Stream.of(type.getDeclaredMethods(), type.getDeclaredConstructors())
                            .flatMap(Stream::of)
                            .map(Executable.class::cast)
                            .map(MethodCalls::signature)
                            .collect(Collectors.toSet());
            one.getValue().keySet().stream()
                    .filter(method -> !declared.contains(method))
                    .forEach(method -> missing.add(one.getKey() + " " + method));
        }
        assertEquals(List.of(), missing);
    }

    @Test
    void noWrongUnitIsProved() {
        List<String> wrong = those((step, found) -> !step.isRight() && found.proof().proved());

        assertEquals("", String.join("\n", wrong));
    }

    @Test
    void noRightUnitIsRefused() {
        List<String> refused =
                those((step, found) -> step.isRight() && found.refused().isPresent());

        assertEquals("", String.join("\n", refused));
    }

    @Test
    void theRightUnitsOfAllButAFewAreProved() {
        List<String> right = those((step, found) -> step.isRight());
        List<String> open = those((step, found) -> step.isRight() && !found.proof().proved());
        long wrong = STEPS.size() - right.size();
        long refused =
                those((step, found) -> !step.isRight() && found.refused().isPresent()).size();
        System.out.printf(
                "units under fire: of %d wrong units %d refused, %d left open, none proved;"
                        + " of %d right ones %d proved%n",
                wrong, refused, wrong - refused, right.size(), right.size() - open.size());

        assertTrue(wrong >= 3000, wrong + " wrong");
        assertTrue(right.size() - open.size() >= 760, String.join("\n", open));
    }
}
