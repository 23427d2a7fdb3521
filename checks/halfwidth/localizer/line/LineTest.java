package halfwidth.localizer.line;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import halfwidth.laws.Draw;
import halfwidth.laws.Law;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LineTest {
    private static final double MIDBAND = 110e6;

    @ParameterizedTest
    @CsvSource({
        "1.00, 132.09, 3.355",
        "0.66, 200.14, 5.083",
        "0.695, 190.06, 4.828",
        "0.80, 165.11, 4.194",
        "0.83, 159.15, 4.042",
        "0.85, 155.40, 3.947",
        "0.88, 150.10, 3.813",
        "0.95, 139.04, 3.532"
    })
    void givesThePhaseConstantsOfCommonLines(double factor, double perMetre, double perInch) {
        // By hand: the wavelength in vacuum at 110 MHz is 2.725386 m, so 360/2.725386 = 132.0914
        // deg/m over the velocity factor. Tolerance: the last digit.
        double constant = new Line(factor, MIDBAND).phaseConstant();

        assertEquals(perMetre, constant, 0.006);
        assertEquals(perInch, constant * CutLength.INCH, 0.0006);
    }

    @Test
    void testsTheRuleOfFourDegreesPerInch() {
        // Common practice, no source: about 4 degrees per inch. Exact at VF 0.8388, and 27 % low in
        // solid polyethylene.
        assertEquals(0.8388, Line.ofPhaseConstant(4 / 0.0254, MIDBAND).velocityFactor(), 5e-5);
        double solid = new Line(0.66, MIDBAND).electricalLength(0.0254);
        assertEquals(27, 100 * (solid / 4 - 1), 0.5);
    }

    @Test
    void givesTheQuarterWavesOfWorkedExamples() {
        // sharpdev.tools, coax stub calculator: 0.66 at 7.15 MHz, printed 22.7 ft by 246 VF / f.
        assertEquals(22.7, new Line(0.66, 7.15e6).quarterWave() / 0.3048, 0.05);
        // vbatpower.com, coax velocity factor: 0.66 at 100 MHz, printed 0.495 m from λ = 3 m.
        assertEquals(0.495, new Line(0.66, 100e6).quarterWave(), 0.0005);
    }

    @ParameterizedTest
    @CsvSource({"0.66, 449.69", "0.83, 565.52", "0.88, 599.58"})
    void givesTheQuarterWaveInTheBand(double factor, double millimetres) {
        // 299 792.458 / (4 · 110) mm = 681.3465 mm, times the velocity factor, by hand.
        assertEquals(millimetres, 1000 * new Line(factor, MIDBAND).quarterWave(), 0.006);
    }

    @Test
    void findsTheVelocityFactorFromAResonance() {
        // A quarter wave of line is resonant at the frequency it is a quarter wave of.
        Line line = new Line(0.83, MIDBAND);

        assertEquals(
                0.83, Line.ofResonance(line.quarterWave(), MIDBAND, 1).velocityFactor(), 1e-12);
        assertEquals(
                0.83, Line.ofResonance(3 * line.quarterWave(), MIDBAND, 3).velocityFactor(), 1e-12);
    }

    @Test
    void warmsByTheCoefficient() {
        // 30 m at VF 0.88 is 4503°; 10 parts in a million a kelvin and 20 K are 0.90°, by hand.
        Line line = new Line(0.88, MIDBAND);

        assertEquals(4503, line.electricalLength(30), 0.5);
        assertEquals(0.90, line.phaseChangeByTemperature(30, 10e-6, 20), 0.005);
    }

    @Law
    void comesBackFromElectricalLength(Draw draw) {
        double factor = draw.between(0.5, 1);
        double length = draw.between(-100, 100);
        Line line = new Line(factor, MIDBAND);

        assertEquals(length, line.lengthOf(line.electricalLength(length)), 1e-12);
        assertEquals(
                factor,
                Line.ofPhaseConstant(line.phaseConstant(), MIDBAND).velocityFactor(),
                1e-12);
    }

    @Test
    void refusesLinesThatCannotBe() {
        assertThrows(IllegalArgumentException.class, () -> new Line(1.01, MIDBAND));
        assertThrows(IllegalArgumentException.class, () -> new Line(0.8, Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> Line.ofPhaseConstant(100, MIDBAND));
        assertThrows(IllegalArgumentException.class, () -> Line.ofResonance(3, MIDBAND, 1));
        assertThrows(
                IllegalArgumentException.class,
                () -> new Line(0.8, MIDBAND).phaseChangeByTemperature(30, 10, 20));
    }
}
