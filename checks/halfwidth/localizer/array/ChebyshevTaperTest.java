package halfwidth.localizer.array;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ChebyshevTaperTest {

    /**
     * Ten elements, voltage ratio 20: the equations of textbooks for N = 10 in powers of z0 =
     * cosh(acosh(20)/9), solved again here. (The amplitudes printed in Balanis, Example 6.9, are
     * rounded by hand and up to 0.85 % above these: from memory.)
     */
    @Test
    void solvesTheTenElementEquations() {
        double z = Math.cosh(Math.log(20 + Math.sqrt(399)) / 9);
        double a5 = Math.pow(z, 9);
        double a4 = (-576 * Math.pow(z, 7) + 576 * a5) / 64;
        double a3 = (432 * Math.pow(z, 5) - 432 * a5 + 112 * a4) / 16;
        double a2 = (-120 * Math.pow(z, 3) + 120 * a5 - 56 * a4 + 20 * a3) / 4;
        double a1 = 9 * z - 9 * a5 + 7 * a4 - 5 * a3 + 3 * a2;
        double[] half = {a5 / a1, a4 / a1, a3 / a1, a2 / a1, 1};
        double[] taper = ChebyshevTaper.amplitudes(10, 20 * Math.log10(20));
        assertArrayEquals(half, Arrays.copyOf(taper, 5), 1e-10);
        // The same set as printed to five decimals, edge = 1.
        double[] printed = {1, 1.35705, 1.97091, 2.48299, 2.77454};
        double[] fromEdge = Arrays.stream(taper).map(a -> a / taper[0]).limit(5).toArray();
        assertArrayEquals(printed, fromEdge, 6e-6);
    }

    @ParameterizedTest
    @CsvSource({"8, 20", "14, 30", "15, 40", "40, 25", "100, 30"})
    void keepsEverySidelobeAtTheLevelAsked(int elements, double decibels) {
        double[] taper = ChebyshevTaper.amplitudes(elements, decibels);
        double sum = Arrays.stream(taper).sum();
        double edge = Math.pow(10, -decibels / 20);
        double x0 = Math.cosh(Math.log(1 / edge + Math.sqrt(1 / edge / edge - 1)) / (elements - 1));
        double mainLobe = 2 * Math.acos(1 / x0);
        double most = 0;
        for (int i = 0; i <= 20_000; i++) {
            double psi = mainLobe + (Math.PI - mainLobe) * i / 20_000;
            most = Math.max(most, Math.abs(field(taper, psi)) / sum);
        }
        // They all touch it; the scan may miss a top by a 1e-4 of it.
        assertEquals(edge, most, edge * 2e-4);
    }

    private static double field(double[] taper, double psi) {
        double middle = (taper.length - 1) / 2.0;
        return IntStream.range(0, taper.length)
                .mapToDouble(n -> taper[n] * Math.cos((n - middle) * psi))
                .sum();
    }

    @Test
    void refusesASingleElementAndAbsurdSidelobes() {
        assertThrows(IllegalArgumentException.class, () -> ChebyshevTaper.amplitudes(1, 20));
        assertThrows(IllegalArgumentException.class, () -> ChebyshevTaper.amplitudes(10, 0));
    }
}
