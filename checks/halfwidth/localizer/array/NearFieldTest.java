package halfwidth.localizer.array;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.file.Path;
import org.hipparchus.complex.Complex;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class NearFieldTest {
    private static final ArrayModel FOURTEEN =
            ArrayFile.read(Path.of("datasets", "arrays", "fourteen-two-carrier.csv"));

    /**
     * The largest path error of the far-field assumption is D²/(8R) on the axis: at R = 2D²/λ it is
     * λ/16, 22.5 degrees (Balanis, Antenna Theory, ch. 2, from memory).
     */
    @ParameterizedTest
    @ValueSource(doubles = {15, 20, 40})
    void lagsFromTheEndsByASixteenthOfAWaveAtTheTextbookDistance(double aperture) {
        double distance = 2 * aperture * aperture / Uniform.WAVELENGTH;
        double spacing = aperture / Uniform.WAVELENGTH;
        ArrayModel ends = Uniform.array(2, spacing);
        double phase = ends.nearField(0, distance).course().csb().getArgument();
        double nextTerm = Math.pow(aperture, 4) / (128 * Math.pow(distance, 3));
        double expected = -22.5 + 360 * nextTerm / Uniform.WAVELENGTH;
        assertEquals(expected, Math.toDegrees(phase), 1e-4);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 2, -7, 15, 34})
    void tendsToTheFarFieldAsOneOverTheDistance(double azimuth) {
        Prediction far = FOURTEEN.farField(azimuth);
        double last = Double.NaN;
        for (double distance = 4000; distance <= 64_000; distance *= 2) {
            Complex near = FOURTEEN.nearField(azimuth, distance).course().csb();
            double error = near.subtract(far.course().csb()).norm();
            if (!Double.isNaN(last)) {
                // Halved with each doubling, to the next order, (D²/(8Rλ))² of a turn.
                assertEquals(0.5, error / last, 0.02);
            }
            last = error;
        }
        assertEquals(far.ddm(), FOURTEEN.nearField(azimuth, 1e5).ddm(), 1e-4);
    }

    @Test
    void sumsTheWavesOverTheTrueDistances() {
        double azimuth = 6;
        double distance = 150;
        double k = 2 * Math.PI * 110.104e6 / 299_792_458;
        double px = distance * Math.sin(Math.toRadians(azimuth));
        double py = distance * Math.cos(Math.toRadians(azimuth));
        Complex sum = Complex.ZERO;
        for (int n = 0; n < 14; n++) {
            double x = FOURTEEN.positions().get(n);
            double r = Math.sqrt((px - x) * (px - x) + py * py);
            double gain = Math.pow(py / r, 1.5) * distance / r;
            Current current = FOURTEEN.course().sbo().get(n);
            double phase = Math.toRadians(current.phase()) - k * (r - distance);
            sum = sum.add(new Complex(0, phase).exp().multiply(gain * current.amplitude()));
        }
        Complex field = FOURTEEN.nearField(azimuth, distance).course().sbo();
        assertEquals(0, field.subtract(sum).norm(), 1e-9);
    }

    @Test
    void refusesAPlaceAmongTheElements() {
        assertThrows(IllegalArgumentException.class, () -> FOURTEEN.nearField(0, 13));
        assertThrows(IllegalArgumentException.class, () -> FOURTEEN.nearField(0, -100));
    }
}
