package halfwidth.localizer.monitor;

import org.hipparchus.complex.Complex;

/** A pair as two phasors added up, without any trigonometric identity: the second way. */
final class Phasors {
    private Phasors() {}

    static Complex delayed(Complex signal, double degrees) {
        return signal.multiply(new Complex(0, -Math.toRadians(degrees)).exp());
    }

    /**
     * DDM of the pair by its tones: the 150 Hz tone rides on carrier and SBO in the one sense, the
     * 90 Hz tone in the other, and each depth is the part of its sideband in phase with the
     * carrier.
     */
    static double reading(double k, double a, double delay150, double delay90) {
        return readingWithLead(0, k, a, delay150, delay90);
    }

    /** The same with the SBO ahead of its phase by some degrees. */
    static double readingWithLead(
            double lead, double k, double a, double delay150, double delay90) {
        Complex left = delayed(new Complex(1, 0), delay90);
        Complex right = delayed(new Complex(a, 0), delay150);
        Complex carrier = left.add(right);
        Complex sbo =
                left.multiply(new Complex(0, k / 2)).add(right.multiply(new Complex(0, -k / 2)));
        sbo = delayed(sbo, -lead);
        double depth = 0.2;
        double tone150 = depth + sbo.divide(carrier).getReal();
        double tone90 = depth - sbo.divide(carrier).getReal();
        return tone150 - tone90;
    }
}
