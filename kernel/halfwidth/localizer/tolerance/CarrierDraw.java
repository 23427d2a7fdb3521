package halfwidth.localizer.tolerance;

import halfwidth.localizer.array.Carrier;
import halfwidth.localizer.array.Current;
import java.util.List;
import java.util.random.RandomGenerator;

/** One carrier with errors in its currents: its power and its DDM at all azimuths of the grid. */
final class CarrierDraw {
    private final Carrier carrier;
    private final Sums csb;
    private final Sums sbo;
    private final double[] real = new double[Grid.POINTS];
    private final double[] imaginary = new double[Grid.POINTS];
    private final double[] sboReal = new double[Grid.POINTS];
    private final double[] sboImaginary = new double[Grid.POINTS];

    CarrierDraw(Carrier carrier, Steering steering) {
        this.carrier = carrier;
        this.csb = new Sums(steering);
        this.sbo = new Sums(steering);
    }

    void draw(ErrorDraw errors, RandomGenerator random) {
        feed(csb, carrier.csb(), errors, random);
        feed(sbo, carrier.sbo(), errors, random);
        csb.fields(real, imaginary);
        sbo.fields(sboReal, sboImaginary);
    }

    private static void feed(
            Sums sums, List<Current> currents, ErrorDraw errors, RandomGenerator random) {
        sums.clear();
        errors.nextPath(random);
        for (int n = 0; n < currents.size(); n++) {
            Current current = currents.get(n);
            errors.nextCurrent(n, random);
            double amplitude = current.amplitude() * errors.factor();
            double phase = Math.toRadians(current.phase()) + errors.phase();
            sums.add(n, amplitude * Math.cos(phase), amplitude * Math.sin(phase));
        }
    }

    double power(int i) {
        return real[i] * real[i] + imaginary[i] * imaginary[i];
    }

    /** 2 Re(S C*)/|C|². */
    double ddm(int i) {
        return 2 * (sboReal[i] * real[i] + sboImaginary[i] * imaginary[i]) / power(i);
    }
}
