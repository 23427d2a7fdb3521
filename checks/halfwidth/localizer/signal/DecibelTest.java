package halfwidth.localizer.signal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import halfwidth.laws.Draw;
import halfwidth.laws.Law;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DecibelTest {

    @Test
    void saysHalfThePowerAsThreeDecibels() {
        // 10 log 2 = 3.0103, 20 log 2 = 6.0206: any table of logarithms.
        assertEquals(-3.0103, Decibel.ofPowerRatio(0.5), 5e-5);
        assertEquals(6.0206, Decibel.ofAmplitudeRatio(2), 5e-5);
    }

    @Law
    void countsOneLevelTheSameByPowerAndByAmplitude(Draw draw) {
        double level = draw.between(-100, 100);
        double amplitude = Decibel.toAmplitudeRatio(level);

        assertEquals(level, Decibel.ofAmplitudeRatio(amplitude), 1e-10);
        assertEquals(1, Decibel.toPowerRatio(level) / (amplitude * amplitude), 1e-12);
    }

    @ParameterizedTest
    @CsvSource({"40e-6, -114", "90e-6, -107", "100e-6, -106", "200e-6, -100"})
    void givesThePowerDensitiesOfAnnex10(double field, double printed) {
        // ICAO Annex 10 Vol I, 3.1.3.3.2 prints both, the level to the decibel (second-hand).
        assertEquals(printed, FieldStrength.powerDensityLevel(field), 0.5);
    }

    @Test
    void agreesWithTheInverseSquareLaw() {
        // EIRP over 4πR² is E²/Z₀; 30 stands for Z₀/4π = 29.979, so half of 0.07 % is the
        // tolerance.
        double distance = FieldStrength.distanceOf(1000, 61.4);

        assertEquals(
                FieldStrength.powerDensity(61.4),
                1000 / (4 * Math.PI * distance * distance),
                0.0008 * FieldStrength.powerDensity(61.4));
    }

    @Test
    void refusesNoSignal() {
        assertThrows(IllegalArgumentException.class, () -> Decibel.ofPowerRatio(0));
        assertThrows(IllegalArgumentException.class, () -> Decibel.ofAmplitudeRatio(-1));
        assertThrows(IllegalArgumentException.class, () -> Decibel.toPowerRatio(Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> FieldStrength.powerDensity(0));
    }
}
