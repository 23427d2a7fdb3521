package halfwidth.localizer.sweep;

import halfwidth.localizer.Require;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A reading that would fit if its tone side were the other one: perhaps mistyped. It is pointed out
 * only, never altered.
 *
 * @param reading the reading as it stands
 * @param expected what stands to be expected there (DDM)
 */
public record ToneSideDoubt(SweepReading reading, double expected) {
    /** Turned over, the reading must come this much nearer to the expected one. */
    private static final double NEARER = 4;

    /**
     * Doubts readings by their neighbours: the straight line between the next readings on either
     * side, or through the next two at an end.
     *
     * <p>The clearest slip is taken first and the others are looked at again without it, so that a
     * slip does not cast doubt on the readings next to it. Several slips side by side can hide each
     * other; a prediction would show them.
     *
     * @param sweep the sweep, of at least 3 readings that are not missing
     * @param smallest readings below this size are not doubted (DDM), above 0: near the course line
     *     either side fits
     * @return the doubtful readings, by azimuth
     * @throws IllegalArgumentException if there are fewer than 3 readings or {@code smallest} is
     *     not above 0
     */
    public static List<ToneSideDoubt> byNeighbours(Sweep sweep, double smallest) {
        List<SweepReading> open = new ArrayList<>(sweep.present());
        if (open.size() < 3) {
            throw new IllegalArgumentException(
                    "readings must be at least 3 to have neighbours, not " + open.size());
        }
        Require.above("smallest reading to doubt", smallest, 0, "");
        List<ToneSideDoubt> doubts = new ArrayList<>();
        Optional<ToneSideDoubt> clearest = clearestAmong(open, smallest);
        while (clearest.isPresent()) {
            doubts.add(clearest.get());
            open.remove(clearest.get().reading());
            clearest = clearestAmong(open, smallest);
        }
        doubts.sort(Comparator.comparingDouble(doubt -> doubt.reading().azimuth()));
        return List.copyOf(doubts);
    }

    private static Optional<ToneSideDoubt> clearestAmong(List<SweepReading> open, double smallest) {
        List<ToneSideDoubt> doubts = new ArrayList<>();
        int last = open.size() - 1;
        for (int i = 0; i <= last && last >= 2; i++) {
            int one = i == 0 ? 1 : i == last ? last - 2 : i - 1;
            int other = i == 0 ? 2 : i == last ? last - 1 : i + 1;
            double expected =
                    Straight.between(open.get(one), open.get(other)).ddmAt(open.get(i).azimuth());
            addIfTurned(doubts, new ToneSideDoubt(open.get(i), expected), smallest);
        }
        return doubts.stream().max(Comparator.comparingDouble(ToneSideDoubt::gain));
    }

    /**
     * Doubts readings by a prediction, or by an earlier sweep.
     *
     * @param sweep the sweep
     * @param prediction what was expected; readings outside of it are not doubted
     * @param smallest readings below this size are not doubted (DDM), above 0
     * @return the doubtful readings, by azimuth
     * @throws IllegalArgumentException if {@code smallest} is not above 0
     */
    public static List<ToneSideDoubt> byPrediction(Sweep sweep, Sweep prediction, double smallest) {
        Require.above("smallest reading to doubt", smallest, 0, "");
        List<ToneSideDoubt> doubts = new ArrayList<>();
        for (SweepReading reading : sweep.present()) {
            OptionalDouble expected = prediction.ddmAt(reading.azimuth());
            if (expected.isPresent()) {
                addIfTurned(doubts, new ToneSideDoubt(reading, expected.getAsDouble()), smallest);
            }
        }
        return List.copyOf(doubts);
    }

    private static void addIfTurned(
            List<ToneSideDoubt> doubts, ToneSideDoubt doubt, double smallest) {
        double asItStands = Math.abs(doubt.reading.value() - doubt.expected);
        boolean large = Math.abs(doubt.reading.value()) >= smallest;
        if (large && doubt.turned() * NEARER <= asItStands) {
            doubts.add(doubt);
        }
    }

    /** How far from the expected reading this one would be on the other side. */
    private double turned() {
        return Math.abs(-reading.value() - expected);
    }

    /** How much nearer to the expected reading it would be there. */
    private double gain() {
        return Math.abs(reading.value() - expected) - turned();
    }
}
