package halfwidth.localizer.array;

import halfwidth.localizer.Range;
import halfwidth.localizer.Require;
import java.util.Arrays;

/** The amplitudes that give the narrowest beam for a stated level of all sidelobes. */
public final class ChebyshevTaper {
    private static final Range ELEMENTS = new Range(2, 100);
    private static final Range SIDELOBES = new Range(1, 120);

    private ChebyshevTaper() {}

    /**
     * Returns the amplitudes of evenly spaced elements, half a wavelength or more apart.
     *
     * <p>Dolph's pattern is F(ψ) = T<sub>N−1</sub>(x<sub>0</sub> cos(ψ/2)) with the Chebyshev
     * polynomial T and T<sub>N−1</sub>(x<sub>0</sub>) = R, the voltage ratio of main lobe to
     * sidelobes (C. L. Dolph, Proc. IRE 34 (1946) 335, from memory). Its N samples at ψ = 2πm/N
     * give the amplitudes back: a<sub>n</sub> ∝ Σ F(2πm/N) cos(2πm(n − (N − 1)/2)/N).
     *
     * @param elements how many, N (1), 2 to 100
     * @param sidelobes how far every sidelobe is below the main lobe (dB), 1 to 120
     * @return the amplitudes from one end to the other (1), the strongest 1
     * @throws IllegalArgumentException if an argument is outside its range
     */
    public static double[] amplitudes(int elements, double sidelobes) {
        Require.within("elements", elements, ELEMENTS, "");
        Require.within("sidelobes", sidelobes, SIDELOBES, "dB");
        int order = elements - 1;
        double x0 = chebyshev(1.0 / order, Math.pow(10, sidelobes / 20));
        double[] amplitudes = new double[elements];
        for (int m = 0; m < elements; m++) {
            double psi = 2 * Math.PI * m / elements;
            double sample = chebyshev(order, x0 * Math.cos(psi / 2));
            for (int n = 0; n < elements; n++) {
                amplitudes[n] += sample * Math.cos(psi * (n - order / 2.0));
            }
        }
        double most = Arrays.stream(amplitudes).max().orElseThrow();
        return Arrays.stream(amplitudes).map(a -> a / most).toArray();
    }

    /** T of any order for x ≥ 1, of whole order for all x; T of order 1/n inverts T of order n. */
    private static double chebyshev(double order, double x) {
        if (Math.abs(x) <= 1) {
            return Math.cos(order * Math.acos(x));
        }
        double size = Math.abs(x);
        double value = Math.cosh(order * Math.log(size + Math.sqrt(size * size - 1)));
        return x < 0 && order % 2 == 1 ? -value : value;
    }
}
