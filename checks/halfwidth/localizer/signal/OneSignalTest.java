package halfwidth.localizer.signal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import halfwidth.laws.Draw;
import halfwidth.laws.Law;
import org.hipparchus.complex.Complex;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OneSignalTest {

    /**
     * The depth of one tone by another way: an envelope detector on the whole signal, sampled over
     * one second and correlated with the tone. Carrier 1, CSB depth 0.2, SBO with 90 Hz reversed.
     */
    private static double detectedDepth(OneSignal signal, int tone) {
        int samples = 36_000;
        double correlation = 0;
        double mean = 0;
        Complex rotation = new Complex(0, Math.toRadians(signal.phase())).exp();
        for (int i = 0; i < samples; i++) {
            double t = 2 * Math.PI * i / samples;
            double csb = 1 + 0.2 * Math.cos(90 * t) + 0.2 * Math.cos(150 * t);
            double sbo = signal.sidebandRatio() * (Math.cos(150 * t) - Math.cos(90 * t));
            double envelope = rotation.multiply(sbo).add(csb).norm();
            correlation += 2 * envelope * Math.cos(tone * t) / samples;
            mean += envelope / samples;
        }
        return correlation / mean;
    }

    @ParameterizedTest
    @CsvSource({"0.0775, 0", "0.0775, 30", "0.05, 60", "0.05, 180", "-0.02, 20"})
    void agreesWithAnEnvelopeDetector(double ratio, double phase) {
        OneSignal signal = new OneSignal(ratio, phase);
        double detected = detectedDepth(signal, 150) - detectedDepth(signal, 90);

        // The part in quadrature adds (S/C)² sin²φ to the envelope, which the formula leaves out.
        double neglected = 0.3 * Math.pow(ratio * Math.sin(Math.toRadians(phase)), 2) + 1e-9;
        assertEquals(detected, signal.ddm(), neglected);
    }

    @Test
    void needsMinus22DecibelsAtTheEdgeOfTheCourseSector() {
        // S/C = 0.155/2: 20 log 0.0775 = -22.21 dB of field, by hand.
        double ratio = OneSignal.inPhaseFor(Ddm.COURSE_SECTOR_EDGE).sidebandRatio();

        assertEquals(-22.21, Decibel.ofAmplitudeRatio(ratio), 0.005);
    }

    @ParameterizedTest
    @CsvSource({"2, 0.06", "5, 0.38", "10, 1.52", "20, 6.03", "30, 13.40"})
    void losesDeflectionByTheCosine(double phase, double percent) {
        // 1 − cos φ from a table of cosines to five digits: 0.99939, 0.99619, 0.98481, 0.93969,
        // 0.86603.
        assertEquals(percent, 100 * new OneSignal(0.05, phase).deflectionLoss(), 0.005);
    }

    @Test
    void leavesTheSumOfDepthsAlone() {
        assertEquals(0.40, new OneSignal(0.06, 25).depths(0.2).sdm(), 1e-15);
    }

    @Law
    void comesBackFromQuadratureReadings(Draw draw) {
        double ratio = draw.between(0.01, 1);
        double phase = draw.between(-179, 179);
        OneSignal signal = new OneSignal(ratio, phase);
        OneSignal found = OneSignal.ofQuadratureReadings(signal.ddm(), signal.quadratureDdm());

        assertEquals(ratio, found.sidebandRatio(), 1e-12);
        assertEquals(phase, found.phase(), 1e-9);
    }

    @Law
    void readsInQuadratureWhatNinetyDegreesMoreDelayGives(Draw draw) {
        double phase = draw.between(-180, 180);
        assertEquals(
                new OneSignal(0.07, phase - 90).ddm(),
                new OneSignal(0.07, phase).quadratureDdm(),
                1e-15);
    }

    @Test
    void refusesReadingsThatLeaveThePhaseOpen() {
        assertThrows(IllegalArgumentException.class, () -> OneSignal.ofQuadratureReadings(0, 0));
        assertThrows(IllegalArgumentException.class, () -> new OneSignal(Double.NaN, 0));
        assertThrows(IllegalArgumentException.class, () -> new OneSignal(0.3, 0).depths(0.2));
    }
}
