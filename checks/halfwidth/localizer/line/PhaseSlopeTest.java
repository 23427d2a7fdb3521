package halfwidth.localizer.line;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.laws.Draw;
import halfwidth.laws.Law;
import halfwidth.localizer.uncertainty.Estimate;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class PhaseSlopeTest {
    private static final double MIDBAND = 110e6;

    /** Twenty-one frequencies over 4 MHz about the middle of the band. */
    private static double[] frequencies() {
        double[] frequencies = new double[21];
        for (int i = 0; i < frequencies.length; i++) {
            frequencies[i] = MIDBAND - 2e6 + i * 0.2e6;
        }
        return frequencies;
    }

    /** What an analyser shows of a length: −2π f L √εr / c, turned into ±180°. */
    private static double shown(double length, double frequency, Measurement measurement) {
        double delay = length / (0.83 * 299_792_458.0);
        return Math.IEEEremainder(-360 * measurement.passes() * frequency * delay, 360);
    }

    private static double[] readings(double length, Measurement measurement, double noise) {
        Random random = new Random(5);
        double[] frequencies = frequencies();
        double[] readings = new double[frequencies.length];
        for (int i = 0; i < readings.length; i++) {
            double exact = shown(length, frequencies[i], measurement);
            readings[i] = exact + noise * random.nextGaussian();
        }
        return readings;
    }

    @ParameterizedTest
    @EnumSource
    void findsALengthOfManyTurns(Measurement measurement) {
        PhaseSlope slope = PhaseSlope.fit(frequencies(), readings(40, measurement, 0), measurement);

        assertEquals(40, slope.length(0.83).value(), 1e-6);
        // τ = L / (c VF): 40 m at 0.83 are 160.75 ns.
        assertEquals(160.75e-9, slope.delay().value(), 5e-12);
    }

    @Test
    void statesAnUncertaintyThatHoldsTheLength() {
        PhaseSlope slope =
                PhaseSlope.fit(
                        frequencies(), readings(40, Measurement.THROUGH, 0.5), Measurement.THROUGH);
        Estimate length = slope.length(0.83);

        // By the formula of regression: u(slope) = s/√Σ(f − f̄)², with s near 0.5° and
        // Σ = 0.2² · 21 · (21² − 1)/12 MHz² = 30.8 MHz²; times c VF/360 per degree and hertz.
        double expected = 0.5 / Math.sqrt(30.8e12) * 299_792_458.0 * 0.83 / 360;
        assertEquals(expected, length.standardUncertainty(), 0.4 * expected);
        assertTrue(length.expanded(3).contains(40));
    }

    @ParameterizedTest
    @EnumSource
    void countsTheTurnsOfAReading(Measurement measurement) {
        PhaseSlope slope =
                PhaseSlope.fit(frequencies(), readings(40, measurement, 0.2), measurement);
        Estimate reading = new Estimate(shown(40, MIDBAND, measurement), 0.2);

        TurnCount count = slope.count(MIDBAND, reading, 3);

        assertTrue(count.canBeTold());
        // 360 · 110e6 · 160.75 ns: the length of 40 m itself, to the rounding of the reading.
        double exact = 360 * MIDBAND * 40 / (0.83 * 299_792_458.0);
        assertEquals(exact, count.electricalLength(), 1e-6);
    }

    @Test
    void saysThatTurnsCannotBeToldFromANoisySlope() {
        PhaseSlope slope =
                PhaseSlope.fit(
                        frequencies(), readings(40, Measurement.THROUGH, 10), Measurement.THROUGH);

        TurnCount count = slope.count(MIDBAND, new Estimate(0, 0.2), 3);

        assertFalse(count.canBeTold());
        assertTrue(count.possibleTurns().size() > 1);
    }

    @Test
    void saysThatTurnsCannotBeToldWhereReadingAndSlopeDisagree() {
        double[] exact = readings(40, Measurement.THROUGH, 0.01);
        PhaseSlope slope = PhaseSlope.fit(frequencies(), exact, Measurement.THROUGH);
        double other = shown(40, MIDBAND, Measurement.THROUGH) + 90;

        TurnCount count = slope.count(MIDBAND, new Estimate(other, 0.2), 3);

        assertFalse(count.canBeTold());
        assertTrue(count.possibleTurns().isEmpty());
    }

    @Law
    void findsAnyLengthWhosePhaseFallsLessThanHalfATurnAStep(Draw draw) {
        double length = draw.between(1, 300);
        PhaseSlope slope =
                PhaseSlope.fit(
                        frequencies(),
                        readings(length, Measurement.THROUGH, 0),
                        Measurement.THROUGH);

        assertEquals(length, slope.length(0.83).value(), 1e-5);
    }

    @Test
    void refusesAPhaseThatRises() {
        double[] rising = {10, 20, 30};
        double[] frequencies = {108e6, 109e6, 110e6};

        assertThrows(
                IllegalArgumentException.class,
                () -> PhaseSlope.fit(frequencies, rising, Measurement.THROUGH));
    }
}
