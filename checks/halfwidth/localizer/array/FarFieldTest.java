package halfwidth.localizer.array;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.laws.Draw;
import halfwidth.laws.Law;
import java.util.List;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BrentSolver;
import org.hipparchus.complex.Complex;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FarFieldTest {

    private static double level(ArrayModel array, double azimuth) {
        return array.farField(azimuth).course().amplitude();
    }

    private static double solve(UnivariateFunction f, double from, double to) {
        return new BrentSolver(1e-10).solve(200, f, from, to);
    }

    /** |sin(Nψ/2)/sin(ψ/2)|, ψ = k d sin θ: any antenna textbook, e.g. Balanis, ch. 6. */
    @Law
    void followsTheClosedFormOfAUniformArray(Draw draw) {
        int elements = draw.whole(1, 24);
        double spacing = draw.between(0.3, 0.9);
        double azimuth = draw.between(0.5, 85);
        double half = Math.PI * spacing * Math.sin(Math.toRadians(azimuth));
        double expected = Math.abs(Math.sin(elements * half) / Math.sin(half));
        // Rounding of N unit phasors; near a grating lobe the closed form itself loses digits.
        assertEquals(expected, level(Uniform.array(elements, spacing), azimuth), 1e-9);
    }

    /**
     * Beam width between half-power points, first null and first side lobe of uniform broadside
     * arrays, computed from the closed form with a computer algebra system; given to three
     * decimals.
     */
    @ParameterizedTest
    @CsvSource({
        "10, 0.5, 10.209, 11.537, -12.966",
        "8, 0.75, 8.525, 9.594, -12.797",
        "14, 0.75, 4.846, 5.465, -13.112"
    })
    void hasTheBeamAndSidelobesOfAUniformArray(
            int elements, double spacing, double beam, double firstNull, double sidelobe) {
        ArrayModel array = Uniform.array(elements, spacing);
        double half = solve(t -> level(array, t) - elements * Math.sqrt(0.5), 0.1, firstNull);
        assertEquals(beam, 2 * half, 5e-4);
        assertEquals(0, level(array, firstNull), elements * 3e-4);
        double peak = 0;
        for (double t = firstNull; t < 2 * firstNull; t += 0.001) {
            peak = Math.max(peak, level(array, t));
        }
        assertEquals(sidelobe, 20 * Math.log10(peak / elements), 5.1e-4);
    }

    /**
     * At sin θ = m λ/(N d) the array factor is the m-th term of the discrete Fourier transform of
     * the currents, here summed in the plain way.
     */
    @Test
    void isTheDiscreteFourierTransformOfItsCurrents() {
        int n = 16;
        double[] amplitudes = new double[n];
        double[] phases = new double[n];
        for (int i = 0; i < n; i++) {
            amplitudes[i] = 1 + 0.3 * Math.sin(1.7 * i);
            phases[i] = 40 * Math.cos(2.3 * i);
        }
        List<Current> currents = Current.list(amplitudes, phases);
        ArrayModel array = Uniform.array(n, 0.5, currents);
        for (int m = -7; m <= 7; m++) {
            Complex sum = Complex.ZERO;
            for (int i = 0; i < n; i++) {
                double turn = Math.toRadians(phases[i]) + 2 * Math.PI * m * i / n;
                sum = sum.add(new Complex(0, turn).exp().multiply(amplitudes[i]));
            }
            // The transform counts phase from the first element, the array from its centre.
            sum = sum.multiply(new Complex(0, -Math.PI * m * (n - 1) / n).exp());
            double azimuth = Math.toDegrees(Math.asin(m / (n * 0.5)));
            Complex field = array.farField(azimuth).course().csb();
            assertEquals(sum.getReal(), field.getReal(), 1e-11);
            assertEquals(sum.getImaginary(), field.getImaginary(), 1e-11);
        }
    }

    private static ArrayModel pair(double x, double carrier, double sideband) {
        return new ArrayModel(
                "pair",
                List.of(-x, x),
                ElementPattern.ISOTROPIC,
                List.of(
                        new Carrier(
                                Uniform.FREQUENCY,
                                0.2,
                                List.of(new Current(carrier, 0), new Current(carrier, 0)),
                                List.of(new Current(sideband, 90), new Current(sideband, -90)))));
    }

    /** CSB pair 2a cos(k x sin θ), SBO pair 2b sin(k x sin θ): DDM = 2 (b/a) tan(k x sin θ). */
    @Law
    void makesTheDdmOfAnAntisymmetricPair(Draw draw) {
        double azimuth = draw.between(-40, 40);
        double x = draw.between(0.1, 1);
        double sideband = draw.between(0, 0.3);
        double angle = 2 * Math.PI * x / Uniform.WAVELENGTH * Math.sin(Math.toRadians(azimuth));
        CarrierField field = pair(x, 0.7, sideband).farField(azimuth).course();
        assertEquals(1.4 * Math.cos(angle), field.csb().getReal(), 1e-12);
        assertEquals(0, field.csb().getImaginary(), 1e-12);
        assertEquals(2 * sideband * Math.sin(angle), field.sbo().getReal(), 1e-12);
        assertEquals(2 * sideband / 0.7 * Math.tan(angle), field.ddm(), 1e-11);
        assertEquals(0, field.quadrature(), 1e-11);
    }

    @Test
    void losesDeflectionByTheCosineOfASidebandPhaseError() {
        ArrayModel sound = pair(1, 1, 0.1);
        ArrayModel late = sound.withCourse(sound.course().withSboAdvanced(-30));
        double in = sound.farField(3).ddm();
        assertEquals(in * Math.cos(Math.toRadians(30)), late.farField(3).ddm(), 1e-12);
        assertEquals(-30, late.farField(3).course().sboPhase(), 1e-9);
        assertEquals(
                in * Math.sin(Math.toRadians(-30)), late.farField(3).course().quadrature(), 1e-12);
        assertEquals(0.4, late.farField(3).sdm(), 1e-15);
    }

    @Test
    void receivesOnlyTheCourseWhereTheClearanceCarrierVanishes() {
        ArrayModel one = pair(0.5 * Uniform.WAVELENGTH, 1, 0.05);
        Carrier dark =
                new Carrier(
                        110.01e6,
                        0.2,
                        List.of(Current.NONE, Current.NONE),
                        List.of(new Current(1, 0), new Current(1, 0)));
        Prediction both = one.withClearance(dark).farField(2);
        assertEquals(one.farField(2).ddm(), both.ddm(), 1e-15);
        assertEquals(1, both.courseWeight());
    }

    @Test
    void multipliesByTheElementPattern() {
        ArrayModel plain = pair(1, 1, 0.1);
        ArrayModel shaped =
                new ArrayModel(
                        "", plain.positions(), new ElementPattern.CosinePower(2), plain.carriers());
        assertEquals(plain.farField(60).amplitude() * 0.25, shaped.farField(60).amplitude(), 1e-12);
        assertEquals(plain.farField(60).ddm(), shaped.farField(60).ddm(), 1e-12);
    }

    @Test
    void refusesWhatNoReceiverCouldRead() {
        ArrayModel array = pair(1, 1, 0.1);
        assertThrows(IllegalArgumentException.class, () -> array.farField(90.1));
        assertThrows(IllegalArgumentException.class, () -> array.farField(Double.NaN));
        ArrayModel silent = pair(1, 0, 0.1);
        assertThrows(IllegalArgumentException.class, () -> silent.farField(5));
    }

    @Test
    void tellsWhereATonesDepthTurnsOver() {
        assertTrue(pair(1, 1, 0.5).farField(20).course().overmodulated());
        assertTrue(!pair(1, 1, 0.05).farField(5).course().overmodulated());
    }
}
