package halfwidth.localizer.tolerance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

class GridFiguresTest {

    private static GridFigures figures(DoubleUnaryOperator ddm) {
        double[] values = new double[Grid.POINTS];
        for (int i = 0; i < values.length; i++) {
            values[i] = ddm.applyAsDouble(Grid.azimuth(i));
        }
        return new GridFigures(values);
    }

    @Test
    void findsCrossingsOfACurveBetweenThePoints() {
        // 0.3 sin(θ/3.1 − 0.021): zero at 0.0651°, edges where the sine is ±0.155/0.3.
        GridFigures figures = figures(t -> 0.3 * Math.sin(t / 3.1 - 0.021));
        double course = figures.coursePlace();
        double turn = Math.asin(0.155 / 0.3);
        // The cubic's error, h⁴ f⁗/f′ · 3/128 with h = 0.1°: below 1e-7°.
        assertEquals(3.1 * 0.021, Grid.azimuth(course), 1e-7);
        assertEquals(3.1 * (0.021 + turn), Grid.azimuth(figures.edgePlace(course, 1)), 1e-6);
        assertEquals(3.1 * (0.021 - turn), Grid.azimuth(figures.edgePlace(course, -1)), 1e-6);
    }

    @Test
    void findsACourseLineLeftOfTheMiddleAndAnEdgeInTheSameStep() {
        GridFigures steep = figures(t -> Math.max(-0.4, Math.min(0.4, 4 * (t + 0.25))));
        double course = steep.coursePlace();
        assertEquals(-0.25, Grid.azimuth(course), 1e-9);
        assertTrue(steep.edgePlace(course, 1) > course);
        assertTrue(steep.edgePlace(course, -1) < course);
    }

    @Test
    void takesTheCrossingNearestToTheMiddle() {
        GridFigures figures = figures(t -> 0.05 * (t + 3) * (t - 1.25) * (t - 9) / 100);
        assertEquals(1.25, Grid.azimuth(figures.coursePlace()), 1e-9);
    }

    @Test
    void takesNoNullOfTheCarrierForTheCourse() {
        GridFigures figures = figures(t -> 0.01 / (t - 0.53) - 0.01 / (3 - 0.53));
        assertEquals(3, Grid.azimuth(figures.coursePlace()), 1e-6);
    }

    @Test
    void hasNoCourseWhereTheDdmNeverTurnsOver() {
        GridFigures figures = figures(t -> 0.2);
        assertTrue(Double.isNaN(figures.coursePlace()));
        assertTrue(Double.isNaN(figures.edgePlace(figures.coursePlace(), 1)));
    }

    @Test
    void tellsTheLeastClearanceOfTheWeakerSide() {
        // Beyond 5° constant: 0.3 on the 150 Hz side, 0.21 on the other, with a dip at −20°.
        GridFigures figures =
                figures(
                        t -> {
                            double dip = Math.abs(t + 20) < 0.05 ? 0.09 : 0;
                            return t > 5 ? 0.3 : t < -5 ? -0.21 + dip : 0.06 * t;
                        });
        assertEquals(0.12, figures.outerClearance(), 1e-12);
        // From the first point at or above 0.180, 3.0° or the next for rounding, to 10°.
        assertEquals(0.18, figures.innerClearance(), 0.0061);
    }

    @Test
    void tellsTheGreatestDdmWhereItNeverGetsThere() {
        assertEquals(0.1, figures(t -> 0.01 * t).innerClearance(), 1e-12);
    }
}
