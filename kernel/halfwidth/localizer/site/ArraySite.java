package halfwidth.localizer.site;

import halfwidth.localizer.Range;
import halfwidth.localizer.Require;
import net.sf.geographiclib.Geodesic;
import net.sf.geographiclib.GeodesicData;

/**
 * Where the centre of the array is on the earth and which way its course line runs.
 *
 * @param centre the centre of the array
 * @param approachBearing true bearing from the array out along the approach (deg), 0 to 360; the
 *     front course heading that pilots fly is the opposite one
 */
public record ArraySite(Position centre, double approachBearing) {

    /**
     * A place on the WGS84 ellipsoid.
     *
     * @param latitude (deg), positive north, -90 to 90
     * @param longitude (deg), positive east, -180 to 180
     */
    public record Position(double latitude, double longitude) {

        /**
         * @throws IllegalArgumentException if a coordinate is outside its range
         */
        public Position {
            Require.within("latitude", latitude, new Range(-90, 90), "deg");
            Require.within("longitude", longitude, new Range(-180, 180), "deg");
        }
    }

    /**
     * @throws IllegalArgumentException if the bearing is outside 0 to 360
     */
    public ArraySite {
        Require.within("bearing", approachBearing, new Range(0, 360), "deg");
    }

    /**
     * Returns where a mark is on the earth.
     *
     * @param mark the mark
     * @return its position, by the geodesic on WGS84
     */
    public Position positionOf(Mark mark) {
        if (mark.distance() == 0) {
            return centre;
        }
        GeodesicData to =
                Geodesic.WGS84.Direct(
                        centre.latitude(), centre.longitude(), bearingOf(mark), mark.distance());
        return new Position(to.lat2, to.lon2);
    }

    /**
     * Returns the true bearing of a mark from the centre of the array.
     *
     * <p>Looking out along the approach the 150 Hz side is on the left, so azimuth counts against
     * the bearing.
     *
     * @param mark the mark, not the centre itself
     * @return the bearing (deg), 0 to below 360
     * @throws IllegalStateException if the mark is the centre itself
     */
    public double bearingOf(Mark mark) {
        double bearing = (approachBearing - mark.azimuth()) % 360;
        return bearing < 0 ? bearing + 360 : bearing;
    }

    /**
     * Returns the mark at a position that was surveyed.
     *
     * @param position the position, within 100 km
     * @return the mark
     * @throws IllegalArgumentException if the position is further off
     */
    public Mark markAt(Position position) {
        GeodesicData to =
                Geodesic.WGS84.Inverse(
                        centre.latitude(),
                        centre.longitude(),
                        position.latitude(),
                        position.longitude());
        double azimuth = Math.toRadians(approachBearing - to.azi1);
        return new Mark(to.s12 * Math.cos(azimuth), to.s12 * Math.sin(azimuth));
    }
}
