package halfwidth.localizer.signal;

import halfwidth.localizer.Range;
import halfwidth.localizer.Require;

/**
 * Carrier with sidebands (CSB) and sideband only (SBO) at one place, on one radio frequency.
 *
 * <p>DDM = 2 (S/C) cos φ; each depth is m ± (S/C) cos φ, so their sum does not change.
 *
 * @param sidebandRatio S/C, the SBO per-tone peak field over the CSB carrier field (1); negative
 *     where the SBO puts 90 Hz on top
 * @param phase φ, the radio-frequency phase of the SBO relative to the CSB (deg)
 */
public record OneSignal(double sidebandRatio, double phase) {
    private static final Range RATIOS = new Range(-10, 10);

    /**
     * @throws IllegalArgumentException if the ratio is not -10 to 10 or the phase is not finite
     */
    public OneSignal {
        Require.within("sideband ratio", sidebandRatio, RATIOS, "");
        Require.finite("phase", phase, "deg");
    }

    /**
     * Returns the signal that gives a DDM when the sidebands are in phase: S/C = DDM / 2.
     *
     * @param ddm the DDM (DDM)
     * @return the signal, of phase 0
     * @throws IllegalArgumentException if {@code ddm} is not finite or absurdly large
     */
    public static OneSignal inPhaseFor(double ddm) {
        return new OneSignal(ddm / 2, 0);
    }

    /**
     * Returns the signal from two readings at one place, direct and with 90° more in the SBO path.
     *
     * <p>The direct reading is 2 (S/C) cos φ. 90° of delay turns φ into φ − 90° and the reading
     * into 2 (S/C) sin φ. The ratio is found as positive.
     *
     * @param direct the reading without the 90° (DDM)
     * @param delayed the reading with the SBO delayed by 90° (DDM)
     * @return the signal, its phase in (-180, 180]
     * @throws IllegalArgumentException if both readings are 0, which leaves the phase open, or one
     *     is not finite
     */
    public static OneSignal ofQuadratureReadings(double direct, double delayed) {
        double size = Math.hypot(direct, delayed);
        Require.above("deflection of the two readings together", size, 0, "");
        return new OneSignal(size / 2, Math.toDegrees(Math.atan2(delayed, direct)));
    }

    /**
     * Returns the deflection: DDM = 2 (S/C) cos φ.
     *
     * @return the DDM (DDM), positive where 150 Hz predominates
     */
    public double ddm() {
        return 2 * sidebandRatio * Math.cos(Math.toRadians(phase));
    }

    /**
     * Returns the deflection once the SBO is delayed by 90° more: 2 (S/C) sin φ.
     *
     * @return the DDM (DDM)
     */
    public double quadratureDdm() {
        return 2 * sidebandRatio * Math.sin(Math.toRadians(phase));
    }

    /**
     * Returns the part of the deflection that the phase takes away: 1 − cos φ.
     *
     * @return the loss (1): 0 in phase, 1 at 90°, 2 where the deflection is turned over
     */
    public double deflectionLoss() {
        double half = Math.sin(Math.toRadians(phase) / 2);
        return 2 * half * half;
    }

    /**
     * Returns the depths that a receiver finds: m ± (S/C) cos φ.
     *
     * @param csbDepth m, the depth of each tone on the CSB alone (1)
     * @return the depths
     * @throws IllegalArgumentException if a depth would be outside 0 to 1: the detector then no
     *     longer follows this formula
     */
    public Depths depths(double csbDepth) {
        return new Depths(csbDepth - ddm() / 2, csbDepth + ddm() / 2);
    }
}
