package halfwidth.plot;

import java.util.List;
import java.util.stream.DoubleStream;

/** One thing on a plot. NaN in what it spans is to be ignored. */
sealed interface Layer {
    String name();

    /** The values across that must be in sight. */
    DoubleStream across();

    /** The values up that must be in sight. */
    DoubleStream up();

    /** Separate marks. */
    record Points(Trace trace) implements Layer {
        @Override
        public String name() {
            return trace.name();
        }

        @Override
        public DoubleStream across() {
            return DoubleStream.of(trace.xs());
        }

        @Override
        public DoubleStream up() {
            return DoubleStream.of(trace.ys());
        }
    }

    /** Places where something should have been read and was not. */
    record Missing(String name, List<Double> at) implements Layer {
        public Missing {
            at = List.copyOf(at);
        }

        @Override
        public DoubleStream across() {
            return at.stream().mapToDouble(Double::doubleValue);
        }

        /** None: it stands at the edge of the picture, wherever that is. */
        @Override
        public DoubleStream up() {
            return DoubleStream.empty();
        }
    }

    /** A line through its points, broken where one is missing. */
    record Line(Trace trace) implements Layer {
        @Override
        public String name() {
            return trace.name();
        }

        @Override
        public DoubleStream across() {
            return DoubleStream.of(trace.xs());
        }

        @Override
        public DoubleStream up() {
            return DoubleStream.of(trace.ys());
        }
    }

    /** The area between two lines over the same places. */
    record Band(Trace low, Trace high) implements Layer {
        @Override
        public String name() {
            return low.name();
        }

        @Override
        public DoubleStream across() {
            return DoubleStream.of(low.xs());
        }

        @Override
        public DoubleStream up() {
            return DoubleStream.concat(DoubleStream.of(low.ys()), DoubleStream.of(high.ys()));
        }
    }

    /** A line from side to side. */
    record Level(String name, double at) implements Layer {
        @Override
        public DoubleStream across() {
            return DoubleStream.empty();
        }

        @Override
        public DoubleStream up() {
            return DoubleStream.of(at);
        }
    }

    /** A line from bottom to top. */
    record Mark(String name, double at) implements Layer {
        @Override
        public DoubleStream across() {
            return DoubleStream.of(at);
        }

        @Override
        public DoubleStream up() {
            return DoubleStream.empty();
        }
    }

    /**
     * A limit between two places across; what lies beyond it is shaded.
     *
     * @param below whether it is the values below that are forbidden
     */
    record Limit(String name, double from, double to, double at, boolean below) implements Layer {
        @Override
        public DoubleStream across() {
            return DoubleStream.of(from, to);
        }

        @Override
        public DoubleStream up() {
            return DoubleStream.of(at);
        }
    }
}
