package halfwidth.engine;

import halfwidth.run.Outcome;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;

/** Which names have no value so far in a run, and why. */
final class Availability {
    /**
     * Why names have no value: inputs not filled in (by their order on the page), of these the
     * optional ones apart, and steps failed.
     */
    private record Cause(
            SortedSet<Integer> inputs,
            SortedSet<Integer> optional,
            SortedSet<Integer> failedLines) {
        Cause() {
            this(new TreeSet<>(), new TreeSet<>(), new TreeSet<>());
        }

        void add(Cause other) {
            inputs.addAll(other.inputs);
            optional.addAll(other.optional);
            failedLines.addAll(other.failedLines);
        }
    }

    private final List<Program.Line> lines;
    private final Map<String, Cause> causes = new HashMap<>();

    Availability(List<Program.Line> lines) {
        this.lines = lines;
    }

    /** Notes that an input, by its index among the statements, is not filled in. */
    void missing(int index) {
        cause(lines.get(index).name()).inputs().add(index);
    }

    /** Notes that an input that may be left blank is. */
    void leftBlank(int index) {
        cause(lines.get(index).name()).optional().add(index);
    }

    /** Notes that a failed step leaves these names without a dependable value. */
    void failed(int line, Collection<String> names) {
        names.forEach(name -> cause(name).failedLines().add(line));
    }

    /** Notes that a step that did not run leaves these names as those it needs. */
    void passOn(Collection<String> needs, Collection<String> names) {
        for (String need : needs) {
            Cause why = causes.get(need);
            if (why != null) {
                names.forEach(name -> cause(name).add(why));
            }
        }
    }

    boolean has(String name) {
        return !causes.containsKey(name);
    }

    /** Says why a statement that needs these names cannot run; empty if it can. */
    Optional<Outcome> obstacle(Collection<String> needs) {
        Cause all = new Cause();
        for (String need : needs) {
            Cause why = causes.get(need);
            if (why != null) {
                all.add(why);
            }
        }
        if (!all.failedLines().isEmpty()) {
            return Optional.of(new Outcome.Held(List.copyOf(all.failedLines())));
        }
        if (!all.inputs().isEmpty()) {
            return Optional.of(new Outcome.Waiting(names(all.inputs())));
        }
        return all.optional().isEmpty()
                ? Optional.empty()
                : Optional.of(new Outcome.Skipped(names(all.optional())));
    }

    private List<String> names(SortedSet<Integer> inputs) {
        return inputs.stream().map(index -> lines.get(index).name()).toList();
    }

    private Cause cause(String name) {
        return causes.computeIfAbsent(name, n -> new Cause());
    }
}
