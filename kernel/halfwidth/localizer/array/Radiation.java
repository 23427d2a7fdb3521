package halfwidth.localizer.array;

import halfwidth.localizer.line.Line;
import java.util.List;
import org.hipparchus.complex.Complex;

/** The sums over the elements of one carrier, its phasors worked out once for many places. */
final class Radiation {
    private final ElementPattern pattern;
    private final double depth;
    private final double waveNumber;
    private final double[] positions;
    private final Phasors csb;
    private final Phasors sbo;

    /** Real and imaginary parts: an object for each product would be most of the time. */
    private record Phasors(double[] real, double[] imaginary) {
        static Phasors of(List<Current> currents) {
            List<Complex> phasors = currents.stream().map(Current::phasor).toList();
            return new Phasors(
                    phasors.stream().mapToDouble(Complex::getReal).toArray(),
                    phasors.stream().mapToDouble(Complex::getImaginary).toArray());
        }

        Complex sum(Phasors steering) {
            double sumReal = 0;
            double sumImaginary = 0;
            for (int n = 0; n < real.length; n++) {
                sumReal += real[n] * steering.real[n] - imaginary[n] * steering.imaginary[n];
                sumImaginary += real[n] * steering.imaginary[n] + imaginary[n] * steering.real[n];
            }
            return new Complex(sumReal, sumImaginary);
        }
    }

    Radiation(ArrayModel array, Carrier carrier) {
        this.pattern = array.pattern();
        this.depth = carrier.depth();
        this.waveNumber = 2 * Math.PI * carrier.frequency() / Line.SPEED_OF_LIGHT;
        this.positions = array.positions().stream().mapToDouble(x -> x).toArray();
        this.csb = Phasors.of(carrier.csb());
        this.sbo = Phasors.of(carrier.sbo());
    }

    /** Σ w exp(j k x sin θ), times the element pattern. */
    CarrierField far(double azimuth) {
        double gain = pattern.field(azimuth);
        double perMetre = waveNumber * Math.sin(Math.toRadians(azimuth));
        Phasors steering = new Phasors(new double[positions.length], new double[positions.length]);
        for (int n = 0; n < positions.length; n++) {
            steer(steering, n, gain, perMetre * positions[n]);
        }
        return field(steering);
    }

    /** Σ w g(θ_n) (R/r_n) exp(−j k (r_n − R)). */
    CarrierField near(SightLines lines) {
        Phasors steering = new Phasors(new double[positions.length], new double[positions.length]);
        for (int n = 0; n < positions.length; n++) {
            steer(steering, n, lines.gains()[n], waveNumber * lines.leads()[n]);
        }
        return field(steering);
    }

    private static void steer(Phasors steering, int n, double gain, double radians) {
        steering.real[n] = gain * Math.cos(radians);
        steering.imaginary[n] = gain * Math.sin(radians);
    }

    private CarrierField field(Phasors steering) {
        return new CarrierField(csb.sum(steering), sbo.sum(steering), depth);
    }
}
