package halfwidth.job;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What a journal comes to after one of its lines: the lines so far, less what was undone. */
final class Moment {
    private final Map<Visit, VisitState> visits = new LinkedHashMap<>();

    /** The visit of the line added last, and its state: the next line is mostly of it too. */
    private Visit visit;

    private VisitState state;

    /** What the lines come to, in the order of their numbers. */
    static Moment after(List<Line> lines) {
        Set<Long> undone = undone(lines);
        Moment moment = new Moment();
        for (Line line : lines) {
            if (!undone.contains(line.number())) {
                moment.add(line);
            }
        }
        return moment;
    }

    /** Adds a line that undoes none before it. */
    void add(Line line) {
        Fact fact = line.fact();
        boolean aboutValues =
                !(fact instanceof Fact.Undo
                        || fact instanceof Fact.Noted
                        || fact instanceof Fact.Agreed);
        if (aboutValues) {
            if (fact.visit() != visit) {
                visit = fact.visit();
                state = visits.computeIfAbsent(visit, begun -> new VisitState());
            }
            state.add(line);
        }
    }

    /**
     * The numbers of all lines that were undone. An undo that was itself undone counts no more, so
     * the lines are looked at from the last.
     */
    static Set<Long> undone(List<Line> lines) {
        if (lines.stream().noneMatch(line -> line.fact() instanceof Fact.Undo)) {
            return Set.of();
        }
        Map<Long, List<Long>> together = together(lines);
        Set<Long> undone = new HashSet<>();
        for (int i = lines.size() - 1; i >= 0; i--) {
            Line line = lines.get(i);
            if (line.fact() instanceof Fact.Undo undo && !undone.contains(line.number())) {
                undone.addAll(together.getOrDefault(undo.undone(), List.of()));
            }
        }
        return undone;
    }

    /** The numbers of the lines that were entered together, by the first of them. */
    static Map<Long, List<Long>> together(List<Line> lines) {
        Map<Long, List<Long>> together = new HashMap<>();
        List<Long> current = new ArrayList<>();
        for (Line line : lines) {
            current.add(line.number());
            if (line.more() == 0) {
                together.put(current.get(0), current);
                current = new ArrayList<>();
            }
        }
        return together;
    }

    /** Every visit with a value, a run or a record, in the order in which they were begun. */
    List<Visit> visits() {
        return List.copyOf(visits.keySet());
    }

    Optional<VisitState> of(Visit visit) {
        return Optional.ofNullable(visits.get(visit));
    }
}
