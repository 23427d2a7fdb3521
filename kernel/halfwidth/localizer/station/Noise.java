package halfwidth.localizer.station;

import java.util.Random;

/** What an instrument shows of a true value; the same seed gives the same row of readings. */
final class Noise {
    private final Random random;

    Noise(long seed) {
        this.random = new Random(seed);
    }

    double read(double truth, Instruments.Precision precision) {
        return step(truth + precision.noise() * random.nextGaussian(), precision.resolution());
    }

    static double step(double value, double resolution) {
        return resolution == 0 ? value : Math.rint(value / resolution) * resolution;
    }
}
