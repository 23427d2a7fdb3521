package halfwidth.localizer.pattern;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.localizer.Range;
import halfwidth.localizer.array.ArrayModel;
import halfwidth.localizer.array.Carrier;
import halfwidth.localizer.array.Current;
import halfwidth.localizer.array.ElementPattern;
import halfwidth.localizer.array.Fault;
import halfwidth.localizer.array.FeedPath;
import halfwidth.localizer.signal.Tone;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Against pairs of elements, whose figures all have closed forms. */
class ArrayPatternTest {
    private static final double FREQUENCY = 110e6;
    private static final double WAVELENGTH = 299_792_458 / FREQUENCY;

    /** A middle element with all the CSB and a pair with all the SBO: DDM = 4 b sin(k x sin θ). */
    private static ArrayModel threeElements(double x, double b) {
        return new ArrayModel(
                "three",
                List.of(-x, 0.0, x),
                ElementPattern.ISOTROPIC,
                List.of(
                        new Carrier(
                                FREQUENCY,
                                0.2,
                                List.of(Current.NONE, new Current(1, 0), Current.NONE),
                                List.of(new Current(b, 90), Current.NONE, new Current(b, -90)))));
    }

    private static double azimuthOf(double sine) {
        return Math.toDegrees(Math.asin(sine));
    }

    @Test
    void findsTheHalfWidthPointsOfAClosedForm() {
        double x = 0.75 * WAVELENGTH;
        PredictedCourse sector = ArrayPattern.farField(threeElements(x, 0.06)).course();
        double edge = azimuthOf(Math.asin(0.155 / 0.24) / (2 * Math.PI * 0.75));
        assertEquals(0, sector.courseLine(), 1e-9);
        assertEquals(edge, sector.edge150(), 1e-8);
        assertEquals(-edge, sector.edge90(), 1e-8);
        assertEquals(2 * edge, sector.width(), 1e-8);
        assertEquals(50, sector.symmetry(Tone.HZ_90), 1e-6);
        // d/dθ of 4 b sin(k x sin θ) at 0: 4 b k x, per radian.
        double slope = Math.toRadians(4 * 0.06 * 2 * Math.PI * 0.75);
        assertEquals(slope, sector.slope(), slope * 1e-6);
        // y = D tan θ: per metre it is the slope per radian over the distance.
        assertEquals(Math.toDegrees(slope) / 3000, sector.slopePerMetre(3000), 1e-9);
    }

    /** Least squares of sin over ±z by its integrals: slope a = 3 (sin z − z cos z)/z³. */
    @Test
    void measuresLinearityAsTheLargestDistanceFromTheFittedLine() {
        double x = 0.75 * WAVELENGTH;
        PredictedCourse sector = ArrayPattern.farField(threeElements(x, 0.06)).course();
        double z = Math.asin(0.155 / 0.24);
        double a = 3 * (Math.sin(z) - z * Math.cos(z)) / (z * z * z);
        double between = Math.acos(a);
        double most =
                Math.max(
                        Math.sin(between) - a * between, // inside, where the slopes agree
                        a * z - Math.sin(z)); // at the edge
        // 101 points instead of all, and azimuth for its sine (θ³/6 at 9°): 3 % of it.
        assertEquals(0.24 * most, sector.linearity(), 0.03 * 0.24 * most);
    }

    @Test
    void findsEveryCrossingOfAClosedForm() {
        // sin(k x sin θ) = 0 where sin θ = m λ/(2 x): 0, ±0.2, ±0.4 for x = 2.5 λ.
        List<Double> crossings =
                ArrayPattern.farField(threeElements(2.5 * WAVELENGTH, 0.1)).zeroCrossings();
        double[] sines = {-0.4, -0.2, 0, 0.2, 0.4};
        assertEquals(sines.length, crossings.size());
        for (int i = 0; i < sines.length; i++) {
            assertEquals(azimuthOf(sines[i]), crossings.get(i), 1e-8);
        }
    }

    @Test
    void takesNoNullOfTheCarrierForACrossing() {
        // CSB and SBO from one pair: DDM = 2 (b/a) tan(k x sin θ), with poles at sin θ = ±0.25.
        ArrayModel pair =
                new ArrayModel(
                        "pair",
                        List.of(-WAVELENGTH, WAVELENGTH),
                        ElementPattern.ISOTROPIC,
                        List.of(
                                new Carrier(
                                        FREQUENCY,
                                        0.2,
                                        List.of(new Current(1, 0), new Current(1, 0)),
                                        List.of(new Current(0.1, 90), new Current(0.1, -90)))));
        List<Double> crossings = ArrayPattern.farField(pair).zeroCrossings();
        assertEquals(3, crossings.size());
        assertEquals(azimuthOf(0.5), crossings.get(2), 1e-8);
    }

    @Test
    void movesTheCourseByThePhaseOfTheCarrierSideToSide() {
        // Both SBO currents turned: sin(k x sin θ − 10°), whose null is moved as far.
        ArrayModel array = threeElements(0.75 * WAVELENGTH, 0.06);
        ArrayModel moved =
                array.with(Fault.phaseChange(1, 10).on(FeedPath.COURSE_SBO))
                        .with(Fault.phaseChange(3, -10).on(FeedPath.COURSE_SBO));
        double expected = azimuthOf(Math.toRadians(10) / (2 * Math.PI * 0.75));
        PredictedCourse sector = ArrayPattern.farField(moved).course();
        assertEquals(expected, sector.courseLine(), 1e-8);
        assertEquals(3000 * Math.tan(Math.toRadians(expected)), sector.courseOffset(3000), 1e-5);
    }

    @Test
    void findsTheLeastDdmOfASectorWhereverItIs() {
        ArrayPattern pattern = ArrayPattern.farField(threeElements(2 * WAVELENGTH, 0.1));
        // sin(4π sin θ) is least, −1, where sin θ = 3/8; DDM = −0.4 there.
        SideClearance inside = pattern.leastDdm(Tone.HZ_150, new Range(15, 30));
        assertEquals(-0.4, inside.leastDdm(), 1e-9);
        assertEquals(azimuthOf(0.375), inside.azimuth(), 1e-3);
        SideClearance mirrored = pattern.leastDdm(Tone.HZ_90, new Range(15, 30));
        assertEquals(-0.4, mirrored.leastDdm(), 1e-9);
        assertEquals(-azimuthOf(0.375), mirrored.azimuth(), 1e-3);
        SideClearance atTheStart = pattern.leastDdm(Tone.HZ_150, new Range(1, 5));
        double first = 0.4 * Math.sin(4 * Math.PI * Math.sin(Math.toRadians(1)));
        assertEquals(first, atTheStart.leastDdm(), 1e-9);
    }

    @Test
    void showsWhatAWeakCourseLacksOfItsInnerClearance() {
        // DDM = 0.16 sin(...) never reaches 0.180.
        List<SideClearance> weak =
                ArrayPattern.farField(threeElements(1.5 * WAVELENGTH, 0.04)).clearances();
        assertEquals(0.16, weak.get(0).leastDdm(), 1e-4);
        assertEquals(0.16, weak.get(1).leastDdm(), 1e-4);
    }

    @Test
    void refusesAPatternWithoutASector() {
        ArrayPattern narrow = ArrayPattern.farField(threeElements(0.75 * WAVELENGTH, 0.01));
        assertThrows(IllegalArgumentException.class, narrow::course);
        assertThrows(
                IllegalArgumentException.class,
                () -> narrow.leastDdm(Tone.HZ_90, new Range(10, 36)));
    }

    @Test
    void listsPointsForAPlotFromEndToEnd() {
        ArrayPattern pattern = ArrayPattern.farField(threeElements(0.75 * WAVELENGTH, 0.06));
        List<PatternPoint> points = pattern.points(new Range(-35, 35), 0.1);
        assertEquals(701, points.size());
        assertEquals(35, points.get(700).azimuth(), 1e-12);
        assertEquals(0, points.get(350).level(), 1e-12);
        assertEquals(pattern.ddm(3.0), points.get(380).ddm(), 1e-9);
        assertEquals(0, points.get(10).courseLevel(), 1e-12);
        assertThrows(IllegalArgumentException.class, () -> points.get(0).clearanceLevel());
        assertTrue(points.get(0).ddm() < 0);
    }
}
