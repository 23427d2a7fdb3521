package halfwidth.run;

import static halfwidth.run.Bench.page;
import static halfwidth.run.Bench.realAt;
import static halfwidth.run.Bench.values;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A worker whose JVM talks, or does not come up, or ends: no step is blamed that did not run. */
@Timeout(240)
class WorkerStartTest {
    private static final Duration LONG = Duration.ofSeconds(60);

    @TempDir Path folder;

    /** The first prints before the program in it starts, the second all the time. */
    @ParameterizedTest
    @CsvSource({"JDK_JAVA_OPTIONS, --show-version", "_JAVA_OPTIONS, -Xlog:gc*=debug:stdout"})
    void optionsThatMakeEveryJavaPrintDoNoHarm(String name, String options) throws Exception {
        File printed = folder.resolve("printed").toFile();
        ProcessBuilder builder =
                new ProcessBuilder(
                        System.getProperty("java.home") + "/bin/java",
                        "-cp",
                        System.getProperty("java.class.path"),
                        OnePage.class.getName());
        builder.environment().put(name, options);
        assertEquals(
                0, builder.redirectErrorStream(true).redirectOutput(printed).start().waitFor());
        String text = Files.readString(printed.toPath(), StandardCharsets.UTF_8);
        assertTrue(text.contains("the page gives 300.0"), text);
        assertTrue(text.matches("(?s).*(penJDK|JDK|gc).*"), "the option makes it talk: " + text);
    }

    /** A program that runs a page, with much to collect for the JVM. */
    static final class OnePage {
        public static void main(String[] arguments) {
            try (Bench bench = new Bench(Budget.USUAL)) {
                Run run =
                        bench.run(
                                """
                                double sum = 0;
                                for (int i = 0; i < 300; i++) sum += new double[1 << 20].length;
                                double made = sum / (1 << 20);
                                """);
                System.out.println("the page gives " + realAt(run, 12));
            }
        }
    }

    @Test
    void aJvmThatDoesNotComeUpIsToldWithWhatItSays() {
        Budget tooMuch = new Budget(LONG, 900_000_000, 20_000);
        try (Bench bench = new Bench(tooMuch)) {
            String told =
                    assertThrows(PageLost.class, () -> bench.run("double a = 1;")).getMessage();
            assertTrue(told.startsWith("The Java that runs pages could not start ("), told);
            assertTrue(told.contains("exit status 1"), told);
            assertTrue(told.contains("heap"), told);
            assertTrue(told.contains("--megabytes"), told);
            assertFalse(told.contains("step"), told);
        }
    }

    @Test
    void oneThatCannotBeStartedAtAllIsToldToo() {
        Launch launch = new Launch(96, Optional.of(new Bubblewrap(folder.resolve("none"))));
        String told = assertThrows(PageLost.class, () -> Worker.start(launch)).getMessage();
        assertTrue(told.startsWith("The Java that runs pages could not start: "), told);
    }

    @Test
    void oneThatEndsWhileNoStepRunsBlamesNone() throws Exception {
        Set<ProcessHandle> before = descendants();
        try (Worker worker = Worker.start(new Launch(96, Optional.empty()))) {
            Message.Open open = new Message.Open(page(List.of(), "double a = 1;"), 20_000, true);
            worker.ask(open, Message.Opened.class, LONG);
            Set<ProcessHandle> its = descendants();
            its.removeAll(before);
            its.forEach(ProcessHandle::destroyForcibly);
            for (ProcessHandle one : its) {
                one.onExit().get();
            }
            Message.Go go = new Message.Go(values(), Map.of(), false);
            WorkerLost lost =
                    assertThrows(WorkerLost.class, () -> worker.ask(go, Message.Ran.class, LONG));
            assertTrue(lost.reason().contains("ended while no step ran"), lost.reason());
            assertFalse(lost.advice().contains("System.exit"), lost.advice());
        }
    }

    private static Set<ProcessHandle> descendants() {
        return ProcessHandle.current().descendants().collect(Collectors.toCollection(HashSet::new));
    }
}
