package halfwidth.run;

import java.io.Serializable;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** A workshop for tests, which writes pages as plain text. */
final class Bench implements AutoCloseable {
    static final Budget SHORT = new Budget(Duration.ofSeconds(3), 96, 20_000);

    private final Workshop workshop;

    Bench(Budget budget) {
        workshop = Workshop.withoutSpare(budget);
    }

    /** A page whose first lines declare double inputs and whose code starts at line 10. */
    static Script page(List<String> inputs, String code) {
        List<Script.Piece> pieces = new ArrayList<>();
        for (int i = 0; i < inputs.size(); i++) {
            pieces.add(new Script.Variable(i + 1, inputs.get(i), "java.lang.Double"));
        }
        pieces.add(new Script.Code(10, code, false));
        return new Script(pieces, List.of());
    }

    static Values values(Object... namesAndValues) {
        Map<String, Serializable> given = new HashMap<>();
        for (int i = 0; i < namesAndValues.length; i += 2) {
            given.put((String) namesAndValues[i], (Serializable) namesAndValues[i + 1]);
        }
        return new Values(given, true);
    }

    OpenPage open(Script script) {
        return workshop.open(script);
    }

    /** Opens a page whose steps may do what no page may, to see what becomes of it then. */
    OpenPage openUnbounded(Script script) {
        return workshop.openUnbounded(script);
    }

    /** Runs such a page without inputs in a fresh engine. */
    Run runUnbounded(String code) {
        return runUnbounded(page(List.of(), code), values());
    }

    Run runUnbounded(Script script, Values values) {
        try (OpenPage page = openUnbounded(script)) {
            return page.run(values);
        }
    }

    /** Runs a page without inputs in a fresh engine. */
    Run run(String code) {
        return run(page(List.of(), code), values());
    }

    Run run(Script script, Values values) {
        try (OpenPage page = workshop.open(script)) {
            return page.run(values);
        }
    }

    /** The outcome of the step that starts at a line. */
    static Outcome at(Run run, int line) {
        return run.steps().stream()
                .filter(ran -> ran.step().line() == line)
                .map(Run.Ran::outcome)
                .findFirst()
                .orElseThrow(() -> new AssertionError("no step at line " + line + " in " + run));
    }

    static Outcome.Failed failureAt(Run run, int line) {
        if (at(run, line) instanceof Outcome.Failed failed) {
            return failed;
        }
        throw new AssertionError("line " + line + " did not fail: " + run);
    }

    static double realAt(Run run, int line) {
        if (at(run, line) instanceof Outcome.Done done && done.value() instanceof Shown.Real real) {
            return real.value();
        }
        throw new AssertionError("line " + line + " gave no number: " + run);
    }

    @Override
    public void close() {
        workshop.close();
    }
}
