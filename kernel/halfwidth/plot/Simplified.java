package halfwidth.plot;

import java.util.BitSet;

/**
 * A line without the points that lie on the straight way between others (Ramer 1972; Douglas and
 * Peucker 1973). XChart strokes each piece by itself: with pieces a dot long the joints would show.
 *
 * @param grain dots for one unit
 * @param tolerance how far off a left-out point may be (dots)
 */
record Simplified(Grain grain, double tolerance) {

    Trace line(Trace trace) {
        BitSet kept = new BitSet(trace.length());
        int start = 0;
        for (int i = 0; i <= trace.length(); i++) {
            if (i == trace.length() || trace.isMissing(i)) {
                kept.set(Math.min(i, trace.length() - 1));
                keepBetween(trace, start, i - 1, kept);
                start = i + 1;
            }
        }
        return trace.only(kept.stream().toArray());
    }

    private void keepBetween(Trace trace, int from, int to, BitSet kept) {
        if (from > to) {
            return;
        }
        kept.set(from);
        kept.set(to);
        int furthest = from;
        double most = tolerance;
        for (int i = from + 1; i < to; i++) {
            double off = offTheWay(trace, i, from, to);
            if (off > most) {
                most = off;
                furthest = i;
            }
        }
        if (furthest > from) {
            keepBetween(trace, from, furthest, kept);
            keepBetween(trace, furthest, to, kept);
        }
    }

    private double offTheWay(Trace trace, int i, int from, int to) {
        double dx = (trace.xs()[to] - trace.xs()[from]) * grain.across();
        double dy = (trace.ys()[to] - trace.ys()[from]) * grain.up();
        double px = (trace.xs()[i] - trace.xs()[from]) * grain.across();
        double py = (trace.ys()[i] - trace.ys()[from]) * grain.up();
        double length = Math.hypot(dx, dy);
        double along = length == 0 ? 0 : (px * dx + py * dy) / length;
        if (along < 0 || along > length || length == 0) {
            return Math.min(Math.hypot(px, py), Math.hypot(px - dx, py - dy));
        }
        return Math.abs(px * dy - py * dx) / length;
    }
}
