package halfwidth.localizer.monitor;

import halfwidth.localizer.Range;
import halfwidth.localizer.Require;

/**
 * What one antenna pair reads on its own, with every other return terminated.
 *
 * <p>The 90 Hz side brings C + jS and the 150 Hz side a e^(−jδ)(C − jS). Their sum has the carrier
 * C(1 + a e^(−jδ)) and the sideband jS(1 − a e^(−jδ)), and DDM = 2 Re(sideband/carrier), so
 *
 * <p>d(δ) = −K · 2a sin δ/(1 + a² + 2a cos δ), K = 2S/C,
 *
 * <p>which for a = 1 is −K tan(δ/2), and is 0 at δ = 0 whatever a is. That holds for sidebands in
 * phase with the carrier, as phasing leaves them; {@link #excessAtNull} tells how far the null is
 * off where they are not.
 *
 * @param sensitivity K (DDM), the DDM that each element alone would carry in phase; negative for a
 *     pair that the design feeds with sidebands of reversed sign; not 0
 * @param amplitudeRatio a, the amplitude of the 150 Hz side's return over the other's (1), above 0
 */
public record PairModel(double sensitivity, double amplitudeRatio) {
    /** As near as the returns may come to cancelling the carrier between them (1). */
    private static final double LEAST_CARRIER = 1e-9;

    /**
     * @throws IllegalArgumentException if the sensitivity is 0 or beyond ±100, or the amplitude
     *     ratio not above 0 and at most 100
     */
    public PairModel {
        Require.within("sensitivity", sensitivity, new Range(-100, 100), "");
        if (sensitivity == 0) {
            throw new IllegalArgumentException(
                    "sensitivity 0 must not be 0: such a pair reads nothing at any phase");
        }
        Require.above("amplitude ratio", amplitudeRatio, 0, "");
        Require.within("amplitude ratio", amplitudeRatio, new Range(0, 100), "");
    }

    /**
     * Takes returns of equal amplitude.
     *
     * @param sensitivity K (DDM)
     * @return the pair with a = 1
     * @throws IllegalArgumentException as the record does
     */
    public static PairModel ofEqualReturns(double sensitivity) {
        return new PairModel(sensitivity, 1);
    }

    /**
     * Returns the reading at an excess: d = −K · 2a sin δ/(1 + a² + 2a cos δ).
     *
     * @param excess δ, the electrical length of the 150 Hz side's return less the other's (deg)
     * @return the reading (DDM), positive where 150 Hz predominates
     * @throws IllegalArgumentException if the excess is not finite, or the two returns cancel the
     *     carrier
     */
    public double readingAt(double excess) {
        double delta = Math.toRadians(Require.finite("excess", excess, "deg"));
        double a = amplitudeRatio;
        double carrier = 1 + a * a + 2 * a * Math.cos(delta);
        if (carrier < LEAST_CARRIER) {
            throw new IllegalArgumentException(
                    "excess " + excess + " deg must not cancel the carrier of equal returns");
        }
        // Adding 0 keeps a negative zero off the page.
        return -sensitivity * 2 * a * Math.sin(delta) / carrier + 0.0;
    }

    /**
     * Returns the excess at which equal returns give a reading: δ = −2 atan(d/K).
     *
     * @param reading d (DDM)
     * @return δ (deg), between -180 and 180
     * @throws IllegalArgumentException if the reading is not finite, or the returns are not equal
     */
    public double excessFor(double reading) {
        Require.finite("reading", reading, "");
        if (amplitudeRatio != 1) {
            throw new IllegalArgumentException(
                    "amplitude ratio " + amplitudeRatio + " must be 1 to invert the reading");
        }
        return -2 * Math.toDegrees(Math.atan(reading / sensitivity));
    }

    /**
     * Returns the excess at which the pair reads nothing when its sidebands are not in phase: δ =
     * −asin((1 − a²) tan ψ/(2a)).
     *
     * <p>With SBO leading by ψ the reading is −K (2a sin δ cos ψ + (1 − a²) sin ψ)/(1 + a² + 2a cos
     * δ): equal returns have their null at 0 all the same, unequal ones near (a − 1) ψ.
     *
     * @param sidebandLead ψ, the phase error of the sidebands (deg), positive = the SBO leads
     * @return δ (deg), what a cut to the null leaves as excess
     * @throws IllegalArgumentException if ψ is not -89 to 89 deg, or such a pair has no null
     */
    public double excessAtNull(double sidebandLead) {
        Require.within("phase error of the sidebands", sidebandLead, new Range(-89, 89), "deg");
        double a = amplitudeRatio;
        double sine = (a * a - 1) * Math.tan(Math.toRadians(sidebandLead)) / (2 * a);
        Require.within("sine of the excess at the null", sine, new Range(-1, 1), "");
        // Adding 0 keeps a negative zero off the page.
        return Math.toDegrees(Math.asin(sine)) + 0.0;
    }
}
