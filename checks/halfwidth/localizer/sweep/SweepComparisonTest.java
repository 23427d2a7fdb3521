package halfwidth.localizer.sweep;

import static halfwidth.localizer.sweep.SweepExamples.course;
import static halfwidth.localizer.sweep.SweepExamples.sweep;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import halfwidth.laws.Draw;
import halfwidth.laws.Law;
import halfwidth.localizer.uncertainty.Estimate;
import java.util.List;
import org.junit.jupiter.api.Test;

class SweepComparisonTest {

    @Test
    void takesDifferencesWhereBothWereRead() {
        Sweep before = Sweep.ofColumns(new double[] {-1, 0, 1}, new double[] {-0.1, 0, 0.1});
        Sweep after =
                Sweep.ofColumns(
                        new double[] {-1.004, 0, 1, 2},
                        new double[] {-0.103, 0.004, Double.NaN, 0.2});

        SweepComparison found = SweepComparison.of(before, after, 0.01);

        assertEquals(2, found.changes().size());
        assertEquals(List.of(1.0, 2.0), found.notCompared());
        assertEquals(-0.003, found.changes().get(0).change(), 1e-15);
        assertEquals(0.004, found.worst().change(), 1e-15);
        // √((9 + 16)/2) and (−3 + 4)/2 thousandths.
        assertEquals(Math.sqrt(12.5) / 1000, found.rootMeanSquare(), 1e-15);
        assertEquals(0.0005, found.meanChange(), 1e-15);
        // 4 thousandths beside √2 · 1 thousandth.
        assertEquals(4 / Math.sqrt(2), SweepComparison.significance(found.worst(), 0.001), 1e-9);
    }

    @Law
    void findsTheShiftAndTheWidthChangeThatWerePutIn(Draw draw) {
        double shift = draw.between(-0.2, 0.2);
        double wider = draw.between(0.9, 1.2);
        CourseSector before = CourseSector.of(sweep(a -> course(a, 2, 0.05)), 2);
        CourseSector after = CourseSector.of(sweep(a -> course(a, 2 * wider, 0.05 + shift)), 2);

        CourseChange change = CourseChange.between(before, after);

        assertEquals(shift, change.shift().value(), 1e-9);
        assertEquals(100 * (wider - 1), change.widthPercent().value(), 1e-7);
        // The course moves towards the 150, so the old course line reads more of the 90.
        assertEquals(-shift * 0.0775, change.shiftDdm().value(), 1e-9);
    }

    @Test
    void addsTheUncertaintiesOfBothSweeps() {
        Estimate difference =
                SweepComparison.difference(new Estimate(1, 0.3), new Estimate(2, 0.4));

        assertEquals(1, difference.value());
        assertEquals(0.5, difference.standardUncertainty(), 1e-15);
        assertEquals(2, SweepComparison.significance(difference), 1e-15);
    }

    @Law
    void runsTheOtherWayWhenTheSweepsAreExchanged(Draw draw) {
        double bump = draw.between(-0.05, 0.05);
        Sweep one = sweep(SweepExamples::rippled);
        Sweep other = sweep(a -> SweepExamples.rippled(a) + (a == 3 ? bump : 0));

        SweepComparison there = SweepComparison.of(one, other, 0.01);
        SweepComparison back = SweepComparison.of(other, one, 0.01);

        assertEquals(there.rootMeanSquare(), back.rootMeanSquare(), 1e-15);
        assertEquals(there.meanChange(), -back.meanChange(), 1e-15);
    }

    @Test
    void refusesSweepsWithNothingInCommon() {
        Sweep one = Sweep.ofColumns(new double[] {1, 2}, new double[] {0.1, Double.NaN});
        Sweep other = Sweep.ofColumns(new double[] {2, 3}, new double[] {0.1, 0.2});

        assertThrows(IllegalArgumentException.class, () -> SweepComparison.of(one, other, 0.01));
    }
}
