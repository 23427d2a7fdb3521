package halfwidth.plot;

import java.util.ArrayList;
import java.util.List;

/**
 * Cuts a line into dashes. XChart strokes every piece between two points on its own, so a dashed
 * stroke would start anew at each point and a dense line would look unbroken.
 *
 * @param grain dots for one unit, to measure the dashes in
 * @param lengths drawn and left out in turn (dots); empty leaves the line whole
 */
record Dashes(Grain grain, double[] lengths) {

    Trace cut(Trace trace) {
        return lengths.length == 0 ? trace : new Walk().along(trace);
    }

    private final class Walk {
        private final List<double[]> out = new ArrayList<>();
        private int piece;
        private double left = lengths[0];

        Trace along(Trace trace) {
            for (int i = 0; i < trace.length(); i++) {
                if (trace.isMissing(i)) {
                    breakOff();
                } else if (i == 0 || trace.isMissing(i - 1)) {
                    start(trace.xs()[i], trace.ys()[i]);
                } else {
                    step(trace, i);
                }
            }
            return new Trace(
                    trace.name(),
                    out.stream().mapToDouble(point -> point[0]).toArray(),
                    out.stream().mapToDouble(point -> point[1]).toArray());
        }

        private boolean drawing() {
            return piece % 2 == 0;
        }

        private void start(double x, double y) {
            piece = 0;
            left = lengths[0];
            out.add(new double[] {x, y});
        }

        private void breakOff() {
            out.add(new double[] {Double.NaN, Double.NaN});
        }

        private void step(Trace trace, int i) {
            double x = trace.xs()[i - 1];
            double y = trace.ys()[i - 1];
            double dx = trace.xs()[i] - x;
            double dy = trace.ys()[i] - y;
            double whole = Math.hypot(dx * grain.across(), dy * grain.up());
            double done = 0;
            while (whole - done > left) {
                done += left;
                turn(x + dx * done / whole, y + dy * done / whole);
            }
            left -= whole - done;
            if (drawing()) {
                out.add(new double[] {trace.xs()[i], trace.ys()[i]});
            }
        }

        private void turn(double x, double y) {
            out.add(new double[] {x, y});
            if (drawing()) {
                breakOff();
            }
            piece = (piece + 1) % lengths.length;
            left = lengths[piece];
        }
    }
}
