package halfwidth.localizer.receiver;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.laws.Draw;
import halfwidth.laws.Law;
import halfwidth.localizer.receiver.ReceiverCheck.Finding;
import halfwidth.localizer.uncertainty.Estimate;
import java.util.Random;
import org.junit.jupiter.api.Test;

class ReceiverCheckTest {
    private static final double[] SETTINGS = {-0.2, -0.155, -0.1, 0, 0, 0.1, 0.155, 0.2};
    private static final double[] UNREPEATED = {-0.2, -0.15, -0.1, -0.05, 0, 0.1, 0.15, 0.2};

    /** What a receiver of known errors shows, on a display of the given step. */
    private static double[] shown(double zero, double gain, double step) {
        double[] readings = new double[SETTINGS.length];
        for (int i = 0; i < readings.length; i++) {
            readings[i] = Math.rint((zero + (1 + gain) * SETTINGS[i]) / step) * step;
        }
        return readings;
    }

    @Law
    void findsTheErrorsThatWerePutIn(Draw draw) {
        double zero = draw.between(-0.01, 0.01);
        double gain = draw.between(-0.1, 0.1);
        ReceiverCheck check = ReceiverCheck.of(SETTINGS, shown(zero, gain, 1e-12), 0.001);

        assertEquals(zero, check.zeroError().value(), 1e-10);
        assertEquals(100 * gain, check.gainErrorPercent().value(), 1e-8);
        assertEquals(0.123, check.correct(zero + (1 + gain) * 0.123).value(), 1e-10);
    }

    @Test
    void poolsTheRepeatability() {
        // Two pairs of differences 0.002 and 0.004: s² = d²/2, pooled √((2 + 8)/2) thousandths.
        ReceiverCheck check =
                ReceiverCheck.of(
                        new double[] {-0.1, -0.1, 0, 0.1, 0.1},
                        new double[] {-0.101, -0.099, 0, 0.098, 0.102},
                        0.001);

        assertEquals(Math.sqrt(5) / 1000, check.repeatability().getAsDouble(), 1e-12);
        assertEquals(Math.sqrt(5) / 1000, check.readingUncertainty(), 1e-12);
    }

    @Test
    void knowsAReadingNoBetterThanTheStepOfTheDisplay() {
        ReceiverCheck check = ReceiverCheck.of(SETTINGS, SETTINGS, 0.001);

        // JCGM 100:2008, F.2.2.1: 0.29 of a step.
        assertEquals(0.00029, check.readingUncertainty(), 5e-6);
    }

    @Test
    void correctsWithinTheUncertaintyItStates() {
        // 500 checks of a receiver with noise: the corrected DDM must lie within two standard
        // uncertainties about 19 times in 20 (a little less by Student's t for 6 degrees).
        Random random = new Random(11);
        int held = 0;
        for (int trial = 0; trial < 500; trial++) {
            double[] readings = new double[SETTINGS.length];
            for (int i = 0; i < readings.length; i++) {
                readings[i] = 0.004 + 1.03 * UNREPEATED[i] + 0.002 * random.nextGaussian();
            }
            ReceiverCheck check = ReceiverCheck.of(UNREPEATED, readings, 0.0001);
            Estimate corrected = check.correct(0.004 + 1.03 * 0.12 + 0.002 * random.nextGaussian());
            held += corrected.expanded(2).contains(0.12) ? 1 : 0;
        }

        assertTrue(held > 500 * 0.85 && held < 500 * 0.99, "held " + held);
    }

    @Test
    void saysWhatTheErrorsCallFor() {
        assertEquals(
                Finding.WITHIN_RESOLUTION,
                ReceiverCheck.of(SETTINGS, shown(0.0001, 0, 1e-6), 0.001).finding());
        assertEquals(
                Finding.CORRECT_READINGS,
                ReceiverCheck.of(SETTINGS, shown(0, 0.05, 1e-6), 0.001).finding());
        double[] scattered = shown(0, 0, 0.001);
        scattered[0] += 0.002;
        scattered[5] -= 0.002;
        assertEquals(
                Finding.CANNOT_BE_TOLD, ReceiverCheck.of(SETTINGS, scattered, 0.001).finding());
    }

    @Test
    void coversOnlyWhatWasChecked() {
        ReceiverCheck check = ReceiverCheck.of(SETTINGS, shown(0, 0.05, 1e-6), 0.001);

        assertTrue(check.covers(0.205));
        assertFalse(check.covers(0.22));
    }

    @Test
    void refusesTooFewReadings() {
        double[] four = {-0.1, 0, 0.1, 0.2};
        double[] twoSettings = {0, 0, 0, 0.1, 0.1};

        assertThrows(IllegalArgumentException.class, () -> ReceiverCheck.of(four, four, 0.001));
        assertThrows(
                IllegalArgumentException.class,
                () -> ReceiverCheck.of(twoSettings, twoSettings, 0.001));
        assertThrows(IllegalArgumentException.class, () -> ReceiverCheck.of(SETTINGS, four, 0.001));
        assertThrows(IllegalArgumentException.class, () -> ReceiverCheck.of(SETTINGS, SETTINGS, 0));
    }

    @Test
    void refusesAReceiverOnTheWrongSide() {
        double[] turned = shown(0, -2, 1e-6);

        assertThrows(
                IllegalArgumentException.class, () -> ReceiverCheck.of(SETTINGS, turned, 0.001));
    }
}
