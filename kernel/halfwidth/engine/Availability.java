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
    /** Why names have no value: inputs not filled in (by their order on the page), steps failed. */
    private record Cause(SortedSet<Integer> inputs, SortedSet<Integer> failedLines) {
        Cause() {
            this(new TreeSet<>(), new TreeSet<>());
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

    /** Notes that a failed step leaves these names without a dependable value. */
    void failed(int line, Collection<String> names) {
        names.forEach(name -> cause(name).failedLines().add(line));
    }

    /** Notes that a step that did not run leaves these names as those it needs. */
    void passOn(Collection<String> needs, Collection<String> names) {
        for (String need : needs) {
            Cause why = causes.get(need);
            if (why != null) {
                for (String name : names) {
                    Cause mine = cause(name);
                    mine.inputs().addAll(why.inputs());
                    mine.failedLines().addAll(why.failedLines());
                }
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
                all.inputs().addAll(why.inputs());
                all.failedLines().addAll(why.failedLines());
            }
        }
        if (!all.failedLines().isEmpty()) {
            return Optional.of(new Outcome.Held(List.copyOf(all.failedLines())));
        }
        if (!all.inputs().isEmpty()) {
            return Optional.of(
                    new Outcome.Waiting(
                            all.inputs().stream().map(i -> lines.get(i).name()).toList()));
        }
        return Optional.empty();
    }

    private Cause cause(String name) {
        return causes.computeIfAbsent(name, n -> new Cause());
    }
}
