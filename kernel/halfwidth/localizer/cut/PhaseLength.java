package halfwidth.localizer.cut;

import halfwidth.localizer.Range;
import halfwidth.localizer.Require;
import halfwidth.localizer.uncertainty.Estimate;

/** The length of line that makes a phase. */
public final class PhaseLength {
    /** Far beyond any line in the localizer band: a velocity factor of 0.13 at 112 MHz. */
    private static final Range POSSIBLE = new Range(0, 1000);

    private PhaseLength() {}

    /**
     * Returns the length of a phase: L = φ/β, with u(L)² = (u(φ)/β)² + (φ u(β)/β²)² (JCGM 100:2008,
     * equation (10), phase and phase constant independent).
     *
     * @param phase φ (deg)
     * @param phaseConstant β (deg/m), above 0
     * @return the length (m), of the sign of the phase
     * @throws IllegalArgumentException if the phase constant is not above 0 and at most 1000 deg/m
     */
    public static Estimate of(Estimate phase, Estimate phaseConstant) {
        double beta = checkedPhaseConstant(phaseConstant).value();
        double length = phase.value() / beta;
        double fromPhase = phase.standardUncertainty() / beta;
        double fromConstant = length * phaseConstant.standardUncertainty() / beta;
        return new Estimate(length, Math.hypot(fromPhase, fromConstant));
    }

    /**
     * Refuses a phase constant that no line in the localizer band has.
     *
     * @param phaseConstant β (deg/m)
     * @return the phase constant (deg/m)
     * @throws IllegalArgumentException if it is not above 0 and at most 1000 deg/m
     */
    public static Estimate checkedPhaseConstant(Estimate phaseConstant) {
        Require.above("phase constant", phaseConstant.value(), 0, "deg/m");
        Require.within("phase constant", phaseConstant.value(), POSSIBLE, "deg/m");
        return phaseConstant;
    }
}
