package halfwidth.job;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Finds what can be taken back. */
final class Undoing {
    private Undoing() {}

    /** The lines entered together last that hold values and are not undone; none if none are. */
    static List<Line> last(List<Line> lines, Optional<Visit> visit) {
        Set<Long> undone = Moment.undone(lines);
        Map<Long, List<Long>> together = Moment.together(lines);
        for (int i = lines.size() - 1; i >= 0; i--) {
            Line line = lines.get(i);
            boolean wanted = visit.map(v -> v.equals(line.fact().visit())).orElse(true);
            List<Long> numbers = together.get(line.number());
            boolean first = numbers != null;
            if (first && wanted && isEntered(line.fact()) && !undone.contains(line.number())) {
                return lines.subList(i, i + numbers.size()).stream().toList();
            }
        }
        return List.of();
    }

    private static boolean isEntered(Fact fact) {
        return fact instanceof Fact.Value || fact instanceof Fact.Choice;
    }
}
