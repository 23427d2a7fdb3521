package halfwidth.localizer.array;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import halfwidth.laws.Draw;
import halfwidth.laws.Law;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DetectorTest {

    /**
     * The receiver acted out: two carriers, each with a 90 Hz and a 150 Hz tone, their sum's
     * envelope over one common period of tones and beat, and the two tones picked out of it by
     * correlation, as its filters do. The beat, 8 kHz, is locked to the 30 Hz of the tones: 8010
     * Hz.
     */
    private record ActedOut(double a, double ddmA, double b, double ddmB) {
        private static final int SAMPLES = 400_000;
        private static final double DEPTH = 0.2;

        double ddm() {
            double mean = 0;
            double tone90 = 0;
            double tone150 = 0;
            for (int i = 0; i < SAMPLES; i++) {
                double turn = 2 * Math.PI * i / SAMPLES;
                double s90 = Math.sin(3 * turn);
                double s150 = Math.sin(5 * turn);
                double first = modulated(a, ddmA, s90, s150);
                double second = modulated(b, ddmB, s90, s150);
                double beat = 267 * turn;
                double envelope =
                        Math.hypot(first + second * Math.cos(beat), second * Math.sin(beat));
                mean += envelope;
                tone90 += 2 * envelope * s90;
                tone150 += 2 * envelope * s150;
            }
            return (tone150 - tone90) / mean;
        }

        private static double modulated(double carrier, double ddm, double s90, double s150) {
            return carrier * (1 + (DEPTH - ddm / 2) * s90 + (DEPTH + ddm / 2) * s150);
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {10, 16, -12, 20})
    void capturesAsAnEnvelopeDetectorActedOutInTimeDoes(double decibels) {
        double a = Math.pow(10, decibels / 20);
        double weight = Detector.LINEAR_ENVELOPE.weightOfFirst(a, 1);
        double expected = new ActedOut(a, 0.02, 1, 0.155).ddm();
        // Small-signal theory against full depth: they part beyond the fourth decimal.
        assertEquals(expected, weight * 0.02 + (1 - weight) * 0.155, 5e-5);
    }

    @Test
    void capturesLessExactlyWhereTheCarriersAreWithinTheReachOfTheTones() {
        double a = Math.pow(10, 3 / 20.0);
        double weight = Detector.LINEAR_ENVELOPE.weightOfFirst(a, 1);
        // At 3 dB the modulation itself moves the ratio: 1 % of the reading is still small.
        assertEquals(new ActedOut(a, 0, 1, 0.155).ddm(), (1 - weight) * 0.155, 4e-4);
    }

    // Numerical integration of the mean envelope over the beat, 4 digits as rounded there.
    @ParameterizedTest
    @CsvSource({
        "0, .5", "1, .3787", "2, .2999", "3, .2393", "4, .1913", "5, .1529",
        "6, .1222", "8, .0778", "10, .0494", "12, .0313", "16, .0125", "20, .0050"
    })
    void weighsTheWeakerCarrierAsTabulated(double decibels, double weight) {
        double a = Math.pow(10, decibels / 20);
        assertEquals(weight, Detector.LINEAR_ENVELOPE.weightOfFirst(1, a), 5.1e-5);
        assertEquals(weight, 1 - weight(a, 1), 1e-3);
    }

    /** The weight of the first by differences of the mean envelope, integrated step by step. */
    private static double weight(double a, double b) {
        double step = 1e-4 * a;
        double slope = (meanEnvelope(a + step, b) - meanEnvelope(a - step, b)) / (2 * step);
        return a * slope / meanEnvelope(a, b);
    }

    private static double meanEnvelope(double a, double b) {
        double sum = 0;
        int steps = 20_000;
        for (int i = 0; i < steps; i++) {
            double beat = 2 * Math.PI * (i + 0.5) / steps;
            sum += Math.hypot(a + b * Math.cos(beat), b * Math.sin(beat));
        }
        return sum / steps;
    }

    @ParameterizedTest
    @ValueSource(doubles = {1e-6, 1e-4, 9.99e-4, 1.001e-3, 0.01, 0.03})
    void followsItsSeriesWhereTheSecondCarrierIsWeak(double ratio) {
        // r²/2/(1 + r²/4), from M = 1 + r²/4 + r⁴/64 ...: the first term left out is r⁴/16.
        double square = ratio * ratio;
        double series = square / 2 / (1 + square / 4);
        double left = square * square / 16;
        assertEquals(
                series, 1 - Detector.LINEAR_ENVELOPE.weightOfFirst(1, ratio), 1.01 * left + 2e-16);
    }

    @Test
    void meetsTheMeanEnvelopeIntegratedOverTheBeat() {
        assertEquals(meanEnvelope(1, 0.4), Detector.LINEAR_ENVELOPE.meanOutput(1, 0.4), 1e-12);
    }

    @Test
    void sharesEquallyBetweenEqualCarriers() {
        assertEquals(0.5, Detector.LINEAR_ENVELOPE.weightOfFirst(0.3, 0.3), 1e-15);
        assertEquals(0.5, Detector.SQUARE_LAW.weightOfFirst(0.3, 0.3), 1e-15);
    }

    @ParameterizedTest
    @CsvSource({"10, .0909", "16, .0245"})
    void weighsByPowerUnderSquareLaw(double decibels, double weight) {
        // r²/(1 + r²), by hand.
        double a = Math.pow(10, decibels / 20);
        assertEquals(weight, 1 - Detector.SQUARE_LAW.weightOfFirst(a, 1), 5e-5);
    }

    @Law
    void givesWeightsThatMakeOne(Draw draw) {
        double a = draw.between(0, 10);
        double b = draw.between(0.01, 10);
        for (Detector detector : Detector.values()) {
            double first = detector.weightOfFirst(a, b);
            assertEquals(1, first + detector.weightOfFirst(b, a), 1e-12);
            assertEquals(first, detector.weightOfFirst(3 * a, 3 * b), 1e-12);
        }
    }

    @Test
    void leavesAllToTheOnlyCarrier() {
        assertEquals(1, Detector.LINEAR_ENVELOPE.weightOfFirst(2, 0));
        assertEquals(0, Detector.LINEAR_ENVELOPE.weightOfFirst(0, 2));
    }

    @Test
    void refusesNoCarrierAtAll() {
        for (Detector detector : Detector.values()) {
            assertThrows(IllegalArgumentException.class, () -> detector.weightOfFirst(0, 0));
            assertThrows(IllegalArgumentException.class, () -> detector.meanOutput(Double.NaN, 1));
            assertThrows(IllegalArgumentException.class, () -> detector.weightOfFirst(-1, 2));
        }
    }
}
