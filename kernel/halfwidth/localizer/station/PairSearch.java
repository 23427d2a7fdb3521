package halfwidth.localizer.station;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Finds the elements that stand at equal distances on both sides. */
final class PairSearch {
    private PairSearch() {}

    static List<AntennaPair> pairs(List<Double> positions) {
        List<Double> distances =
                positions.stream()
                        .filter(x -> x > 0 && positions.contains(-x))
                        .sorted(Comparator.naturalOrder())
                        .toList();
        List<AntennaPair> pairs = new ArrayList<>();
        for (double x : distances) {
            pairs.add(
                    new AntennaPair(
                            pairs.size() + 1, positions.indexOf(-x) + 1, positions.indexOf(x) + 1));
        }
        return List.copyOf(pairs);
    }
}
