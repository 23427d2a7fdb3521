package halfwidth.localizer.line;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import halfwidth.laws.Draw;
import halfwidth.laws.Law;
import java.util.List;
import org.junit.jupiter.api.Test;

class PhaseSequenceTest {

    @Test
    void joinsAcrossTheTurn() {
        double[] joined = PhaseSequence.join(-170, 175, 160, -200).joined();

        assertArrayEquals(new double[] {-170, -185, -200, -200}, joined, 1e-12);
    }

    @Law
    void findsATrendOfLessThanHalfATurn(Draw draw) {
        double step = draw.between(-179, 179);
        int readings = draw.whole(2, 40);
        double[] shown = new double[readings];
        for (int i = 0; i < readings; i++) {
            shown[i] = Math.IEEEremainder(20 + i * step, 360);
        }

        double[] joined = PhaseSequence.join(shown).joined();

        assertEquals((readings - 1) * step, joined[readings - 1] - joined[0], 1e-9);
    }

    @Test
    void seesTwiceTheLengthThroughOnePort() {
        PhaseSequence sequence = PhaseSequence.join(100, 80);

        assertEquals(20, sequence.electricalChanges(Measurement.THROUGH)[1], 1e-12);
        assertEquals(10, sequence.electricalChanges(Measurement.ONE_PORT)[1], 1e-12);
        assertEquals(360, Measurement.THROUGH.ambiguity());
        assertEquals(180, Measurement.ONE_PORT.ambiguity());
    }

    @Test
    void namesTheStepsThatMayHideATurn() {
        PhaseSequence sequence = PhaseSequence.join(0, -100, -270, -300);

        assertEquals(170, sequence.largestStep(), 1e-12);
        assertEquals(List.of(2), sequence.doubtfulSteps(20));
        assertEquals(List.of(), sequence.doubtfulSteps(5));
    }

    @Test
    void doubtsAStepOfHalfATurnWhateverTheMargin() {
        assertEquals(List.of(1), PhaseSequence.join(0, 180).doubtfulSteps(0));
    }

    @Test
    void refusesNoReadings() {
        assertThrows(IllegalArgumentException.class, PhaseSequence::join);
        assertThrows(IllegalArgumentException.class, () -> PhaseSequence.join(1, Double.NaN));
    }
}
