package halfwidth.localizer.sweep;

import static halfwidth.localizer.sweep.SweepExamples.sweep;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class ToneSideDoubtTest {
    private static final double SMALLEST = 0.02;
    private static final Sweep TRUE_SWEEP = sweep(SweepExamples::rippled);

    private static List<Double> azimuths(List<ToneSideDoubt> doubts) {
        return doubts.stream().map(doubt -> doubt.reading().azimuth()).toList();
    }

    @Test
    void doubtsNothingInATrueSweep() {
        assertTrue(ToneSideDoubt.byNeighbours(TRUE_SWEEP, SMALLEST).isEmpty());
        assertTrue(ToneSideDoubt.byPrediction(TRUE_SWEEP, TRUE_SWEEP, SMALLEST).isEmpty());
    }

    @Test
    void pointsOutEverySingleSlipThatIsLargeEnough() {
        for (SweepReading reading : TRUE_SWEEP.readings()) {
            if (Math.abs(reading.value()) >= 0.06) {
                Sweep slipped = SweepExamples.turned(TRUE_SWEEP, reading.azimuth());

                assertEquals(
                        List.of(reading.azimuth()),
                        azimuths(ToneSideDoubt.byNeighbours(slipped, SMALLEST)));
                assertEquals(
                        List.of(reading.azimuth()),
                        azimuths(ToneSideDoubt.byPrediction(slipped, TRUE_SWEEP, SMALLEST)));
            }
        }
    }

    @Test
    void leavesTheReadingAsItStands() {
        Sweep slipped = SweepExamples.turned(TRUE_SWEEP, 7);

        ToneSideDoubt doubt = ToneSideDoubt.byNeighbours(slipped, SMALLEST).get(0);

        assertTrue(doubt.reading().value() < 0);
        assertTrue(doubt.expected() > 0);
    }

    @Test
    void findsTwoSlipsSideBySideByThePrediction() {
        Sweep slipped = SweepExamples.turned(SweepExamples.turned(TRUE_SWEEP, 7), 8);

        assertEquals(
                List.of(7.0, 8.0),
                azimuths(ToneSideDoubt.byPrediction(slipped, TRUE_SWEEP, SMALLEST)));
    }

    @Test
    void isNotChangedByMissingReadings() {
        Sweep slipped = SweepExamples.turned(TRUE_SWEEP, -8);
        Sweep gappy = SweepExamples.withMissing(slipped, -7.7, 3.3);

        assertEquals(
                ToneSideDoubt.byNeighbours(slipped, SMALLEST),
                ToneSideDoubt.byNeighbours(gappy, SMALLEST));
    }

    @Test
    void refusesTooFewReadings() {
        Sweep two = Sweep.ofColumns(new double[] {0, 1}, new double[] {0, 0.1});

        assertThrows(
                IllegalArgumentException.class, () -> ToneSideDoubt.byNeighbours(two, SMALLEST));
        assertThrows(
                IllegalArgumentException.class, () -> ToneSideDoubt.byNeighbours(TRUE_SWEEP, 0));
    }
}
