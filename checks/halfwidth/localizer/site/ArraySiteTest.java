package halfwidth.localizer.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.laws.Draw;
import halfwidth.laws.Law;
import halfwidth.localizer.site.ArraySite.Position;
import org.junit.jupiter.api.Test;

class ArraySiteTest {

    private static double degrees(double degrees, double minutes, double seconds) {
        return degrees + minutes / 60 + seconds / 3600;
    }

    @Test
    void findsBuninyongFromFlindersPeak() {
        // Geoscience Australia's worked example: 54 972.271 m at 306-52-05.37 from Flinders Peak
        // (37-57-03.72030 S, 144-25-29.52440 E) is Buninyong (37-39-10.15610 S,
        // 143-55-35.38390 E). On GRS80, which here differs from WGS84 by less than 1e-7 m.
        Position flinders = new Position(-degrees(37, 57, 3.72030), degrees(144, 25, 29.52440));
        ArraySite site = new ArraySite(flinders, degrees(306, 52, 5.37));

        Position buninyong = site.positionOf(new Mark(54_972.271, 0));

        // Half of 0.01" of bearing over 55 km is 1.3 mm, which is 1.3e-8 deg.
        assertEquals(-degrees(37, 39, 10.15610), buninyong.latitude(), 2e-8);
        assertEquals(degrees(143, 55, 35.38390), buninyong.longitude(), 2e-8);
    }

    @Test
    void standsOnTheSouthernSideWhenAircraftFlyEast() {
        // Runway 09: aircraft fly east and face the array at its eastern end; a pilot's right, the
        // 150 Hz side, is south. The array looks out to the west.
        ArraySite site = new ArraySite(new Position(50, 10), 270);

        Position right = site.positionOf(Mark.onPerpendicular(500, 10));

        assertTrue(right.latitude() < 50);
        assertTrue(right.longitude() < 10);
        assertEquals(260, site.bearingOf(Mark.onPerpendicular(500, 10)), 1e-9);
    }

    @Test
    void agreesWithAPlaneNearTheArray() {
        // Independent: metres of a degree of latitude at the equator, a (1 − e²) π/180 =
        // 110 574.3 m on WGS84, and of longitude a π/180 = 111 319.5 m.
        ArraySite site = new ArraySite(new Position(0, 0), 0);

        Position mark = site.positionOf(new Mark(300, 120));

        assertEquals(300 / 110_574.3, mark.latitude(), 1e-9);
        assertEquals(-120 / 111_319.5, mark.longitude(), 1e-9);
    }

    @Law
    void comesBackFromThePosition(Draw draw) {
        double latitude = draw.between(-80, 80);
        double bearing = draw.between(0, 360);
        double azimuth = draw.between(-60, 60);
        ArraySite site = new ArraySite(new Position(latitude, 179.999), bearing);
        Mark mark = Mark.onPerpendicular(800, azimuth);

        Mark back = site.markAt(site.positionOf(mark));

        assertEquals(0, mark.distanceTo(back), 1e-6);
    }

    @Test
    void givesTheCentreItself() {
        Position centre = new Position(50, 10);

        assertEquals(centre, new ArraySite(centre, 90).positionOf(new Mark(0, 0)));
    }

    @Test
    void refusesPlacesThatAreNotOnEarth() {
        assertThrows(IllegalArgumentException.class, () -> new Position(91, 0));
        assertThrows(IllegalArgumentException.class, () -> new Position(0, 361));
        assertThrows(IllegalArgumentException.class, () -> new ArraySite(new Position(0, 0), -1));
    }
}
