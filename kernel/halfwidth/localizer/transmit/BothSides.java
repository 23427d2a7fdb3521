package halfwidth.localizer.transmit;

import halfwidth.localizer.Range;
import halfwidth.localizer.Require;
import halfwidth.localizer.uncertainty.Estimate;

/**
 * A pair of readings at two points placed alike on the two sides of the course line.
 *
 * @param on150 DDM at the point on the 150 Hz side (DDM), positive where 150 Hz predominates
 * @param on90 DDM at the point on the 90 Hz side (DDM), of the same sign convention
 * @param resolution the step in which the receiver shows DDM (DDM)
 */
public record BothSides(double on150, double on90, double resolution) {
    /** Two tones of full depth between them (1). */
    private static final Range POSSIBLE = new Range(-1, 1);

    /**
     * @throws IllegalArgumentException if a reading is not -1 to 1, or the resolution is not above
     *     0 and at most 1
     */
    public BothSides {
        Require.within("DDM on the 150 Hz side", on150, POSSIBLE, "");
        Require.within("DDM on the 90 Hz side", on90, POSSIBLE, "");
        Require.above("DDM resolution", resolution, 0, "");
        Require.within("DDM resolution", resolution, POSSIBLE, "");
    }

    /**
     * Returns what is of opposite sign on the two sides: (on150 − on90)/2.
     *
     * @return the deflection (DDM), positive where each side reads its own tone; u = resolution/√24
     *     for two independent readings (JCGM 100:2008, F.2.2.1)
     */
    public Estimate deflection() {
        return mean(on150 - on90);
    }

    /**
     * Returns what is common to the two sides: (on150 + on90)/2, the offset of the course line.
     *
     * @return the centring (DDM), positive when the course line lies on the 90 Hz side of where the
     *     two points have their middle; u = resolution/√24
     */
    public Estimate centring() {
        return mean(on150 + on90);
    }

    private Estimate mean(double sum) {
        double u = Estimate.readInSteps(0, resolution).standardUncertainty();
        return new Estimate(sum / 2, u / Math.sqrt(2));
    }
}
