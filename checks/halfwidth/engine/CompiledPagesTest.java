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
                    "double twice = 2 * x; // m\n"
                            + "double bad = nothing;\n"
                            + "int zero = 1 / (int) (x - x);");

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

    /** One bit turned 0.0254 into 0.02638 and ordered a wrong cut. */
    @Test
    void fileWithOneBitFlippedIsNoticedAndThrownAway() throws IOException {
        kept();
        Path file;
        try (Stream<Path> files = Files.list(folder)) {
            file = files.findFirst().orElseThrow();
        }
        byte[] bytes = Files.readAllBytes(file);
        for (int at = 0; at < bytes.length; at += 1 + bytes.length / 97) {
            byte[] flipped = bytes.clone();
            flipped[at] ^= (byte) (1 << at % 8);
            Files.write(file, flipped);
            assertTrue(CompiledPages.in(folder).find(SCRIPT).isEmpty(), "bit at byte " + at);
            assertFalse(Files.exists(file), "bit at byte " + at);
        }
        Files.write(file, bytes);
        assertTrue(CompiledPages.in(folder).find(SCRIPT).isPresent());
    }

    @Test
    void codePutIntoTheFolderIsHeldAgainstTheBounds() throws Exception {
        Script hostile = script("System.setProperty(\"halfwidth.kept\", \"harm\");");
        try (Compiler compiler = new Compiler()) {
            // With a digest that is right, as whoever can write there could make it.
            CompiledPages.in(folder).keep(SCRIPT, compiler.compile(hostile));
        }
        Program found = Admission.of(CompiledPages.in(folder).find(SCRIPT).orElseThrow());
        Outcome.Failed failed = (Outcome.Failed) run(found).steps().get(0).outcome();
        assertEquals("Not allowed on a page: java.lang.System.setProperty.", failed.reason());
        assertEquals(10, failed.line());
        assertEquals(null, System.getProperty("halfwidth.kept"));
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
