package halfwidth.plot;

import java.util.stream.IntStream;

/**
 * A named run of points. A point with a NaN in either place is missing: it breaks a line and is
 * counted.
 */
record Trace(String name, double[] xs, double[] ys) {
    /** Beyond this an axis cannot be labelled sensibly; no reading of this trade comes near. */
    private static final double LARGEST = 1e15;

    Trace {
        if (xs.length == 0) {
            throw new IllegalArgumentException(name + " must have at least one point");
        }
        if (xs.length != ys.length) {
            throw new IllegalArgumentException(
                    name
                            + " must have as many values up as across, not %s and %s"
                                    .formatted(ys.length, xs.length));
        }
        xs = checked(name + ", across", xs);
        ys = checked(name + ", up", ys);
        for (int i = 0; i < xs.length; i++) {
            if (Double.isNaN(xs[i]) || Double.isNaN(ys[i])) {
                xs[i] = Double.NaN;
                ys[i] = Double.NaN;
            }
        }
    }

    private static double[] checked(String what, double[] values) {
        for (int i = 0; i < values.length; i++) {
            if (Math.abs(values[i]) > LARGEST) {
                throw new IllegalArgumentException(
                        "%s: value %s is %s, must be finite and within ± %s"
                                .formatted(what, i + 1, values[i], LARGEST));
            }
        }
        return values.clone();
    }

    int length() {
        return xs.length;
    }

    boolean isMissing(int i) {
        return Double.isNaN(xs[i]);
    }

    /** The places of the points that are there. */
    IntStream present() {
        return IntStream.range(0, xs.length).filter(i -> !isMissing(i));
    }

    int missing() {
        return xs.length - (int) present().count();
    }

    /** The points at some places, in that order. */
    Trace only(int... places) {
        return new Trace(
                name,
                IntStream.of(places).mapToDouble(i -> xs[i]).toArray(),
                IntStream.of(places).mapToDouble(i -> ys[i]).toArray());
    }

    /** The points from one place up to, not including, another. */
    Trace part(int start, int end) {
        return only(IntStream.range(start, end).toArray());
    }
}
