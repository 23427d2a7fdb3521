package halfwidth.engine;

import halfwidth.run.Outcome;
import halfwidth.run.Step;
import java.io.Serializable;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A page as compiled.
 *
 * @param lines its statements in order
 * @param classes the classes compiled from them, by name
 * @param wanted variables to report at the end of a run
 * @param places where the classes' code stands on the page
 * @param workings what the statements compute
 */
record Program(
        List<Line> lines,
        Map<String, byte[]> classes,
        List<String> wanted,
        Places places,
        Workings workings)
        implements Serializable {

    /**
     * A statement with its compiled form or with why it has none.
     *
     * @param step what a reader sees of it
     * @param names the names in it, whether it compiled or not
     */
    record Line(
            Statement statement,
            Step step,
            Optional<CompiledStatement> compiled,
            NameScanner.Names names,
            Optional<Outcome.Failed> problem)
            implements Serializable {

        /** An {@code Optional} cannot be stored. */
        private record Stored(
                Statement statement,
                Step step,
                CompiledStatement compiled,
                NameScanner.Names names,
                Outcome.Failed problem)
                implements Serializable {
            private Object readResolve() {
                return new Line(
                        statement,
                        step,
                        Optional.ofNullable(compiled),
                        names,
                        Optional.ofNullable(problem));
            }
        }

        private Object writeReplace() {
            return new Stored(statement, step, compiled.orElse(null), names, problem.orElse(null));
        }

        /** The same statement, which is not to run. */
        Line with(Outcome.Failed why) {
            return new Line(statement, step, compiled, names, Optional.of(why));
        }

        /** The name under which later statements can refer to it, "" if there is none. */
        String name() {
            return compiled.map(CompiledStatement::name).orElse("");
        }

        /** Whether it declares a method or a type. */
        boolean member() {
            return compiled.isPresent()
                    && compiled.get().entryPoint().isEmpty()
                    && !name().isEmpty();
        }
    }

    /** Whether it declares types, whose static state a replay would carry over. */
    boolean declaresTypes() {
        return lines.stream()
                .anyMatch(line -> line.compiled().map(c -> c.declaresType()).orElse(false));
    }

    /**
     * What each statement rests on and may change, counting the methods and types of the page that
     * it uses.
     */
    List<Reach> reach() {
        Map<String, Set<String>> used = new HashMap<>();
        Map<String, Set<String>> changed = new HashMap<>();
        for (Line line : lines) {
            if (line.member()) {
                used.computeIfAbsent(line.name(), n -> new HashSet<>()).addAll(line.names().used());
                changed.computeIfAbsent(line.name(), n -> new HashSet<>())
                        .addAll(line.names().changed());
            }
        }
        return lines.stream().map(line -> reach(line, used, changed)).toList();
    }

    private static Reach reach(
            Line line, Map<String, Set<String>> used, Map<String, Set<String>> changed) {
        Set<String> needs = new HashSet<>(line.names().used());
        Set<String> changes = new HashSet<>(line.names().changed());
        Deque<String> open = new ArrayDeque<>(needs);
        while (!open.isEmpty()) {
            String name = open.pop();
            changes.addAll(changed.getOrDefault(name, Set.of()));
            used.getOrDefault(name, Set.of()).stream().filter(needs::add).forEach(open::push);
        }
        return new Reach(needs, changes);
    }

    /**
     * The names a statement reaches.
     *
     * @param needs those whose values it may use
     * @param changes those whose values it may change
     */
    record Reach(Set<String> needs, Set<String> changes) {}
}
