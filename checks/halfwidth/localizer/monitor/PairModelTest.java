package halfwidth.localizer.monitor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import halfwidth.laws.Draw;
import halfwidth.laws.Law;
import org.hipparchus.complex.Complex;
import org.junit.jupiter.api.Test;

class PairModelTest {

    @Law
    void addsUpAsTwoPhasors(Draw draw) {
        double k = draw.between(-2, 2);
        double a = draw.between(0.2, 3);
        double excess = draw.between(-150, 150);
        assumeTrue(k != 0);
        PairModel pair = new PairModel(k, a);
        // Only the difference of the two delays counts.
        assertEquals(Phasors.reading(k, a, excess + 37, 37), pair.readingAt(excess), 1e-10);
        assertEquals(-pair.readingAt(excess), pair.readingAt(-excess), 1e-12);
    }

    @Law
    void readsNothingInPhaseWhateverTheAmplitudes(Draw draw) {
        double a = draw.between(0.01, 50);
        assertEquals(0, new PairModel(0.4, a).readingAt(0));
    }

    @Law
    void readsNothingAtItsNullWithSidebandsOutOfPhase(Draw draw) {
        double a = draw.between(0.7, 1.4);
        double lead = draw.between(-60, 60);
        double excess = new PairModel(0.4, a).excessAtNull(lead);
        assertEquals(0, Phasors.readingWithLead(lead, 0.4, a, excess, 0), 1e-12);
        assertEquals(0, PairModel.ofEqualReturns(0.4).excessAtNull(lead));
    }

    @Test
    void movesItsNullByThePhaseErrorTimesTheInequality() {
        // A 150 Hz side 5 % weaker and sidebands 4 degrees ahead: near −0.05 · 4 = −0.2 degrees.
        assertEquals(-0.2, new PairModel(0.4, 0.95).excessAtNull(4), 0.01);
        assertThrows(
                IllegalArgumentException.class, () -> new PairModel(0.4, 0.2).excessAtNull(60));
    }

    @Test
    void isATangentForEqualReturns() {
        // tan 45° = 1: at a quarter turn the pair reads −K.
        assertEquals(-0.4, PairModel.ofEqualReturns(0.4).readingAt(90), 1e-15);
        assertEquals(90, PairModel.ofEqualReturns(0.4).excessFor(-0.4), 1e-12);
    }

    /**
     * In the far field the same currents give 150 Hz where the path from the 150 Hz side is short.
     */
    @Test
    void carriesTheSidebandsThatMakePositiveAzimuthPositive() {
        double kx = 0.3;
        Complex from150 = new Complex(0, kx).exp();
        Complex from90 = new Complex(0, -kx).exp();
        Complex carrier = from150.add(from90);
        Complex sbo =
                from90.multiply(new Complex(0, 0.2)).add(from150.multiply(new Complex(0, -0.2)));
        double ddm = 2 * sbo.divide(carrier).getReal();
        assertTrue(ddm > 0);
        // The 150 Hz side leads by 2 kx there, which is an excess of −2 kx.
        double excess = -Math.toDegrees(2 * kx);
        assertEquals(ddm, PairModel.ofEqualReturns(0.4).readingAt(excess), 1e-12);
    }

    @Test
    void refusesPairsThatReadNothingOrHaveNoCarrier() {
        assertThrows(IllegalArgumentException.class, () -> new PairModel(0, 1));
        assertThrows(IllegalArgumentException.class, () -> new PairModel(0.4, 0));
        assertThrows(IllegalArgumentException.class, () -> new PairModel(Double.NaN, 1));
        PairModel pair = PairModel.ofEqualReturns(0.4);
        assertThrows(IllegalArgumentException.class, () -> pair.readingAt(180));
        assertThrows(IllegalArgumentException.class, () -> pair.readingAt(Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> new PairModel(0.4, 0.9).excessFor(0.1));
    }
}
