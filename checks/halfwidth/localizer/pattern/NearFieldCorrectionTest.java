package halfwidth.localizer.pattern;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.localizer.array.ArrayFile;
import halfwidth.localizer.array.ArrayModel;
import halfwidth.localizer.array.Place;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class NearFieldCorrectionTest {
    private static final ArrayModel ARRAY =
            ArrayFile.read(Path.of("datasets", "arrays", "fourteen-two-carrier.csv"));

    @Test
    void vanishesFarAway() {
        NearFieldCorrection far = NearFieldCorrection.of(ARRAY, new Place(2, 50_000));
        assertEquals(1, far.factor().orElseThrow(), 1e-3);
        assertEquals(0, far.difference(), 1e-4);
    }

    @Test
    void growsTowardsTheArray() {
        // Phase errors over the aperture go as 1/R and what they take from the DDM as 1/R².
        double at1000 = NearFieldCorrection.of(ARRAY, new Place(2, 1000)).difference();
        double at2000 = NearFieldCorrection.of(ARRAY, new Place(2, 2000)).difference();
        assertEquals(4, at1000 / at2000, 0.2);
    }

    @Test
    void hasNoFactorOnTheCourseLine() {
        NearFieldCorrection onCourse = NearFieldCorrection.of(ARRAY, new Place(0, 300));
        assertTrue(onCourse.factor().isEmpty());
        assertEquals(0, onCourse.difference(), 1e-9);
    }

    @Test
    void agreesWithThePatternOnACircle() {
        NearFieldCorrection point = NearFieldCorrection.of(ARRAY, new Place(-8, 120));
        assertEquals(ArrayPattern.nearField(ARRAY, 120).ddm(-8), point.nearDdm(), 1e-15);
        assertEquals(ArrayPattern.farField(ARRAY).ddm(-8), point.farDdm(), 1e-15);
    }

    @Test
    void refusesPlacesBehindTheArray() {
        assertThrows(IllegalArgumentException.class, () -> new Place(100, 300));
        assertThrows(IllegalArgumentException.class, () -> new Place(0, Double.NaN));
    }
}
