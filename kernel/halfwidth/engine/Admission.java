package halfwidth.engine;

import halfwidth.bounds.Bounds;
import halfwidth.bounds.Refusal;
import halfwidth.run.Outcome;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Keeps a program within the bounds: no class of a step that leaves them is loaded, and the step
 * says why.
 */
final class Admission {
    private final Program program;
    private final Map<String, Refusal> refused;

    private Admission(Program program, Map<String, Refusal> refused) {
        this.program = program;
        this.refused = refused;
    }

    /** The program as far as it may run. */
    static Program of(Program program) {
        Set<String> declarations =
                program.lines().stream()
                        .filter(line -> line.statement().hidden())
                        .flatMap(line -> line.compiled().stream())
                        .map(CompiledStatement::className)
                        .collect(Collectors.toSet());
        Map<String, Refusal> refused = new HashMap<>();
        Bounds.refused(program.classes(), declarations)
                .forEach((name, why) -> refused.merge(snippet(name), why, Admission::first));
        return refused.isEmpty() ? program : new Admission(program, refused).admitted();
    }

    /** The class of the statement within which a class is declared. */
    private static String snippet(String className) {
        return Places.snippet(className).orElse(className);
    }

    private static Refusal first(Refusal one, Refusal other) {
        return other.line() >= 0 && (one.line() < 0 || other.line() < one.line()) ? other : one;
    }

    private Program admitted() {
        Map<String, byte[]> classes = new HashMap<>(program.classes());
        classes.keySet().removeIf(name -> refused.containsKey(snippet(name)));
        List<Program.Line> lines = program.lines().stream().map(this::admitted).toList();
        return new Program(lines, classes, program.wanted(), program.places(), program.workings());
    }

    private Program.Line admitted(Program.Line line) {
        Optional<Refusal> why = line.compiled().map(compiled -> refused.get(compiled.className()));
        return why.isEmpty() ? line : line.with(failed(line.statement(), why.get()));
    }

    private Outcome.Failed failed(Statement statement, Refusal why) {
        return new Outcome.Failed(
                program.places().pageLine(why.className(), why.line()).orElse(statement.line()),
                "Not allowed on a page: " + String.join(", ", why.calls()) + ".",
                "",
                why.advice());
    }
}
