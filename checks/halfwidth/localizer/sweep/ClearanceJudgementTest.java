package halfwidth.localizer.sweep;

import static halfwidth.localizer.sweep.SweepExamples.course;
import static halfwidth.localizer.sweep.SweepExamples.sweep;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.laws.Draw;
import halfwidth.laws.Law;
import halfwidth.localizer.limits.Limits;
import halfwidth.localizer.signal.Tone;
import java.util.List;
import org.junit.jupiter.api.Test;

/** ICAO Annex 10 Vol I, 3.1.3.7.3: 0.180 once reached to 10°, then 0.155 to 35°. */
class ClearanceJudgementTest {
    private static final List<ClearanceSector> ANNEX10 =
            ClearanceSector.annex10(Limits.published());

    /** Of a course of 4°: 0.155 at 2° (ICAO Annex 10 Vol I, 3.1.1). */
    private static final double SLOPE = 0.155 / 2;

    private static ClearanceJudgement judge(Sweep sweep) {
        return ClearanceJudgement.of(sweep, ANNEX10, 0, SLOPE);
    }

    /** A course of 4° that meets everything, with one reading set. */
    private static Sweep with(double azimuth, double ddm) {
        return sweep(a -> a == azimuth ? ddm : course(a, 2, 0));
    }

    private static Verdict at(ClearanceJudgement judgement, double azimuth) {
        return judgement.points().stream()
                .filter(point -> point.reading().azimuth() == azimuth)
                .findFirst()
                .orElseThrow()
                .verdict();
    }

    private static ClearanceMinimum minimum(ClearanceJudgement judgement, int sector, Tone side) {
        return judgement.minima().stream()
                .filter(one -> one.sector().equals(ANNEX10.get(sector)) && one.side() == side)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void isMetByAWholesomeCourse() {
        ClearanceJudgement judgement = judge(with(0, 0));

        assertEquals(Verdict.MET, judgement.verdict());
        assertTrue(judgement.notMet().isEmpty());
        // 0.155 · 2.5/2 = 0.19375 is the first past 0.180; the readings before it have no limit.
        assertEquals(Verdict.MET, at(judgement, 2.5));
        assertEquals(Verdict.NOT_JUDGED, at(judgement, 2));
        assertEquals(0.19375, minimum(judgement, 0, Tone.HZ_150).clearance().get(), 1e-12);
        assertEquals(0.22, minimum(judgement, 1, Tone.HZ_90).clearance().get(), 1e-12);
    }

    @Test
    void isNotMetByADipOnEitherSide() {
        ClearanceJudgement judgement = judge(with(-7, -0.179));

        assertEquals(Verdict.NOT_MET, judgement.verdict());
        assertEquals(Verdict.NOT_MET, at(judgement, -7));
        assertEquals(Verdict.NOT_MET, minimum(judgement, 0, Tone.HZ_90).verdict());
        assertEquals(Verdict.MET, minimum(judgement, 0, Tone.HZ_150).verdict());
        assertEquals(-7, minimum(judgement, 0, Tone.HZ_90).lowest().get().azimuth());
    }

    /** The slope reaches 0.180 at 2.32°: what comes after it counts, however deep it is. */
    @Test
    void isNotMetByAHoleNextToTheCourseSector() {
        ClearanceJudgement sagging =
                judge(sweep(a -> a >= 3 && a <= 5 ? 0.1 - 0.04 * (a - 3) : course(a, 2, 0)));

        assertEquals(Verdict.NOT_MET, at(sagging, 3));
        assertEquals(Verdict.NOT_MET, at(sagging, 5));
        assertEquals(0.02, minimum(sagging, 0, Tone.HZ_150).clearance().get(), 1e-12);
    }

    @Test
    void isNotMetByTheWrongToneNextToTheCourseSector() {
        ClearanceJudgement reversed =
                judge(sweep(a -> a >= 3 && a <= 5 ? -course(a, 2, 0) : course(a, 2, 0)));

        assertEquals(Verdict.NOT_MET, at(reversed, 3));
        assertEquals(Verdict.NOT_MET, reversed.verdict());
        assertEquals(Verdict.MET, minimum(reversed, 0, Tone.HZ_90).verdict());
    }

    /**
     * A course 0.5° to the 150 Hz side reaches 0.180 at 2.82° there, at 1.82° on the other side.
     */
    @Test
    void beginsFromTheCourseLineAndNotFromTheCentreLine() {
        ClearanceJudgement shifted =
                ClearanceJudgement.of(sweep(a -> course(a, 2, 0.5)), ANNEX10, 0.5, SLOPE);

        assertEquals(Verdict.NOT_JUDGED, at(shifted, 2.5));
        assertEquals(Verdict.MET, at(shifted, -2));
        assertEquals(Verdict.NOT_JUDGED, at(shifted, -1.5));
    }

    /** Marks lost from 2.5° to 10°: a reading on the slope says nothing of what comes after it. */
    @Test
    void judgesNoReadingOnTheSlopeWhereTheMarksBeyondAreLost() {
        Sweep gappy =
                new Sweep(
                        sweep(a -> course(a, 2, 0)).readings().stream()
                                .filter(one -> one.azimuth() <= 2 || one.azimuth() > 10)
                                .toList());

        assertEquals(Verdict.NOT_JUDGED, at(judge(gappy), 2));
        assertTrue(minimum(judge(gappy), 0, Tone.HZ_150).lowest().isEmpty());
        assertEquals(Verdict.NOT_JUDGED, judge(gappy).verdict());
    }

    /** A course so wide that it reaches 0.180 at 11.6° only, and readings beyond. */
    @Test
    void isNotMetWhereTheCourseReachesTheLimitBeyondTheSector() {
        ClearanceJudgement wide =
                ClearanceJudgement.of(sweep(a -> 0.155 * a / 10), ANNEX10, 0, 0.0155);

        assertEquals(Verdict.NOT_MET, at(wide, 10));
        assertEquals(Verdict.NOT_JUDGED, at(wide, 9));
    }

    @Test
    void isEasierBeyondTenDegrees() {
        assertEquals(Verdict.MET, at(judge(with(15, 0.16)), 15));
        assertEquals(Verdict.NOT_MET, at(judge(with(15, 0.154)), 15));
        // 10° itself belongs to the inner sector, 35° to the outer one.
        assertEquals(Verdict.NOT_MET, at(judge(with(10, 0.16)), 10));
        assertEquals(Verdict.MET, at(judge(with(35, 0.155)), 35));
    }

    @Test
    void isNotMetWhereTheWrongTonePredominates() {
        ClearanceJudgement judgement = judge(with(20, -0.3));

        assertEquals(Verdict.NOT_MET, at(judgement, 20));
        assertEquals(-0.3, minimum(judgement, 1, Tone.HZ_150).clearance().get(), 1e-15);
    }

    @Test
    void doesNotJudgeAMissingReadingNorTheWholeWithoutIt() {
        ClearanceJudgement judgement = judge(SweepExamples.without(with(0, 0), 20));

        assertEquals(Verdict.NOT_JUDGED, at(judgement, 20));
        assertEquals(Verdict.NOT_JUDGED, judgement.verdict());
        assertEquals(Verdict.MET, minimum(judgement, 1, Tone.HZ_150).verdict());
        assertEquals(1, minimum(judgement, 1, Tone.HZ_150).missing());
        assertEquals(List.of(SweepReading.missing(20)), judgement.missing());
    }

    @Test
    void isNotMetWhereTheInnerLimitIsNeverReached() {
        ClearanceJudgement judgement =
                judge(sweep(a -> Math.max(-0.17, Math.min(0.17, 0.155 * a / 2))));

        assertEquals(Verdict.NOT_MET, judgement.verdict());
        assertEquals(Verdict.NOT_MET, minimum(judgement, 0, Tone.HZ_150).verdict());
        assertEquals(Verdict.MET, minimum(judgement, 1, Tone.HZ_150).verdict());
    }

    @Test
    void cannotJudgeASweepThatEndsBeforeTheLimitIsReached() {
        Sweep narrow = Sweep.ofColumns(new double[] {-1, 0, 1}, new double[] {-0.08, 0, 0.08});

        assertEquals(Verdict.NOT_JUDGED, judge(narrow).verdict());
        assertTrue(minimum(judge(narrow), 0, Tone.HZ_150).lowest().isEmpty());
    }

    @Test
    void takesTheFaaLimitsInMicroamps() {
        // 175 µA are 0.18083 DDM: what just meets 0.180 fails it.
        List<ClearanceSector> faa = ClearanceSector.faa(Limits.published());
        assertEquals(0.18083, faa.get(0).leastDdm(), 5e-6);
        assertEquals(0.155, faa.get(1).leastDdm(), 1e-12);
        assertEquals(Verdict.MET, judge(with(7, 0.1805)).verdict());
        assertEquals(
                Verdict.NOT_MET, ClearanceJudgement.of(with(7, 0.1805), faa, 0, SLOPE).verdict());
    }

    @Law
    void mirrorsWithTheSweep(Draw draw) {
        double ddm = draw.between(-0.3, 0.3);
        ClearanceJudgement judgement = judge(with(6, ddm));
        ClearanceJudgement mirrored = judge(with(6, ddm).mirrored());

        assertEquals(judgement.verdict(), mirrored.verdict());
        for (int sector = 0; sector < 2; sector++) {
            assertEquals(
                    minimum(judgement, sector, Tone.HZ_90).clearance(),
                    minimum(mirrored, sector, Tone.HZ_150).clearance());
        }
    }

    @Law
    void keepsItsNumbersWhenMissingReadingsAreAdded(Draw draw) {
        double azimuth = draw.hundredths(-34.98, 34.98);
        Sweep sweep = with(-7, -0.179);
        ClearanceJudgement judgement = judge(sweep);
        ClearanceJudgement gappy = judge(SweepExamples.withMissing(sweep, azimuth + 0.001));

        for (int i = 0; i < judgement.minima().size(); i++) {
            assertEquals(judgement.minima().get(i).lowest(), gappy.minima().get(i).lowest());
            assertEquals(judgement.minima().get(i).verdict(), gappy.minima().get(i).verdict());
        }
        assertEquals(judgement.notMet(), gappy.notMet());
        assertEquals(1, gappy.missing().size());
    }
}
