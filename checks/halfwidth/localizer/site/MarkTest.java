package halfwidth.localizer.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.laws.Draw;
import halfwidth.laws.Law;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MarkTest {

    @Test
    void standsWhereTheTangentSays() {
        // tan 35° = 0.70021 from a table: 210.06 m off at 300 m.
        assertEquals(210.06, Mark.onPerpendicular(300, 35).offset(), 0.005);
        assertEquals(300, Mark.onPerpendicular(300, 35).along());
        // And on an arc: sin 35° = 0.57358, cos 35° = 0.81915.
        assertEquals(172.07, Mark.atAzimuth(300, 35).offset(), 0.005);
        assertEquals(245.75, Mark.atAzimuth(300, 35).along(), 0.01);
    }

    @Law
    void hasTheAzimuthItWasSetOutAt(Draw draw) {
        double azimuth = draw.between(-79, 79);
        double distance = draw.between(10, 5000);
        assertEquals(azimuth, Mark.onPerpendicular(distance, azimuth).azimuth(), 1e-10);
        assertEquals(azimuth, Mark.atAzimuth(distance, azimuth).azimuth(), 1e-10);
        assertEquals(distance, Mark.atAzimuth(distance, azimuth).distance(), 1e-9);
    }

    @Test
    void measuresTheTapeBetweenMarks() {
        assertEquals(5, new Mark(100, 3).distanceTo(new Mark(104, 0)), 1e-12);
    }

    @Test
    void refusesImpossibleMarks() {
        assertThrows(IllegalArgumentException.class, () -> Mark.onPerpendicular(300, 85));
        assertThrows(IllegalArgumentException.class, () -> Mark.atAzimuth(0, 5));
        assertThrows(IllegalArgumentException.class, () -> new Mark(Double.NaN, 0));
        assertThrows(IllegalStateException.class, () -> new Mark(0, 0).azimuth());
    }

    @ParameterizedTest
    @CsvSource({"15, 165", "20, 294", "25, 459", "30, 660", "40, 1174", "45, 1486"})
    void endsTheNearFieldAtTwiceTheSquareOfTheAperture(double aperture, double boundary) {
        // 2 D² / 2.7254 m at 110 MHz, by hand; the textbook's phase error there is 22.5°.
        NearField field = new NearField(aperture, 110e6);

        assertEquals(boundary, field.boundary(), 0.6);
        assertEquals(22.5, field.phaseErrorAt(field.boundary()), 1e-9);
    }

    @Test
    void flagsMarksInTheNearField() {
        NearField field = new NearField(25, 110e6);

        assertTrue(field.contains(Mark.onPerpendicular(300, 10)));
        assertFalse(field.contains(Mark.onPerpendicular(459, 10)));
    }
}
