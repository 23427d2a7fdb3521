package halfwidth.plot;

import java.util.HashSet;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Leaves out what would fall on the same dots. XChart takes 0.1 s for each thousand points, and a
 * picture is no wider than its dots.
 *
 * @param across how many dots the picture has across for one unit
 * @param up how many dots it has up for one unit
 */
record Grain(double across, double up) {
    /** A tenth of a dot cannot be seen. */
    private static final double UNSEEN = 0.1;

    /** Keeps what shows of a line: the lowest and highest of each column of dots, and bends. */
    Trace line(Trace trace) {
        IntStream.Builder kept = IntStream.builder();
        int start = 0;
        for (int i = 1; i <= trace.length(); i++) {
            if (i == trace.length() || column(trace, i) != column(trace, start)) {
                outermost(trace, start, i).forEach(kept);
                start = i;
            }
        }
        return new Simplified(this, UNSEEN).line(trace.only(kept.build().toArray()));
    }

    /** Keeps one point in each cell of two by two dots. */
    Trace points(Trace trace) {
        Set<Long> cells = new HashSet<>();
        return trace.only(
                trace.present()
                        .filter(i -> cells.add(cell(trace.xs()[i], trace.ys()[i])))
                        .toArray());
    }

    private long column(Trace trace, int i) {
        return trace.isMissing(i) ? Long.MAX_VALUE : Math.round(trace.xs()[i] * across);
    }

    private long cell(double x, double y) {
        return (Math.round(x * across / 2) << 32) ^ (Math.round(y * up / 2) & 0xFFFFFFFFL);
    }

    /** The first, lowest, highest and last point of a run; of missing points only the first. */
    private static IntStream outermost(Trace trace, int start, int end) {
        if (trace.isMissing(start)) {
            return IntStream.of(start);
        }
        int lowest = start;
        int highest = start;
        for (int i = start; i < end; i++) {
            lowest = trace.ys()[i] < trace.ys()[lowest] ? i : lowest;
            highest = trace.ys()[i] > trace.ys()[highest] ? i : highest;
        }
        return IntStream.of(start, lowest, highest, end - 1).sorted().distinct();
    }
}
