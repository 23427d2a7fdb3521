package halfwidth.localizer.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.laws.Draw;
import halfwidth.laws.Law;
import halfwidth.localizer.limits.Limits;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CourseWidthTest {
    private static final Limits LIMITS = Limits.published();

    @ParameterizedTest
    @CsvSource({
        "2500, 4.8968, 4.8869",
        "3000, 4.0814, 4.0732",
        "3500, 3.4988, 3.4917",
        "4000, 3.0616, 3.0554"
    })
    void tailorsTheWidthToTheRunway(double distance, double annex10, double faa) {
        // 2 atan(106.897 m / D) by ICAO Annex 10 Vol I, 3.1.3.7.1 (0.155/0.00145 = 106.897) and
        // 2 atan(106.68 m / D) for 700 ft (FAA AIM 1-1-9.b.2), by hand to four digits.
        assertEquals(annex10, CourseWidth.byAnnex10(distance, LIMITS).width(), 6e-5);
        assertEquals(faa, CourseWidth.byFaa(distance, LIMITS).width(), 6e-5);
    }

    @Test
    void agreesWithThePrintedHalfWidth() {
        // A text quoting Annex 10 prints 106.9 m; the whole is 701.42 ft, by hand.
        CourseWidth width = CourseWidth.byAnnex10(3000, LIMITS);

        assertEquals(106.9, width.halfWidthAtDatum(), 0.05);
        assertEquals(701.42, 2 * width.halfWidthAtDatum() / 0.3048, 0.005);
        assertEquals(0.00145, width.ddmPerMetre(), 1e-12);
    }

    @Test
    void clipsAtTheLargestSector() {
        // tan 3° = 0.0524078: 106.897 m are 3° at 2039.7 m, 106.68 m at 2035.6 m (6678.4 ft).
        assertFalse(CourseWidth.byAnnex10(2040, LIMITS).isClipped());
        assertTrue(CourseWidth.byAnnex10(2039, LIMITS).isClipped());
        assertFalse(CourseWidth.byFaa(2036, LIMITS).isClipped());
        assertTrue(CourseWidth.byFaa(2035, LIMITS).isClipped());
        assertEquals(6, CourseWidth.byFaa(1500, LIMITS).width());
    }

    @Test
    void clipsAtTheSmallestTailoredWidth() {
        // tan 1.5° = 0.0261859: 106.68 m are 1.5° at 4073.9 m. Annex 10 has no such clip.
        assertFalse(CourseWidth.byFaa(4073, LIMITS).isClipped());
        assertTrue(CourseWidth.byFaa(4075, LIMITS).isClipped());
        assertEquals(3, CourseWidth.byFaa(5000, LIMITS).width());
        assertFalse(CourseWidth.byAnnex10(5000, LIMITS).isClipped());
    }

    @Test
    void hasNominalSensitivityAtPointBOfAShortRunway() {
        // 106.897 m at 1400 + 1050 m: 2 atan(0.0436314) = 4.9966°, by hand.
        CourseWidth width = CourseWidth.byAnnex10AtPointB(1400, 1100, LIMITS);

        assertEquals(4.9966, width.width(), 1e-4);
        assertEquals(1400, width.datumDistance());
        // Nearer to the array the same angle is fewer metres.
        assertEquals(0.00145 * 2450 / 1400, width.ddmPerMetre(), 1e-9);
    }

    @Test
    void refusesTheShortRunwayRuleForALongRunway() {
        assertThrows(
                IllegalArgumentException.class,
                () -> CourseWidth.byAnnex10AtPointB(3000, 2500, LIMITS));
    }

    @ParameterizedTest
    @CsvSource({"10.5, 14.73", "7.5, 10.52", "6, 8.42", "4.5, 6.31", "3, 4.21"})
    void saysMetresAtTheDatumInMicroamps(double metres, double microamps) {
        // metres × 0.00145 × 150/0.155, by hand; a text quoting Annex 10 prints 15, 11, -, 6.4,
        // 4.3.
        Displacement displacement = CourseWidth.byAnnex10(3200, LIMITS).ofMetres(metres);

        assertEquals(microamps, displacement.microamps(), 0.006);
    }

    @Test
    void takesTheSmallerOfMetresAndDdmInCategoryOne() {
        // 10.5 m at nominal sensitivity are 0.015225, so 0.015 DDM is smaller ...
        CourseWidth nominal = CourseWidth.byAnnex10(3200, LIMITS);
        assertEquals(0.015, nominal.alignmentLimit("I", LIMITS).ddm(), 1e-12);
        assertEquals(0.015 / 0.00145, nominal.monitorShiftLimit("I", LIMITS).metres(), 1e-9);
        // ... but not on a course a tenth wider.
        CourseWidth wide = CourseWidth.of(1.1 * nominal.width(), 3200);
        assertEquals(10.5, wide.alignmentLimit("I", LIMITS).metres(), 1e-12);
        // The other categories have metres only.
        assertEquals(3, nominal.alignmentLimit("III", LIMITS).metres(), 1e-12);
    }

    @Law
    void readsHalfWidthAtTheHalfWidthPoint(Draw draw) {
        double width = draw.between(2, 6);
        double distance = draw.between(1000, 6000);
        CourseWidth course = CourseWidth.of(width, distance);

        Displacement edge = course.ofDdm(0.155);

        assertEquals(width / 2, edge.azimuth(), 1e-9);
        assertEquals(150, edge.microamps(), 1e-9);
        assertEquals(0.155, course.ddmPerDegree() * course.halfWidth(), 1e-12);
    }

    @Test
    void refusesDistancesThatCannotBe() {
        assertThrows(IllegalArgumentException.class, () -> CourseWidth.byAnnex10(0, LIMITS));
        assertThrows(IllegalArgumentException.class, () -> CourseWidth.byFaa(Double.NaN, LIMITS));
        assertThrows(IllegalArgumentException.class, () -> CourseWidth.of(0, 3000));
    }
}
