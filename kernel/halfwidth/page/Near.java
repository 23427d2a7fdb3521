package halfwidth.page;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Finds the names that a mistyped one is near to, by the pairs of letters they share. */
final class Near {
    private static final int FEW = 4;
    private static final double ALIKE = 0.3;

    private Near() {}

    /** Names the near ones, or all if none is near. */
    static String advice(String typed, Collection<String> names) {
        List<String> near =
                names.stream()
                        .filter(name -> likeness(typed, name) >= ALIKE)
                        .sorted(Comparator.comparingDouble(name -> -likeness(typed, name)))
                        .limit(FEW)
                        .toList();
        if (names.isEmpty()) {
            return "there is none";
        }
        return near.isEmpty()
                ? "there are " + String.join(", ", names)
                : "near it are " + String.join(", ", near);
    }

    /** Dice's coefficient: twice the shared pairs by all pairs (1). */
    private static double likeness(String one, String other) {
        Set<String> pairs = pairs(one);
        Set<String> others = pairs(other);
        double all = pairs.size() + others.size();
        pairs.retainAll(others);
        return all == 0 ? 0 : 2 * pairs.size() / all;
    }

    private static Set<String> pairs(String name) {
        String text = name.toLowerCase(Locale.ROOT);
        return IntStream.range(0, Math.max(text.length() - 1, 0))
                .mapToObj(i -> text.substring(i, i + 2))
                .collect(Collectors.toSet());
    }
}
