package halfwidth.localizer.sweep;

import static halfwidth.localizer.sweep.SweepExamples.course;
import static halfwidth.localizer.sweep.SweepExamples.sweep;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.laws.Draw;
import halfwidth.laws.Law;
import halfwidth.localizer.signal.Tone;
import org.hipparchus.stat.regression.SimpleRegression;
import org.junit.jupiter.api.Test;

class CourseSectorTest {

    @Law
    void findsAStraightCourse(Draw draw) {
        double halfWidth = draw.between(1.5, 3);
        double centre = draw.between(-0.2, 0.2);
        CourseSector found =
                CourseSector.of(sweep(azimuth -> course(azimuth, halfWidth, centre)), halfWidth);

        assertEquals(centre, found.centre().value(), 1e-9);
        assertEquals(centre, found.crossing().azimuth(), 1e-9);
        assertEquals(2 * halfWidth, found.widthByRegression().value(), 1e-9);
        assertEquals(2 * halfWidth, found.widthByInterpolation().getAsDouble(), 1e-9);
        assertEquals(50, found.symmetry(Tone.HZ_90).getAsDouble(), 1e-9);
    }

    @Test
    void statesStandardErrorsOfTheRegression() {
        Sweep sweep = sweep(SweepExamples::rippled);
        CourseSector found = CourseSector.of(sweep, 2);

        SimpleRegression other = new SimpleRegression();
        for (SweepReading reading : sweep.present()) {
            if (Math.abs(reading.azimuth()) <= 2) {
                other.addData(reading.azimuth(), reading.value());
            }
        }
        assertEquals(9, other.getN());
        assertEquals(other.getSlope(), found.slope().value(), 1e-14);
        assertEquals(other.getSlopeStdErr(), found.slope().standardUncertainty(), 1e-14);
        // Centre −a/b; the mean azimuth is 0, so a and b are independent.
        double centre = -other.getIntercept() / other.getSlope();
        double relative =
                Math.hypot(
                        other.getInterceptStdErr() / other.getIntercept(),
                        other.getSlopeStdErr() / other.getSlope());
        assertEquals(centre, found.centre().value(), 1e-13);
        assertEquals(Math.abs(centre) * relative, found.centre().standardUncertainty(), 1e-13);
    }

    @Test
    void tellsTheSidesApartByTheReadings() {
        // Half widths of 2° in the 90 and 3° in the 150: 40 % and 60 % of the width.
        Sweep lopsided = sweep(azimuth -> course(azimuth, azimuth < 0 ? 2 : 3, 0));

        CourseSector found = CourseSector.of(lopsided, 2.5);

        assertEquals(2, found.halfWidth(Tone.HZ_90).getAsDouble(), 1e-9);
        assertEquals(3, found.halfWidth(Tone.HZ_150).getAsDouble(), 1e-9);
        assertEquals(40, found.symmetry(Tone.HZ_90).getAsDouble(), 1e-9);
        assertEquals(60, found.symmetry(Tone.HZ_150).getAsDouble(), 1e-9);
    }

    @Test
    void mirrorsWithTheSweep() {
        Sweep sweep = sweep(SweepExamples::rippled);
        CourseSector found = CourseSector.of(sweep, 2);
        CourseSector mirrored = CourseSector.of(sweep.mirrored(), 2);

        assertEquals(-found.centre().value(), mirrored.centre().value(), 1e-13);
        assertEquals(
                found.centre().standardUncertainty(),
                mirrored.centre().standardUncertainty(),
                1e-13);
        assertEquals(found.slope().value(), mirrored.slope().value(), 1e-13);
        assertEquals(-found.crossing().azimuth(), mirrored.crossing().azimuth(), 1e-13);
        assertEquals(
                found.symmetry(Tone.HZ_90).getAsDouble(),
                mirrored.symmetry(Tone.HZ_150).getAsDouble(),
                1e-10);
        Linearity straight = Linearity.of(sweep, found, 0.18);
        Linearity straightMirrored = Linearity.of(sweep.mirrored(), mirrored, 0.18);
        assertEquals(straight.percent(), straightMirrored.percent(), 1e-10);
        assertEquals(straight.readings(), straightMirrored.readings());
    }

    @Law
    void isNotChangedByMissingReadings(Draw draw) {
        double azimuth = draw.hundredths(-34.99, 34.99);
        Sweep sweep = sweep(SweepExamples::rippled);
        double place = azimuth + 0.001;
        Sweep gappy = SweepExamples.withMissing(sweep, place);

        CourseSector whole = CourseSector.of(sweep, 2);
        CourseSector found = CourseSector.of(gappy, 2);

        assertEquals(whole.fit(), found.fit());
        assertEquals(whole.crossing().azimuth(), found.crossing().azimuth());
        assertEquals(whole.widthByInterpolation(), found.widthByInterpolation());
        assertEquals(
                Linearity.of(sweep, whole, 0.18).percent(),
                Linearity.of(gappy, found, 0.18).percent());
    }

    @Test
    void saysThatAHalfWidthPointLiesInAGap() {
        Sweep sweep = sweep(azimuth -> course(azimuth, 2.2, 0));
        CourseSector whole = CourseSector.of(sweep, 2.2);
        CourseSector gappy = CourseSector.of(SweepExamples.without(sweep, 2.5), 2.2);

        assertFalse(whole.edge150().orElseThrow().acrossMissing());
        assertTrue(gappy.edge150().orElseThrow().acrossMissing());
        assertFalse(gappy.edge90().orElseThrow().acrossMissing());
    }

    @Test
    void leavesOutAHalfWidthPointThatWasNotReached() {
        CourseSector found =
                CourseSector.of(
                        Sweep.ofColumns(
                                new double[] {-3, -2, -1, 0, 1},
                                new double[] {-0.2, -0.15, -0.07, 0.001, 0.08}),
                        2);

        assertTrue(found.edge150().isEmpty());
        assertTrue(found.widthByInterpolation().isEmpty());
        assertTrue(found.symmetry(Tone.HZ_150).isEmpty());
        assertTrue(found.edge90().isPresent());
    }

    @Test
    void measuresTheDeviationFromStraight() {
        // Straight but for one reading in the 150 at 2.5°, 0.0072 too high: 4 % of 0.180. It lies
        // outside of the sector of 2°, so it does not bend the line.
        Sweep bent = sweep(azimuth -> course(azimuth, 2.3, 0) + (azimuth == 2.5 ? 0.0072 : 0));

        Linearity found = Linearity.of(bent, CourseSector.of(bent, 2), 0.18);

        assertEquals(2.5, found.worst().azimuth());
        assertEquals(0.0072, found.deviation(), 1e-9);
        assertEquals(4, found.percent(), 1e-6);
        // ±2.5° reads 0.1685 and is within 0.18; ±3° reads 0.202 and is not: 11 readings.
        assertEquals(11, found.readings());
    }

    @Test
    void refusesWhatIsNoCourse() {
        Sweep turnedOver = sweep(azimuth -> -course(azimuth, 2, 0));
        Sweep allInThe150 = sweep(azimuth -> 0.1 + Math.abs(azimuth) / 1000 + azimuth / 1000);

        assertThrows(IllegalArgumentException.class, () -> CourseSector.of(turnedOver, 2));
        assertThrows(IllegalArgumentException.class, () -> CourseSector.of(allInThe150, 2));
        assertThrows(
                IllegalArgumentException.class,
                () -> CourseSector.of(sweep(azimuth -> course(azimuth, 2, 0)), 0.4));
    }

    @Test
    void takesNotANumberInAColumnAsMissing() {
        Sweep sweep = Sweep.ofColumns(new double[] {1, -1, 0}, new double[] {0.1, Double.NaN, 0});

        assertEquals(1, sweep.missing().size());
        assertEquals(-1, sweep.missing().get(0).azimuth());
        assertTrue(sweep.ddmAt(-0.5).isEmpty());
        assertEquals(0.05, sweep.ddmAt(0.5).getAsDouble(), 1e-15);
    }

    @Test
    void refusesTwoReadingsAtOneAzimuth() {
        assertThrows(
                IllegalArgumentException.class,
                () -> Sweep.ofColumns(new double[] {1, 1}, new double[] {0.1, 0.1}));
        assertThrows(
                IllegalArgumentException.class,
                () -> Sweep.ofColumns(new double[] {1}, new double[] {155}));
    }
}
