package halfwidth.localizer.array;

import org.hipparchus.complex.Complex;

/**
 * The field of one carrier at one place, on the scale of the currents.
 *
 * @param csb its carrier C (1)
 * @param sbo its sidebands by the peak of one tone S (1), positive where 150 Hz is in phase with
 *     the carrier
 * @param depth depth of modulation of each tone in the CSB (1)
 */
public record CarrierField(Complex csb, Complex sbo, double depth) {

    /**
     * Returns the strength of the carrier.
     *
     * @return |C| (1)
     */
    public double amplitude() {
        return csb.norm();
    }

    /**
     * Returns the phase of the sidebands against the carrier.
     *
     * @return the phase φ of S/C (deg), within ±180, positive where the sidebands are ahead
     * @throws IllegalArgumentException if either vanishes here
     */
    public double sboPhase() {
        if (sbo.isZero()) {
            throw new IllegalArgumentException("SBO field 0 must not vanish to have a phase");
        }
        return Math.toDegrees(ratio().getArgument());
    }

    /**
     * Returns the DDM of this carrier alone: 2 (S/C) cos φ = 2 Re(S C*)/|C|².
     *
     * <p>To the first order in S/C: it holds while the sum of sidebands stays below the carrier,
     * which {@link #overmodulated()} tells.
     *
     * @return the DDM (DDM)
     * @throws IllegalArgumentException if the carrier vanishes here
     */
    public double ddm() {
        return 2 * ratio().getReal();
    }

    /**
     * Returns the part of the sidebands that a receiver does not see: 2 (S/C) sin φ.
     *
     * @return the quadrature part, on the scale of the DDM (DDM)
     * @throws IllegalArgumentException if the carrier vanishes here
     */
    public double quadrature() {
        return 2 * ratio().getImaginary();
    }

    /**
     * Returns the sum of the depths, which the sidebands alone do not change.
     *
     * @return twice the depth (1)
     */
    public double sdm() {
        return 2 * depth;
    }

    /**
     * Tells whether one tone's depth is beyond what a receiver can measure as such.
     *
     * @return true if |S/C| cos φ exceeds the depth, so that a tone turns over
     * @throws IllegalArgumentException if the carrier vanishes here
     */
    public boolean overmodulated() {
        return Math.abs(ratio().getReal()) > depth;
    }

    private Complex ratio() {
        if (csb.isZero()) {
            throw new IllegalArgumentException("carrier field 0 must not vanish to be received");
        }
        return sbo.divide(csb);
    }
}
