package halfwidth.engine;

import halfwidth.run.Message;
import halfwidth.run.Run;
import halfwidth.run.Script;
import halfwidth.run.Values;
import java.util.Map;

/**
 * A page run in the JVM of the test, again and again: thousands of runs without the way to a worker
 * and back, and without views of the tables and plots that nobody looks at.
 */
public final class ManyRuns {
    private final Program program;
    private final Effects effects;
    private Linked linked;

    private ManyRuns(Program program) {
        this.program = program;
        this.effects = new Effects(program);
    }

    /** Compiles a page, or takes it as it was compiled before. */
    public static ManyRuns of(Script script) {
        Program found =
                CompiledPages.besideProgram()
                        .find(script)
                        .orElseGet(
                                () -> {
                                    try (Compiler compiler = new Compiler()) {
                                        Program compiled = compiler.compile(script);
                                        CompiledPages.besideProgram().keep(script, compiled);
                                        return compiled;
                                    }
                                });
        return new ManyRuns(found);
    }

    /** One run from top to bottom, as if it were the first. */
    public Run run(Values values) {
        if (linked == null || program.declaresTypes()) {
            linked = Linked.of(program);
        }
        Run[] run = new Run[1];
        Thread thread =
                new Thread(
                        new ThreadGroup("page"),
                        () -> {
                            PageRun pageRun = new PageRun(program, effects, linked);
                            pageRun.showOnlySmallValues(true);
                            Capture capture = new Capture();
                            capture.reset(Integer.MAX_VALUE);
                            Message.Go go = new Message.Go(values, Map.of(), false);
                            run[0] = pageRun.run(go, capture, at -> {});
                        });
        thread.start();
        try {
            thread.join();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        if (run[0] == null) {
            throw new IllegalStateException("the page's thread ended without a run");
        }
        return run[0];
    }
}
