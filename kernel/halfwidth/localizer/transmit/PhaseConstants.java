package halfwidth.localizer.transmit;

import halfwidth.localizer.Range;
import halfwidth.localizer.Require;
import halfwidth.localizer.uncertainty.Estimate;

/** What any phase constant of a line must satisfy, and the lengths that follow from it. */
final class PhaseConstants {
    /** Far above any line in the localizer band: a velocity factor of 0.13 at 112 MHz. */
    private static final Range POSSIBLE = new Range(0, 1000);

    private PhaseConstants() {}

    static Estimate check(Estimate phaseConstant) {
        Require.above("phase constant", phaseConstant.value(), 0, "deg/m");
        Require.within("phase constant", phaseConstant.value(), POSSIBLE, "deg/m");
        return phaseConstant;
    }

    /** Length φ/β (m), with u² = (u(φ)/β)² + (φ u(β)/β²)². */
    static Estimate length(Estimate phase, Estimate phaseConstant) {
        double beta = check(phaseConstant).value();
        double length = phase.value() / beta;
        double fromPhase = phase.standardUncertainty() / beta;
        double fromConstant = length * phaseConstant.standardUncertainty() / beta;
        return new Estimate(length, Math.hypot(fromPhase, fromConstant));
    }
}
