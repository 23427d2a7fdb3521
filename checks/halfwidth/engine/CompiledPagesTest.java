package halfwidth.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.run.Message;
import halfwidth.run.Outcome;
import halfwidth.run.Run;
import halfwidth.run.Script;
import halfwidth.run.Shown;
import halfwidth.run.Values;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.FutureTask;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CompiledPagesTest {
    @TempDir Path folder;

    private static Script script(String code) {
        return new Script(
                List.of(
                        new Script.Variable(1, "x", "java.lang.Double"),
                        new Script.Code(10, code, false)),
                List.of("twice"));
    }

    private static final Script SCRIPT =
            script(
                    "double twice = 2 * x; // m\ndouble bad = nothing;\nint zero = 1 / (int) (x - x);");

    private Program kept() {
        try (Compiler compiler = new Compiler()) {
            Program program = compiler.compile(SCRIPT);
            CompiledPages.in(folder).keep(SCRIPT, program);
            return program;
        }
    }

    /**
     * Runs in a thread group of its own, as a worker does: a thread left in it counts as a fault.
     */
    private static Run run(Program program) throws Exception {
        FutureTask<Run> task =
                new FutureTask<>(
                        () ->
                                new PageRun(program, new Effects(program), Linked.of(program))
                                        .run(
                                                new Message.Go(
                                                        new Values(Map.of("x", 4.0), true),
                                                        Map.of(),
                                                        true),
                                                new Capture(),
                                                index -> {}));
        new Thread(new ThreadGroup("page"), task).start();
        return task.get();
    }

    @Test
    void keptPageRunsAsTheCompiledOne() throws Exception {
        Program compiled = kept();
        Run again = run(CompiledPages.in(folder).find(SCRIPT).orElseThrow());
        assertEquals(run(compiled), again);
        assertEquals(Map.of("twice", new Shown.Real(8)), again.finals());
        assertEquals(12, ((Outcome.Failed) again.steps().get(2).outcome()).line());
    }

    @Test
    void pageWithOneLetterChangedIsAnother() {
        kept();
        Script other = script("double twice = 3 * x; // m\ndouble bad = nothing;\nint zero = 1;");
        assertTrue(CompiledPages.in(folder).find(other).isEmpty());
    }

    @Test
    void spoiledFileCountsAsNotThere() throws IOException {
        kept();
        try (Stream<Path> files = Files.list(folder)) {
            Path file = files.findFirst().orElseThrow();
            byte[] bytes = Files.readAllBytes(file);
            Files.write(file, java.util.Arrays.copyOf(bytes, bytes.length / 2));
        }
        assertFalse(CompiledPages.in(folder).find(SCRIPT).isPresent());
    }

    @Test
    void folderThatCannotBeWrittenIsNoObstacle() throws IOException {
        Path file = Files.createFile(folder.resolve("a file, no folder"));
        try (Compiler compiler = new Compiler()) {
            CompiledPages.in(file).keep(SCRIPT, compiler.compile(SCRIPT));
        }
        assertTrue(CompiledPages.in(file).find(SCRIPT).isEmpty());
    }
}
