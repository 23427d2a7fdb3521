package halfwidth.engine;

import halfwidth.run.Message;
import halfwidth.run.Outcome;
import halfwidth.run.Rows;
import halfwidth.run.Run;
import halfwidth.run.Shown;
import halfwidth.run.Values;
import halfwidth.run.Worked;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.IntConsumer;

/** One run of a program from top to bottom. */
final class PageRun {
    private final Program program;
    private final Effects effects;
    private final Linked linked;
    private final Availability available;
    private final Map<Integer, Object> values = new LinkedHashMap<>();
    private final LeftThreads leftThreads =
            new LeftThreads(Thread.currentThread().getThreadGroup());
    private final Map<Integer, Worked> worked = new HashMap<>();
    private final Map<Integer, List<Rows>> rows = new HashMap<>();
    private boolean workings;
    private boolean brief;
    private boolean spoiled;

    /** Prepares a run on the current thread, which must be the only one of its group. */
    PageRun(Program program, Effects effects, Linked linked) {
        this.program = program;
        this.effects = effects;
        this.linked = linked;
        this.available = new Availability(program.lines());
    }

    /**
     * Runs every statement whose needs are met.
     *
     * @param go what to run with, which statements not to run, whether to note their workings
     * @param at told the index of each statement before it runs
     */
    Run run(Message.Go go, Capture capture, IntConsumer at) {
        Values given = go.values();
        workings = go.workings();
        Given.set(given);
        List<Run.Ran> steps = new ArrayList<>();
        List<Run.Ran> checks = new ArrayList<>();
        for (int i = 0; i < program.lines().size(); i++) {
            Program.Line line = program.lines().get(i);
            if (line.statement().check() && !given.example()) {
                continue;
            }
            at.accept(i);
            boolean missing = line.statement().hidden() && !given.given().containsKey(line.name());
            if (missing) {
                if (given.optional().contains(line.name())) {
                    available.leftBlank(i);
                } else {
                    available.missing(i);
                }
                continue;
            }
            Outcome outcome = outcome(i, Optional.ofNullable(go.barred().get(i)), capture);
            if (!line.statement().hidden() || outcome instanceof Outcome.Failed) {
                (line.statement().check() ? checks : steps).add(new Run.Ran(line.step(), outcome));
            }
        }
        at.accept(-1);
        return new Run(steps, checks, finals(), worked, rows);
    }

    private Outcome outcome(int index, Optional<Outcome.Failed> barred, Capture capture) {
        Program.Line line = program.lines().get(index);
        Optional<Outcome> obstacle = available.obstacle(effects.needs(index));
        if (obstacle.isPresent()) {
            boolean leftOut = obstacle.get() instanceof Outcome.Skipped;
            available.passOn(
                    effects.needs(index),
                    // What it would have changed stays as it was: it was not wanted.
                    leftOut ? effects.declared(index) : effects.affected(index));
            return obstacle.get();
        }
        Outcome outcome =
                line.problem()
                        .or(() -> barred.map(why -> why.at(line.statement().line())))
                        .map(Outcome.class::cast)
                        .orElseGet(() -> invoke(index, capture));
        if (outcome instanceof Outcome.Failed) {
            available.failed(line.statement().line(), effects.affected(index));
        }
        return outcome;
    }

    private Outcome invoke(int index, Capture capture) {
        Statement statement = program.lines().get(index).statement();
        try {
            Object value = workings ? noted(index) : linked.invoke(index);
            List<String> left = leftThreads.found();
            if (!left.isEmpty()) {
                spoiled = true;
                return statement.failed(
                        "The step left a thread running: " + String.join(", ", left) + ".",
                        "",
                        "End every thread in the step that starts it.");
            }
            String printed =
                    capture.take(); // of checks too, or the next step would seem to print it
            if (statement.check()) {
                return checked(statement, value, printed);
            }
            values.put(index, value);
            return shown(statement, value, printed);
        } catch (Throwable thrown) {
            capture.take();
            spoiled |= thrown instanceof OutOfMemoryError;
            return Explanation.of(thrown, line(thrown, statement));
        }
    }

    private Object noted(int index) throws Throwable {
        Noted.start();
        Object value = null;
        try {
            value = linked.invoke(index);
            return value;
        } finally {
            Noted.Notes notes = Noted.taken();
            Workings all = program.workings();
            all.of(index, notes.values()).ifPresent(how -> worked.put(index, how));
            List<Rows> seen = value == null ? List.of() : all.rows(notes.rows(), value);
            if (!seen.isEmpty()) {
                rows.put(index, seen);
            }
        }
    }

    /** Spares a run that nobody sees the views of tables and plots. */
    void showOnlySmallValues(boolean wanted) {
        brief = wanted;
    }

    private Outcome shown(Statement statement, Object value, String printed) {
        Shown shown = brief && value != null ? ValueView.brief(value) : ValueView.of(value);
        if (shown instanceof Shown.Real real && !Double.isFinite(real.value())) {
            return Explanation.notANumber(real.value(), statement.line());
        }
        return new Outcome.Done(shown, printed);
    }

    private Outcome checked(Statement statement, Object value, String printed) {
        boolean states = value instanceof Boolean || value instanceof Agreement;
        if (!states) {
            return shown(statement, value, printed);
        }
        if (statement.comment().isEmpty()) {
            return statement.failed(
                    "The check names no source.",
                    "",
                    "Say in a comment behind it where the expected value comes from.");
        }
        Agreement agreement =
                value instanceof Agreement given
                        ? given
                        : new Agreement((Boolean) value, "the condition is " + value);
        return agreement.holds()
                ? new Outcome.Done(new Shown.Flag(true), agreement.text())
                : statement.failed(
                        "The check does not hold: " + agreement.text() + ".",
                        "",
                        "Do not use the page before the difference is explained.");
    }

    /** The innermost line of the page in a stack trace. */
    private int line(Throwable thrown, Statement statement) {
        for (StackTraceElement frame : thrown.getStackTrace()) {
            OptionalInt line = program.places().pageLine(frame);
            if (line.isPresent()) {
                return line.getAsInt();
            }
        }
        return statement.line();
    }

    private Map<String, Shown> finals() {
        Map<String, Shown> finals = new LinkedHashMap<>();
        for (String name : program.wanted()) {
            effects.declaration(name)
                    .filter(declaration -> declaration.entryPoint().isPresent())
                    .filter(declaration -> available.has(name))
                    .ifPresent(
                            declaration ->
                                    finals.put(name, ValueView.of(linked.variable(declaration))));
        }
        return finals;
    }

    /** Whether the worker should not be used for another run. */
    boolean spoiled() {
        return spoiled;
    }

    /** The value that each statement gave, by index. */
    Map<Integer, Object> values() {
        return values;
    }
}
