package halfwidth.localizer.array;

import halfwidth.localizer.Range;
import halfwidth.localizer.Require;

/**
 * Where a receiver stands, seen from the array's centre.
 *
 * @param azimuth (deg), positive on the 150 Hz side of the course line, −90 to 90
 * @param distance (m), above 0 and at most 100 km
 */
public record Place(double azimuth, double distance) {
    static final Range AZIMUTHS = new Range(-90, 90);

    /**
     * @throws IllegalArgumentException if the azimuth or the distance is outside its range
     */
    public Place {
        Require.within("azimuth", azimuth, AZIMUTHS, "deg");
        Require.above("distance", distance, 0, "m");
        Require.within("distance", distance, new Range(0, 100_000), "m");
    }

    /**
     * Returns how far off the course line it is.
     *
     * @return the offset (m), positive on the 150 Hz side
     */
    public double offset() {
        return distance * Math.sin(Math.toRadians(azimuth));
    }

    /**
     * Returns how far in front of the array's line it is.
     *
     * @return the distance along the course line (m)
     */
    public double ahead() {
        return distance * Math.cos(Math.toRadians(azimuth));
    }
}
