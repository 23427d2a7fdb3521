package halfwidth.bench;

import halfwidth.page.Filled;
import halfwidth.page.Page;
import halfwidth.page.Pages;
import halfwidth.page.Part;
import halfwidth.run.Budget;
import halfwidth.run.InputQuantity;
import halfwidth.run.OpenPage;
import halfwidth.run.Script;
import halfwidth.run.Values;
import halfwidth.run.Workshop;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import jdk.jshell.JShell;
import jdk.jshell.Snippet;
import jdk.jshell.SnippetEvent;
import jdk.jshell.execution.LocalExecutionControlProvider;

/**
 * How long the feed-trim page takes to open and to follow a changed value, beside the same math as
 * plain compiled Java. Prints medians of wall time; run it on a machine with nothing else to do.
 */
public final class KernelBench {
    private static final String PAGE = "transmit/feed-trim";

    private KernelBench() {}

    /** Runs every measurement once. */
    public static void main(String[] arguments) throws Exception {
        Page page = new Pages(Path.of("notebooks")).find(PAGE);
        System.out.printf(
                Locale.ROOT,
                "%s on Java %s, %d processors; median wall time%n",
                PAGE,
                System.getProperty("java.version"),
                Runtime.getRuntime().availableProcessors());
        coldStarts();
        double evaluation = evaluation(page);
        double ordinary = ordinaryJShell(page);
        double replay = replay(page);
        double plain = plain();
        workings(page);
        uncertainty(page);
        System.out.println();
        ratio("evaluated again through JShell / replay", ordinary / replay);
        ratio("opened in a fresh engine / replay", evaluation / replay);
        ratio("replay / plain Java", replay / plain);
    }

    private static void coldStarts() throws Exception {
        Path jar = Path.of("target/halfwidth.jar");
        if (!Files.exists(jar)) {
            System.out.println("no packaged program: run mvn package for the cold starts");
            return;
        }
        Path compiled = Path.of("target/compiled");
        report(
                "cold start of the program to results, page never opened",
                5,
                () -> {
                    clear(compiled);
                    return start(jar);
                });
        start(jar);
        report("cold start of the program to results, page opened before", 5, () -> start(jar));
    }

    private static void clear(Path folder) throws Exception {
        if (Files.isDirectory(folder)) {
            try (var files = Files.list(folder)) {
                for (Path file : files.toList()) {
                    Files.delete(file);
                }
            }
        }
    }

    private static int start(Path jar) throws Exception {
        return new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-jar",
                        jar.toString(),
                        "run",
                        PAGE)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start()
                .waitFor();
    }

    private static double evaluation(Page page) throws Exception {
        Values values = Values.of(Filled.example(page));
        try (Workshop workshop = Workshop.withoutSpare(Budget.USUAL)) {
            Callable<Object> open =
                    () -> {
                        try (OpenPage opened = workshop.open(Script.of(page))) {
                            return opened.run(values);
                        }
                    };
            for (int i = 0; i < 5; i++) {
                open.call();
            }
            return report("opened and run in a fresh engine of a warm worker", 15, open);
        }
    }

    /** What a changed value would cost if JShell, as the JDK ships it, evaluated the page again. */
    private static double ordinaryJShell(Page page) throws Exception {
        try (JShell shell =
                JShell.builder()
                        .executionEngine(new LocalExecutionControlProvider(), Map.of())
                        .build()) {
            shell.addToClasspath(System.getProperty("java.class.path"));
            List<String> snippets = snippets(shell, page);
            Callable<Object> evaluate =
                    () -> {
                        for (String snippet : snippets) {
                            for (SnippetEvent event : shell.eval(snippet)) {
                                if (event.status() == Snippet.Status.REJECTED) {
                                    throw new IllegalStateException(snippet + " was refused");
                                }
                            }
                        }
                        return snippets;
                    };
            evaluate.call();
            return report("every snippet evaluated again through JShell, warm", 7, evaluate);
        }
    }

    /** The page's inputs with their example values, then its steps. */
    private static List<String> snippets(JShell shell, Page page) {
        List<String> snippets =
                new ArrayList<>(
                        List.of(
                                "import static java.lang.Math.*;",
                                "import java.util.*;",
                                "import tech.tablesaw.api.*;",
                                "import halfwidth.plot.*;"));
        Filled.example(page)
                .entries()
                .forEach(
                        (name, entry) ->
                                snippets.add("double " + name + " = " + entry.value() + ";"));
        snippets.add(
                "Table phasing = Table.create(DoubleColumn.create(\"SBO cut\", 0, 0, 0),"
                        + " DoubleColumn.create(\"CSB cut\", 0, 1.5, 2.25),"
                        + " DoubleColumn.create(\"offset 1\", -14, -8, -4.5),"
                        + " DoubleColumn.create(\"offset 2\", -10, -4, -0.5));");
        for (Part part : page.parts()) {
            if (part instanceof Part.Steps steps) {
                String rest = steps.code();
                while (!rest.isBlank()) {
                    var next = shell.sourceCodeAnalysis().analyzeCompletion(rest);
                    snippets.add(next.source());
                    rest = next.remaining();
                }
            }
        }
        return snippets;
    }

    private static double replay(Page page) throws Exception {
        Filled filled = Filled.example(page);
        Values[] values = {
            Values.of(filled.with("target", "0.5")), Values.of(filled.with("target", "0.6"))
        };
        try (Workshop workshop = Workshop.withoutSpare(Budget.USUAL);
                OpenPage open = workshop.open(Script.of(page))) {
            for (int i = 0; i < 3000; i++) {
                open.run(values[i % 2]);
            }
            int[] turn = {0};
            return report(
                    "replay after one input changed, there and back over the pipe",
                    2000,
                    () -> open.run(values[turn[0]++ % 2]));
        }
    }

    /** What a changed value costs where every numeric step is shown as a formula with numbers. */
    private static void workings(Page page) throws Exception {
        Filled filled = Filled.example(page);
        Values[] values = {
            Values.of(filled.with("target", "0.5")), Values.of(filled.with("target", "0.6"))
        };
        try (Workshop workshop = Workshop.withoutSpare(Budget.USUAL);
                OpenPage open = workshop.open(Script.of(page))) {
            for (int i = 0; i < 1000; i++) {
                open.work(values[i % 2]);
            }
            int[] turn = {0};
            report(
                    "the same replay with the workings of its steps",
                    500,
                    () -> open.work(values[turn[0]++ % 2]));
        }
    }

    /** What uncertainty and trace cost: nothing until they are asked for. */
    private static void uncertainty(Page page) throws Exception {
        Filled filled = Filled.example(page).with("velocityFactor", "0.83 ± 0.02");
        Values values = Values.of(filled);
        List<InputQuantity> inputs = InputQuantity.of(filled);
        Duration time = Duration.ofMinutes(1);
        try (Workshop workshop = Workshop.withoutSpare(Budget.USUAL);
                OpenPage open = workshop.open(Script.of(page))) {
            long start = System.nanoTime();
            open.run(values);
            long opened = System.nanoTime();
            open.propagate(values, inputs, 0, time);
            long first = System.nanoTime();
            System.out.printf(
                    Locale.ROOT,
                    "%12.0f ms  first run of a page that is opened, and %.0f ms for its first"
                            + " budget of %d numbers%n",
                    (opened - start) / 1e6,
                    (first - opened) / 1e6,
                    inputs.size());
            for (int i = 0; i < 50; i++) {
                open.propagate(values, inputs, 0, time);
            }
            report(
                    "budget: every number moved up and down",
                    50,
                    () -> open.propagate(values, inputs, 0, time));
            report("budget with 1000 draws", 5, () -> open.propagate(values, inputs, 1000, time));
        }
    }

    private static double plain() throws Exception {
        double[] sink = {0};
        PlainFeedTrim trim = new PlainFeedTrim();
        for (int i = 0; i < 20_000; i++) {
            sink[0] += trim.run(0.5 + i % 2);
        }
        int[] turn = {0};
        double time =
                report(
                        "the same math as plain compiled Java",
                        2000,
                        () -> sink[0] += trim.run(0.5 + turn[0]++ % 2));
        if (Double.isNaN(sink[0])) {
            throw new IllegalStateException("the math went wrong");
        }
        return time;
    }

    /** Times runs and prints their median (ms). */
    private static double report(String what, int runs, Callable<?> run) throws Exception {
        long[] times = new long[runs];
        for (int i = 0; i < runs; i++) {
            long start = System.nanoTime();
            run.call();
            times[i] = System.nanoTime() - start;
        }
        Arrays.sort(times);
        double median = times[runs / 2] / 1e6;
        System.out.printf(Locale.ROOT, "%12.4f ms  %s%n", median, what);
        return median;
    }

    private static void ratio(String what, double ratio) {
        System.out.printf(Locale.ROOT, "%12.1f     %s%n", ratio, what);
    }
}
