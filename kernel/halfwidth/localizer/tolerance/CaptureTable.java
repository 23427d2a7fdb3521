package halfwidth.localizer.tolerance;

import halfwidth.localizer.array.Detector;

/**
 * The weight of the weaker of two carriers by their power ratio, from a table with straight lines
 * between its points: 2e-5 from the exact one at most, which is far below a receiver's step.
 */
final class CaptureTable {
    private static final int STEPS = 16_384;
    private static final double[] WEIGHTS = weights();

    private CaptureTable() {}

    private static double[] weights() {
        // One more than the last, so that a ratio of 1 has a right neighbour.
        double[] weights = new double[STEPS + 2];
        for (int i = 0; i <= STEPS; i++) {
            double ratio = Math.sqrt((double) i / STEPS);
            weights[i] = 1 - Detector.LINEAR_ENVELOPE.weightOfFirst(1, ratio);
        }
        weights[STEPS + 1] = weights[STEPS];
        return weights;
    }

    /** The weight of the first carrier; both powers at least 0, not both 0. */
    static double weightOfFirst(double firstPower, double secondPower) {
        return firstPower >= secondPower
                ? 1 - weaker(secondPower / firstPower)
                : weaker(firstPower / secondPower);
    }

    private static double weaker(double powerRatio) {
        double place = powerRatio * STEPS;
        int i = (int) place;
        return WEIGHTS[i] + (place - i) * (WEIGHTS[i + 1] - WEIGHTS[i]);
    }
}
