package halfwidth.engine;

import halfwidth.run.Drawn;
import java.util.Arrays;
import java.util.Optional;

/** The values of one result, draw by draw. */
final class Sample {
    private static final double COVERED = 0.95;

    private final double[] values;
    private int size;
    private int without;

    Sample(int most) {
        values = new double[most];
    }

    /** Adds the value of a draw; null where there was none. */
    void add(Double value) {
        if (value == null) {
            without++;
        } else {
            values[size++] = value;
        }
    }

    /** Mean, spread and 95 % interval: JCGM 101:2008, 7.6 and 7.7. Empty below two values. */
    Optional<Drawn> drawn() {
        if (size < 2) {
            return Optional.empty();
        }
        double[] sorted = Arrays.copyOf(values, size);
        Arrays.sort(sorted);
        double mean = Arrays.stream(sorted).sum() / size;
        double squares = Arrays.stream(sorted).map(v -> (v - mean) * (v - mean)).sum();
        int within = (int) (COVERED * size + 0.5);
        int low = Math.max(0, (size - within + 1) / 2 - 1);
        int high = Math.min(size - 1, low + within);
        return Optional.of(
                new Drawn(
                        size,
                        without,
                        mean,
                        Math.sqrt(squares / (size - 1)),
                        sorted[low],
                        sorted[high]));
    }
}
