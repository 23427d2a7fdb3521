package halfwidth.bench;

import halfwidth.localizer.array.ArrayFile;
import halfwidth.localizer.array.ArrayModel;
import halfwidth.localizer.array.Carrier;
import halfwidth.localizer.array.Current;
import halfwidth.localizer.array.Detector;
import halfwidth.localizer.tolerance.Spread;
import halfwidth.localizer.tolerance.ToleranceResult;
import halfwidth.localizer.tolerance.ToleranceStudy;
import halfwidth.localizer.tolerance.Tolerances;
import halfwidth.localizer.uncertainty.Draws;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;

/**
 * Times the tolerance study against the loop one would write first: for every draw, azimuth and
 * element a sine and a cosine, on one thread, and the elliptic integrals at every azimuth.
 */
public final class ToleranceBench {
    private static final int DRAWS = 10_000;
    private static final int PLAIN_DRAWS = 300;
    private static final Spread SPREAD = Spread.ofDecibels(0.3, 2);

    private ToleranceBench() {}

    public static void main(String[] arguments) {
        ArrayModel array =
                ArrayFile.read(Path.of("datasets", "arrays", "fourteen-two-carrier.csv"));
        Tolerances tolerances = Tolerances.independent(SPREAD);
        for (int round = 1; round <= 5; round++) {
            double seconds = timeStudy(array, tolerances);
            double plain = timePlain(array);
            System.out.printf(
                    "round %d: %d draws in %.3f s, %.0f draws/s; plain loop %.0f draws/s;"
                            + " ratio %.1f (on %d cores)%n",
                    round,
                    DRAWS,
                    seconds,
                    DRAWS / seconds,
                    1 / plain,
                    plain / (seconds / DRAWS),
                    Runtime.getRuntime().availableProcessors());
        }
    }

    private static double timeStudy(ArrayModel array, Tolerances tolerances) {
        long start = System.nanoTime();
        ToleranceResult result = ToleranceStudy.run(array, tolerances, new Draws(DRAWS, 1));
        double seconds = (System.nanoTime() - start) * 1e-9;
        if (result.draws() != DRAWS) {
            throw new IllegalStateException("draws are missing");
        }
        return seconds;
    }

    /** Seconds for one draw. */
    private static double timePlain(ArrayModel array) {
        Random random = new Random(1);
        double sum = 0;
        long start = System.nanoTime();
        for (int draw = 0; draw < PLAIN_DRAWS; draw++) {
            sum += plainDraw(array, random);
        }
        double seconds = (System.nanoTime() - start) * 1e-9 / PLAIN_DRAWS;
        if (!Double.isFinite(sum)) {
            throw new IllegalStateException("plain loop went wrong");
        }
        return seconds;
    }

    private static double plainDraw(ArrayModel array, Random random) {
        double[][] currents = new double[8][];
        int set = 0;
        for (Carrier carrier : array.carriers()) {
            for (List<Current> feeds : List.of(carrier.csb(), carrier.sbo())) {
                currents[set++] =
                        feeds.stream().mapToDouble(c -> c.amplitude() * factor(random)).toArray();
                currents[set++] =
                        feeds.stream()
                                .mapToDouble(
                                        c ->
                                                Math.toRadians(
                                                        c.phase()
                                                                + SPREAD.phase()
                                                                        * random.nextGaussian()))
                                .toArray();
            }
        }
        double least = 1;
        for (int i = -350; i <= 350; i++) {
            least = Math.min(least, Math.abs(plainDdm(array, currents, i * 0.1)));
        }
        return least;
    }

    private static double factor(Random random) {
        return Math.pow(10, SPREAD.amplitude() * random.nextGaussian() / 20);
    }

    private static double plainDdm(ArrayModel array, double[][] currents, double azimuth) {
        double[] amplitude = new double[2];
        double[] ddm = new double[2];
        for (int c = 0; c < 2; c++) {
            double k = 2 * Math.PI * array.carriers().get(c).frequency() / 299_792_458;
            double sine = k * Math.sin(Math.toRadians(azimuth));
            double[] csb = sum(array, currents[4 * c], currents[4 * c + 1], sine);
            double[] sbo = sum(array, currents[4 * c + 2], currents[4 * c + 3], sine);
            amplitude[c] = Math.hypot(csb[0], csb[1]);
            ddm[c] = 2 * (sbo[0] * csb[0] + sbo[1] * csb[1]) / (amplitude[c] * amplitude[c]);
        }
        double weight = Detector.LINEAR_ENVELOPE.weightOfFirst(amplitude[0], amplitude[1]);
        return weight * ddm[0] + (1 - weight) * ddm[1];
    }

    private static double[] sum(
            ArrayModel array, double[] amplitudes, double[] phases, double sine) {
        double real = 0;
        double imaginary = 0;
        for (int n = 0; n < amplitudes.length; n++) {
            double phase = phases[n] + sine * array.positions().get(n);
            real += amplitudes[n] * Math.cos(phase);
            imaginary += amplitudes[n] * Math.sin(phase);
        }
        return new double[] {real, imaginary};
    }
}
