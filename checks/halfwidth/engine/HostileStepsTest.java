package halfwidth.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.engine.HostileSteps.Hostile;
import halfwidth.run.Budget;
import halfwidth.run.OpenPage;
import halfwidth.run.Outcome;
import halfwidth.run.Run;
import halfwidth.run.Script;
import halfwidth.run.Shown;
import halfwidth.run.Values;
import halfwidth.run.Workshop;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * What the bounds of page code refuse. Every hostile step compiles, so that it is the bounds that
 * keep it from running; and of those that can show it, each does its harm where there are none.
 */
@Tag("long")
class HostileStepsTest {
    /** Always the same, so that the page is compiled once only. */
    private static final Path FOLDER = Path.of("target", "hostile-steps").toAbsolutePath();

    /** Some of them start programs and compilers. */
    private static final Budget PATIENT = new Budget(Duration.ofMinutes(10), 256, 100_000);

    private static final Values VALUES = new Values(Map.of("given", 1.0), true);

    private static List<Hostile> steps;

    @BeforeAll
    static void read() throws IOException {
        empty();
        steps = HostileSteps.in(FOLDER);
    }

    private static void empty() throws IOException {
        if (Files.exists(FOLDER)) {
            try (Stream<Path> old = Files.walk(FOLDER)) {
                old.sorted(Comparator.reverseOrder()).map(Path::toFile).forEach(File::delete);
            }
        }
        Files.createDirectories(FOLDER);
    }

    private static List<Hostile> shown() {
        return steps.stream().filter(Hostile::shown).toList();
    }

    private static Run run(List<Hostile> some, boolean bounded) {
        Script script = HostileSteps.page(some);
        try (Workshop workshop = Workshop.withoutSpare(PATIENT);
                OpenPage page = bounded ? workshop.open(script) : workshop.openUnbounded(script)) {
            return page.run(VALUES);
        }
    }

    private static boolean harmed(Hostile step, Run run) {
        boolean value =
                outcomes(step, run)
                        .anyMatch(
                                outcome ->
                                        outcome instanceof Outcome.Done done
                                                && done.value() instanceof Shown.Words words
                                                && words.text().equals("harm"));
        return value || Files.exists(step.mark());
    }

    private static Stream<Outcome> outcomes(Hostile step, Run run) {
        return run.steps().stream()
                .filter(ran -> step.has(ran.step().line()))
                .map(Run.Ran::outcome);
    }

    @Test
    void thereAreManyAndManyOfThemShowTheirHarm() {
        assertTrue(steps.size() >= 120, steps.size() + " steps");
        assertTrue(shown().size() >= 40, shown().size() + " that show their harm");
    }

    @Test
    void everyOneCompilesAndNoneIsLoaded() {
        Script script = HostileSteps.page(steps);
        CompiledPages pages = CompiledPages.besideProgram();
        Program compiled =
                pages.find(script)
                        .orElseGet(
                                () -> {
                                    try (Compiler compiler = new Compiler()) {
                                        Program program = compiler.compile(script);
                                        pages.keep(script, program);
                                        return program;
                                    }
                                });
        assertEquals(
                List.of(),
                compiled.lines().stream().flatMap(line -> line.problem().stream()).toList());
        Program admitted = Admission.of(compiled);
        assertEquals(
                List.of(),
                steps.stream()
                        .filter(step -> !refused(step, admitted))
                        .map(step -> found(step, admitted))
                        .toList());
    }

    private static String found(Hostile step, Program admitted) {
        List<Outcome.Failed> failed =
                admitted.lines().stream()
                        .filter(line -> step.has(line.statement().line()))
                        .flatMap(line -> line.problem().stream())
                        .toList();
        return step + " is not refused for " + step.uses() + " but " + failed;
    }

    /** Whether a step is refused, at a line of its own, for what it uses. */
    private static boolean refused(Hostile step, Program admitted) {
        return admitted.lines().stream()
                .filter(line -> step.has(line.statement().line()))
                .flatMap(line -> line.problem().stream())
                .anyMatch(
                        failed ->
                                failed.reason().startsWith("Not allowed on a page: ")
                                        && failed.reason().contains(step.uses())
                                        && !failed.advice().isBlank()
                                        && step.has(failed.line()));
    }

    @Test
    void noneDoesItsHarmInAWorkerAndOtherStepsRunOn() throws IOException {
        empty();
        HostileSteps.in(FOLDER);
        List<Hostile> all = shown();
        Run run = run(all, true);
        assertEquals(List.of(), all.stream().filter(step -> harmed(step, run)).toList());
        for (Hostile step : all) {
            assertTrue(
                    outcomes(step, run).anyMatch(Outcome.Failed.class::isInstance),
                    step.toString());
        }
    }

    @Test
    void withoutBoundsEachDoesItsHarm() throws IOException {
        empty();
        HostileSteps.in(FOLDER);
        List<Hostile> all = shown();
        Run run = run(all, false);
        assertEquals(
                List.of(),
                all.stream()
                        .filter(step -> !harmed(step, run))
                        .map(step -> step + ": " + outcomes(step, run).toList())
                        .toList());
    }
}
