package halfwidth.run;

import static halfwidth.run.Bench.page;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.laws.Draw;
import halfwidth.laws.Law;
import java.io.Serializable;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import jdk.jshell.JShell;
import jdk.jshell.Snippet;
import jdk.jshell.SnippetEvent;
import jdk.jshell.VarSnippet;
import jdk.jshell.execution.LocalExecutionControlProvider;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;

/** The kernel's promise: what a page shows equals a clean run with the values shown. */
class ReplayTest {
    /** A page has six statements at least and three more that show the inputs. */
    private static final int LEAST = 3;

    private static final List<String> INPUTS = List.of("p", "q", "r");
    private static Bench replaying;
    private static Bench fresh;

    @BeforeAll
    static void open() {
        replaying = new Bench(Budget.USUAL);
        fresh = new Bench(Budget.USUAL);
    }

    /** By law, the values compared on each of its pages: one that compares none cannot fail. */
    private static final Map<String, List<Integer>> COMPARED = new TreeMap<>();

    @AfterAll
    static void close() {
        replaying.close();
        fresh.close();
        COMPARED.forEach(
                (law, counts) -> {
                    int values = counts.stream().mapToInt(count -> count).sum();
                    System.out.printf("%s: %s values on %s pages%n", law, values, counts.size());
                    // One page alone may have all its inputs blank.
                    assertTrue(counts.size() == 1 || values >= LEAST * counts.size(), law);
                });
    }

    private static void compared(String law, int values) {
        COMPARED.computeIfAbsent(law, key -> new ArrayList<>()).add(values);
    }

    private static int values(Run run) {
        return (int)
                run.steps().stream().filter(ran -> ran.outcome() instanceof Outcome.Done).count();
    }

    @Law(tries = 15)
    void replayEqualsAFreshRun(Draw draw) {
        Random random = draw.random();
        Script script = page(INPUTS, code(random));
        int values = 0;
        try (OpenPage page = replaying.openUnbounded(script)) {
            for (int edit = 0; edit < 6; edit++) {
                Values given = new Values(values(random), true);
                Run replayed = page.run(given);
                if (edit >= 3) { // the earlier ones are there to leave something behind
                    assertEquals(
                            fresh.runUnbounded(script, given), replayed, () -> "page:\n" + script);
                    values += values(replayed);
                }
            }
        }
        compared("replayed as run afresh", values);
    }

    @Law(tries = 10)
    void aRunAfterInputsWereMovedEqualsAFreshRun(Draw draw) {
        Random random = draw.random();
        Script script = page(INPUTS, code(random));
        try (OpenPage page = replaying.openUnbounded(script)) {
            Values values = new Values(values(random), true);
            List<InputQuantity> inputs =
                    values.given().entrySet().stream()
                            .map(one -> input(one.getKey(), (Double) one.getValue()))
                            .toList();
            page.run(values);
            page.propagate(values, inputs, 20, Duration.ofSeconds(10));
            Run after = page.run(values);
            assertEquals(fresh.runUnbounded(script, values), after, () -> "page:\n" + script);
            compared("as run afresh after inputs were moved", values(after));
        }
    }

    private static InputQuantity input(String name, double value) {
        return new InputQuantity(name, "", 0, value, 0.75, 0.75);
    }

    /** The second way of computing: JShell as the JDK ships it. */
    @Law(tries = 8)
    void valuesEqualThoseOfAnOrdinaryJShell(Draw draw) {
        Random random = draw.random();
        String code = code(random);
        Map<String, Serializable> given = new LinkedHashMap<>();
        INPUTS.forEach(name -> given.put(name, random.nextInt(4) * 1.5));
        Map<String, String> expected = ordinary(given, code);
        int values = 0;
        try (OpenPage page = replaying.openUnbounded(page(INPUTS, code))) {
            page.run(new Values(Map.of("p", 9.0, "q", 9.0, "r", 9.0), true));
            for (Run.Ran ran : page.run(new Values(given, true)).steps()) {
                String name = ran.step().name();
                if (ran.outcome() instanceof Outcome.Done done
                        && done.value() instanceof Shown.Real real
                        && name.startsWith("last")) {
                    assertEquals(expected.get(name), String.valueOf(real.value()), code);
                    values++;
                }
            }
        }
        assertTrue(values >= LEAST, code);
        compared("as an ordinary JShell has them", values);
    }

    private static Map<String, String> ordinary(Map<String, Serializable> given, String code) {
        System.clearProperty("halfwidth.replay"); // it runs in this JVM, and leaves that behind
        try (JShell shell =
                JShell.builder()
                        .executionEngine(new LocalExecutionControlProvider(), Map.of())
                        .build()) {
            shell.eval("import java.util.*;");
            given.forEach((name, value) -> shell.eval("double " + name + " = " + value + ";"));
            String rest = code;
            while (!rest.isBlank()) {
                var next = shell.sourceCodeAnalysis().analyzeCompletion(rest);
                for (SnippetEvent event : shell.eval(next.source())) {
                    assertNotEquals(Snippet.Status.REJECTED, event.status(), next.source());
                }
                rest = next.remaining();
            }
            Map<String, String> values = new HashMap<>();
            shell.variables()
                    .map(VarSnippet.class::cast)
                    .forEach(variable -> values.put(variable.name(), shell.varValue(variable)));
            return values;
        }
    }

    private static Map<String, Serializable> values(Random random) {
        Map<String, Serializable> values = new HashMap<>();
        for (String name : INPUTS) {
            if (random.nextInt(5) > 0) {
                values.put(name, random.nextInt(4) * 1.5); // 0 makes some steps fail
            }
        }
        return values;
    }

    /** A page made of statements of the kinds that could leave state behind. */
    private static String code(Random random) {
        List<String> numbers = new ArrayList<>(INPUTS);
        StringBuilder code = new StringBuilder();
        int count = 6 + random.nextInt(8);
        for (int i = 0; i < count; i++) {
            code.append(statement(i, random, numbers)).append('\n');
        }
        for (int i = 0; i < numbers.size(); i++) {
            code.append("double last" + i + " = " + numbers.get(i) + " + 0;\n");
        }
        return code.toString();
    }

    private static String statement(int i, Random random, List<String> numbers) {
        String a = numbers.get(random.nextInt(numbers.size()));
        String b = numbers.get(random.nextInt(numbers.size()));
        String name = "v" + i;
        switch (random.nextInt(11)) {
            case 0 -> {
                numbers.add(name);
                return "double %s = %s + 2 * %s; // m".formatted(name, a, b);
            }
            case 1 -> {
                numbers.add(name);
                return "double %s; if (%s > %s) { %s = %s; }".formatted(name, a, b, name, a);
            }
            case 2 -> {
                return INPUTS.contains(a)
                        ? "%s += 1;".formatted(a)
                        : "%s = %s + 1;".formatted(a, b);
            }
            case 3 -> {
                numbers.add(name);
                return "int w%d = 12 / (int) %s; double %s = w%d;".formatted(i, a, name, i);
            }
            case 4 -> {
                numbers.add(name);
                return ("class C%d { static int calls; static double next(double x)"
                                + " { return x + ++calls; } } double %s = C%d.next(%s);")
                        .formatted(i, name, i, a);
            }
            case 5 -> {
                numbers.add(name);
                return "double f%d(double x) { return x * %s; } double %s = f%d(%s);"
                        .formatted(i, a, name, i, b);
            }
            case 6 -> {
                numbers.add(name);
                return ("List<Double> list%d = new ArrayList<>(); list%d.add(%s); list%d.add(%s);"
                                + " double %s = list%d.size();")
                        .formatted(i, i, a, i, b, name, i);
            }
            case 7 -> {
                numbers.add(name);
                return ("double %s = Integer.getInteger(\"halfwidth.replay\", 0) + %s;"
                                + " System.setProperty(\"halfwidth.replay\", \"7\");")
                        .formatted(name, a);
            }
            case 8 -> {
                numbers.add(name);
                return ("enum E%d { ONE; double kept; } double %s = E%d.ONE.kept + %s;"
                                + " E%d.ONE.kept = %s;")
                        .formatted(i, name, i, a, i, b);
            }
            case 9 -> {
                numbers.add(name);
                return ("double[] array%d = {%s, %s}; array%d[0] += 1; double %s = array%d[0];")
                        .formatted(i, a, b, i, name, i);
            }
            default -> {
                return "System.out.print(%s > 1e9 ? \"\" + %s : \"\");".formatted(a, b);
            }
        }
    }
}
