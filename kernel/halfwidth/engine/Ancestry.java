package halfwidth.engine;

import halfwidth.run.Trace;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What every statement of a program rests on, through all statements before it, by the names that
 * it uses. Names tell what a value may rest on; whether it moves with it, only a run tells.
 */
final class Ancestry {
    private final Program program;
    private final List<BitSet> ancestors = new ArrayList<>();

    /** By name, the statements that gave it its value or may have changed it. */
    private final Map<String, BitSet> writers = new HashMap<>();

    Ancestry(Program program, Effects effects) {
        this.program = program;
        for (int i = 0; i < program.lines().size(); i++) {
            BitSet mine = withAncestors(effects.needs(i));
            mine.set(i);
            ancestors.add(mine);
            if (!program.lines().get(i).statement().check()) {
                wrote(i, effects.affected(i));
            }
        }
    }

    private BitSet withAncestors(Set<String> names) {
        BitSet all = new BitSet();
        for (String name : names) {
            writers.getOrDefault(name, new BitSet()).stream()
                    .forEach(writer -> all.or(ancestors.get(writer)));
        }
        return all;
    }

    private void wrote(int index, Set<String> names) {
        names.forEach(name -> writers.computeIfAbsent(name, n -> new BitSet()).set(index));
    }

    /** The statements that a statement rests on, itself among them. */
    BitSet of(int statement) {
        return ancestors.get(statement);
    }

    /** The statements that the value of a name at the end rests on. */
    BitSet of(String name) {
        return withAncestors(Set.of(name));
    }

    /** The same as a trace, the responses to be added. */
    Trace trace(BitSet statements) {
        List<String> inputs = new ArrayList<>();
        List<Integer> steps = new ArrayList<>();
        statements.stream()
                .forEach(
                        index -> {
                            Program.Line line = program.lines().get(index);
                            if (line.statement().hidden()) {
                                inputs.add(line.name());
                            } else {
                                steps.add(index);
                            }
                        });
        return new Trace(inputs, steps, List.of());
    }
}
