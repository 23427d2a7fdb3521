package halfwidth.localizer.array;

import halfwidth.localizer.Range;
import halfwidth.localizer.Require;

/** How a receiver weighs two carriers in its passband, their beat being above the tones. */
public enum Detector {
    /**
     * An envelope detector: w<sub>A</sub> = A M<sub>A</sub>/M with the mean envelope M(A, B) =
     * (2/π)(A + B) E(m), m = 4AB/(A + B)².
     *
     * <p>M is the mean of |A + B exp(jβ)| over the beat's phase β, E the complete elliptic integral
     * of the second kind of parameter m, and M<sub>A</sub> the derivative by A: a small change of A
     * shows in the output as A M<sub>A</sub>/M of itself. Derived here.
     */
    LINEAR_ENVELOPE {
        @Override
        double weaker(double ratio) {
            return weightOfWeaker(ratio);
        }

        @Override
        double mean(double a, double b) {
            return 2 / Math.PI * (a + b) * (a == b ? 1 : integrals(a, b).second());
        }
    },

    /**
     * A detector of the squared envelope, for comparison: w<sub>A</sub> = A²/(A² + B²).
     *
     * <p>The mean it is told by is the root of the mean square.
     */
    SQUARE_LAW {
        @Override
        double weaker(double ratio) {
            return ratio * ratio / (1 + ratio * ratio);
        }

        @Override
        double mean(double a, double b) {
            return Math.hypot(a, b);
        }
    };

    /**
     * Below this ratio r the difference of the integrals loses digits; the series errs by r⁴/20.
     */
    private static final double SERIES_BELOW = 1e-3;

    private static final Range AMPLITUDES = new Range(0, Double.MAX_VALUE);

    abstract double weaker(double ratio);

    abstract double mean(double a, double b);

    /**
     * Returns the share of the first carrier in what is read; the second has the rest of 1.
     *
     * @param first amplitude A of the first carrier's field (1), at least 0
     * @param second amplitude B of the second's (1), on the same scale
     * @return the weight w<sub>A</sub> (1), 0 to 1
     * @throws IllegalArgumentException if an amplitude is negative or not finite, or both are 0
     */
    public double weightOfFirst(double first, double second) {
        requireCarrier(first, second);
        return first >= second ? 1 - weaker(second / first) : weaker(first / second);
    }

    /**
     * Returns the mean output of the detector, which an automatic gain control and a level display
     * follow.
     *
     * @param first amplitude of the first carrier's field (1), at least 0
     * @param second amplitude of the second's (1), on the same scale
     * @return the mean (1), on the same scale
     * @throws IllegalArgumentException if an amplitude is negative or not finite, or both are 0
     */
    public double meanOutput(double first, double second) {
        requireCarrier(first, second);
        return mean(first, second);
    }

    private static void requireCarrier(double first, double second) {
        Require.finite("amplitude", Require.within("amplitude", first, AMPLITUDES, ""), "");
        Require.finite("amplitude", Require.within("amplitude", second, AMPLITUDES, ""), "");
        Require.above("sum of amplitudes", first + second, 0, "");
    }

    /**
     * With A = 1, B = r < 1 and s = 1 + r: M<sub>B</sub> = (2/π)(E + s E' m'), where E' = (E −
     * K)/(2m) and m' = dm/dr = 4(1 − r)/s³.
     */
    private static double weightOfWeaker(double ratio) {
        if (ratio < SERIES_BELOW) {
            double square = ratio * ratio;
            return square * (1 + square / 8) / 2 / (1 + square / 4 * (1 + square / 16));
        }
        if (ratio == 1) {
            return 0.5;
        }
        double excess = integrals(1, ratio).excess();
        return ratio / (1 + ratio) - excess * (1 - ratio) / (2 * (1 + ratio));
    }

    /** Those of parameter m, by 1 − m = ((A − B)/(A + B))²; A and B are not the same. */
    private static CompleteElliptic integrals(double a, double b) {
        return CompleteElliptic.ofComplement(Math.abs(a - b) / (a + b));
    }
}
