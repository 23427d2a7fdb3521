package halfwidth.localizer.site;

import halfwidth.localizer.Range;
import halfwidth.localizer.Require;

/**
 * A place on the ground, relative to the centre of the array.
 *
 * @param along distance out along the course line, on the approach side (m), -100 km to 100 km
 * @param offset distance from the course line (m), positive on the 150 Hz side: a pilot's right
 *     when facing the array
 */
public record Mark(double along, double offset) {
    private static final Range REACH = new Range(-100_000, 100_000);

    /**
     * @throws IllegalArgumentException if a distance is outside ±100 km
     */
    public Mark {
        Require.within("distance along the course line", along, REACH, "m");
        Require.within("offset", offset, REACH, "m");
    }

    /**
     * Returns the mark at a distance and an azimuth from the centre of the array.
     *
     * @param distance from the centre (m), above 0
     * @param azimuth positive on the 150 Hz side (deg), -180 to 180
     * @return the mark
     * @throws IllegalArgumentException if an argument is outside its range
     */
    public static Mark atAzimuth(double distance, double azimuth) {
        Require.above("distance from the array", distance, 0, "m");
        Require.within("azimuth", azimuth, new Range(-180, 180), "deg");
        double radians = Math.toRadians(azimuth);
        return new Mark(distance * Math.cos(radians), distance * Math.sin(radians));
    }

    /**
     * Returns the mark at an azimuth on a line square to the course line: offset = along tan(az).
     *
     * @param along where the line crosses the course line, from the centre of the array (m), above
     *     0
     * @param azimuth positive on the 150 Hz side (deg), -80 to 80
     * @return the mark
     * @throws IllegalArgumentException if an argument is outside its range
     */
    public static Mark onPerpendicular(double along, double azimuth) {
        Require.above("distance along the course line", along, 0, "m");
        Require.within("azimuth on a perpendicular", azimuth, new Range(-80, 80), "deg");
        return new Mark(along, along * Math.tan(Math.toRadians(azimuth)));
    }

    /**
     * Returns the azimuth seen from the centre of the array.
     *
     * @return the azimuth (deg), positive on the 150 Hz side, -180 to 180
     * @throws IllegalStateException if the mark is the centre itself
     */
    public double azimuth() {
        if (along == 0 && offset == 0) {
            throw new IllegalStateException("the centre of the array has no azimuth");
        }
        return Math.toDegrees(Math.atan2(offset, along));
    }

    /**
     * Returns the distance from the centre of the array.
     *
     * @return the distance (m)
     */
    public double distance() {
        return Math.hypot(along, offset);
    }

    /**
     * Returns the tape distance to another mark on level ground.
     *
     * @param other the other mark
     * @return the distance (m)
     */
    public double distanceTo(Mark other) {
        return Math.hypot(along - other.along, offset - other.offset);
    }
}
