package halfwidth.laws;

import java.util.Random;
import java.util.stream.DoubleStream;

/**
 * The doubles of a range, both ends included.
 *
 * @param step how far beside an edge its neighbours lie
 */
record Reals(double least, double most, double step) {
    Reals {
        if (!(least <= most)) {
            throw new IllegalArgumentException(least + " to " + most + " is no range");
        }
    }

    double next(Random random, boolean edge) {
        if (edge) {
            double[] edges = edges();
            return edges[random.nextInt(edges.length)];
        }
        double value = inRange(least + random.nextDouble() * (most - least));
        if (random.nextInt(4) == 0) { // close to an end or to zero, by any power of ten
            double close = poles()[random.nextInt(3)];
            value = inRange(close + (value - close) * Math.pow(10, -6 * random.nextDouble()));
        }
        return random.nextBoolean() ? value : rounded(value, random.nextInt(5));
    }

    private double[] poles() {
        return new double[] {least, most, inRange(0)};
    }

    private double[] edges() {
        return DoubleStream.of(
                        least,
                        most,
                        least + step,
                        most - step,
                        0,
                        step,
                        -step,
                        0.01,
                        -0.01,
                        1,
                        -1,
                        2,
                        -2)
                .filter(value -> least <= value && value <= most)
                .toArray();
    }

    private double inRange(double value) {
        return Math.min(most, Math.max(least, value));
    }

    private double rounded(double value, int decimals) {
        double power = Math.pow(10, decimals);
        return inRange(Math.rint(value * power) / power);
    }
}
