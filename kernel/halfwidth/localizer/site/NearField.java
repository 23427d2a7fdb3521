package halfwidth.localizer.site;

import halfwidth.localizer.Require;
import halfwidth.localizer.line.Line;

/**
 * How near to an array its field still changes with distance.
 *
 * @param aperture D, the width of the array between its outer elements (m), above 0
 * @param frequency (Hz), above 0
 */
public record NearField(double aperture, double frequency) {

    /**
     * @throws IllegalArgumentException if an argument is not finite and above 0
     */
    public NearField {
        Require.above("aperture", aperture, 0, "m");
        Require.above("frequency", frequency, 0, "Hz");
    }

    /**
     * Returns the usual boundary: R = 2 D² / λ (Balanis, Antenna Theory, ch. 2; from memory).
     *
     * @return the distance from the array (m)
     */
    public double boundary() {
        return 2 * aperture * aperture / wavelength();
    }

    /**
     * Tells whether readings at a mark need a near-field correction.
     *
     * @param mark the mark
     * @return true if it is nearer than {@link #boundary()}
     */
    public boolean contains(Mark mark) {
        return mark.distance() < boundary();
    }

    /**
     * Returns how much later the wave of an outer element arrives than that of the middle: D²/(8R),
     * as phase.
     *
     * @param distance R (m), at least half the aperture
     * @return the phase (deg); 22.5 at the boundary
     * @throws IllegalArgumentException if {@code distance} is below half the aperture
     */
    public double phaseErrorAt(double distance) {
        Require.above("distance", distance, aperture / 2, "m");
        return 360 * aperture * aperture / (8 * distance * wavelength());
    }

    private double wavelength() {
        return new Line(1, frequency).wavelength();
    }
}
