package halfwidth.localizer.pattern;

import halfwidth.localizer.Require;
import halfwidth.localizer.signal.Tone;

/**
 * The sector between the two half-width points, where the DDM is 0.155.
 *
 * @param courseLine azimuth where the DDM is 0 (deg)
 * @param slope how fast the DDM rises there (DDM/deg)
 * @param edge90 azimuth of the half-width point on the 90 Hz side (deg)
 * @param edge150 azimuth of the half-width point on the 150 Hz side (deg)
 * @param linearity the largest distance of the DDM from the straight line fitted between the edges
 *     (DDM)
 */
public record PredictedCourse(
        double courseLine, double slope, double edge90, double edge150, double linearity) {

    /**
     * Returns the course width.
     *
     * @return the angle from edge to edge (deg)
     */
    public double width() {
        return edge150 - edge90;
    }

    /**
     * Returns the part of the course width on one side of the course line, the symmetry by the
     * definition of FAA Order 8200.1 (from memory).
     *
     * @param side which side, by the tone that predominates there
     * @return the part (%), 50 for a symmetrical course; the two sides make 100
     */
    public double symmetry(Tone side) {
        double part = side == Tone.HZ_90 ? courseLine - edge90 : edge150 - courseLine;
        return 100 * part / width();
    }

    /**
     * Returns the displacement sensitivity: slope · (180/π) cos²(courseLine)/distance, for a
     * displacement y = distance · tan θ.
     *
     * @param distance from the array to the reference datum along the course line (m), above 0
     * @return the rise of the DDM across the course line (DDM/m)
     */
    public double slopePerMetre(double distance) {
        Require.above("distance", distance, 0, "m");
        double cosine = Math.cos(Math.toRadians(courseLine));
        return Math.toDegrees(slope) * cosine * cosine / distance;
    }

    /**
     * Returns how far the course line is from azimuth 0, across the course.
     *
     * @param distance from the array along azimuth 0 (m), above 0
     * @return the offset (m), positive on the 150 Hz side
     */
    public double courseOffset(double distance) {
        Require.above("distance", distance, 0, "m");
        return distance * Math.tan(Math.toRadians(courseLine));
    }
}
