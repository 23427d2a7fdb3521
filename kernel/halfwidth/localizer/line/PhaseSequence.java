package halfwidth.localizer.line;

import halfwidth.localizer.Range;
import halfwidth.localizer.Require;
import java.util.ArrayList;
import java.util.List;

/** Phase readings known modulo a turn, joined so that each step is the shortest possible. */
public final class PhaseSequence {
    private static final double TURN = 360;

    private final double[] joined;

    private PhaseSequence(double[] joined) {
        this.joined = joined;
    }

    /**
     * Joins readings in their order.
     *
     * @param readings what the analyser shows (deg), at least 1; any whole turns
     * @return the sequence; its first value is the first reading
     * @throws IllegalArgumentException if there is no reading or one is not finite
     */
    public static PhaseSequence join(double... readings) {
        if (readings.length == 0) {
            throw new IllegalArgumentException("readings must be at least 1");
        }
        double[] joined = new double[readings.length];
        joined[0] = Require.finite("phase", readings[0], "deg");
        for (int i = 1; i < readings.length; i++) {
            double step = Require.finite("phase", readings[i], "deg") - readings[i - 1];
            joined[i] = joined[i - 1] + Math.IEEEremainder(step, TURN);
        }
        return new PhaseSequence(joined);
    }

    /**
     * Returns the joined readings.
     *
     * @return the phases (deg), as many as there were readings
     */
    public double[] joined() {
        return joined.clone();
    }

    /**
     * Returns the joined readings as change of electrical length since the first.
     *
     * <p>An analyser shows a delay as a falling phase, so the sign turns over; a one-port reading
     * sees twice the length.
     *
     * @param measurement how the phases were measured
     * @return the changes (deg), positive where the line delays more
     */
    public double[] electricalChanges(Measurement measurement) {
        double[] changes = new double[joined.length];
        for (int i = 1; i < changes.length; i++) {
            changes[i] = (joined[0] - joined[i]) / measurement.passes();
        }
        return changes;
    }

    /**
     * Returns the steps that may have hidden a turn: those near half a turn, either way round.
     *
     * @param margin how near (deg), 0 to 180: what the readings and a known trend leave open
     * @return for each doubtful step the place of the reading it leads to (1), counted from 0
     * @throws IllegalArgumentException if {@code margin} is outside 0 to 180
     */
    public List<Integer> doubtfulSteps(double margin) {
        Require.within("margin", margin, new Range(0, TURN / 2), "deg");
        List<Integer> doubtful = new ArrayList<>();
        for (int i = 1; i < joined.length; i++) {
            if (Math.abs(joined[i] - joined[i - 1]) >= TURN / 2 - margin) {
                doubtful.add(i);
            }
        }
        return List.copyOf(doubtful);
    }

    /**
     * Returns the largest step; at half a turn nothing tells which way round it went.
     *
     * @return its size (deg), 0 to 180; 0 for a single reading
     */
    public double largestStep() {
        double largest = 0;
        for (int i = 1; i < joined.length; i++) {
            largest = Math.max(largest, Math.abs(joined[i] - joined[i - 1]));
        }
        return largest;
    }
}
