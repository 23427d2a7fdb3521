package halfwidth.localizer.array;

import halfwidth.localizer.Require;
import halfwidth.localizer.line.Line;
import java.util.List;
import org.hipparchus.complex.Complex;

/** The sums over the elements, of one carrier at one place. */
final class Radiation {
    private Radiation() {}

    /** Σ w exp(j k x sin θ), times the element pattern. */
    static CarrierField far(ArrayModel array, Carrier carrier, double azimuth) {
        Require.within("azimuth", azimuth, Place.AZIMUTHS, "deg");
        double field = array.pattern().field(azimuth);
        double perMetre = waveNumber(carrier) * Math.sin(Math.toRadians(azimuth));
        Complex[] steering = new Complex[array.positions().size()];
        for (int n = 0; n < steering.length; n++) {
            steering[n] = polar(field, perMetre * array.positions().get(n));
        }
        return field(carrier, steering);
    }

    /** Σ w g(θ_n) (R/r_n) exp(−j k (r_n − R)): R/r so that it tends to the far field. */
    static CarrierField near(ArrayModel array, Carrier carrier, Place place) {
        Require.above("distance", place.distance(), array.aperture() / 2, "m");
        Complex[] steering = new Complex[array.positions().size()];
        for (int n = 0; n < steering.length; n++) {
            double x = array.positions().get(n);
            double across = place.offset() - x;
            double path = Math.hypot(across, place.ahead());
            double own = Math.toDegrees(Math.atan2(across, place.ahead()));
            steering[n] =
                    polar(
                            array.pattern().field(own) * place.distance() / path,
                            waveNumber(carrier) * lead(place, x, path));
        }
        return field(carrier, steering);
    }

    /** R − r, as (2 R x sin θ − x²)/(R + r): the difference itself loses digits far away. */
    private static double lead(Place place, double x, double path) {
        return x * (2 * place.offset() - x) / (place.distance() + path);
    }

    private static double waveNumber(Carrier carrier) {
        return 2 * Math.PI * carrier.frequency() / Line.SPEED_OF_LIGHT;
    }

    private static Complex polar(double amplitude, double radians) {
        return new Complex(amplitude * Math.cos(radians), amplitude * Math.sin(radians));
    }

    private static CarrierField field(Carrier carrier, Complex[] steering) {
        return new CarrierField(
                sum(carrier.csb(), steering), sum(carrier.sbo(), steering), carrier.depth());
    }

    private static Complex sum(List<Current> currents, Complex[] steering) {
        Complex sum = Complex.ZERO;
        for (int n = 0; n < steering.length; n++) {
            sum = sum.add(currents.get(n).phasor().multiply(steering[n]));
        }
        return sum;
    }
}
