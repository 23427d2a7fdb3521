package halfwidth.localizer.sweep;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/** Sweeps made for the checks, from a formula. */
final class SweepExamples {
    /** Where marks stand (deg): every half degree to 5, every degree to 12, then to 35. */
    static final double[] AZIMUTHS = azimuths();

    private SweepExamples() {}

    private static double[] azimuths() {
        List<Double> side = new ArrayList<>();
        for (double azimuth = 0.5; azimuth < 5; azimuth += 0.5) {
            side.add(azimuth);
        }
        for (double azimuth = 5; azimuth < 12; azimuth++) {
            side.add(azimuth);
        }
        for (double azimuth = 15; azimuth <= 35; azimuth += 5) {
            side.add(azimuth);
        }
        List<Double> all = new ArrayList<>(List.of(0.0));
        side.forEach(azimuth -> all.addAll(List.of(azimuth, -azimuth)));
        return all.stream().mapToDouble(Double::doubleValue).sorted().toArray();
    }

    static Sweep sweep(DoubleUnaryOperator ddmOfAzimuth) {
        double[] ddms = new double[AZIMUTHS.length];
        for (int i = 0; i < ddms.length; i++) {
            ddms[i] = ddmOfAzimuth.applyAsDouble(AZIMUTHS[i]);
        }
        return Sweep.ofColumns(AZIMUTHS, ddms);
    }

    /** A course of the given half width and centre, straight to 0.22 and level beyond. */
    static double course(double azimuth, double halfWidth, double centre) {
        double ddm = 0.155 * (azimuth - centre) / halfWidth;
        return Math.max(-0.22, Math.min(0.22, ddm));
    }

    /** The same course with a ripple, so that nothing is exactly straight. */
    static double rippled(double azimuth) {
        double side = Math.abs(azimuth) > 3 ? 0.01 * Math.cos(azimuth) : 0;
        return course(azimuth, 2, 0.1)
                + 0.003 * Math.sin(3 * azimuth)
                + side * Math.signum(azimuth);
    }

    static Sweep withMissing(Sweep sweep, double... azimuths) {
        List<SweepReading> readings = new ArrayList<>(sweep.readings());
        for (double azimuth : azimuths) {
            readings.add(SweepReading.missing(azimuth));
        }
        return new Sweep(readings);
    }

    static Sweep without(Sweep sweep, double azimuth) {
        return new Sweep(
                sweep.readings().stream()
                        .map(
                                reading ->
                                        reading.azimuth() == azimuth
                                                ? SweepReading.missing(azimuth)
                                                : reading)
                        .toList());
    }

    static Sweep turned(Sweep sweep, double azimuth) {
        return new Sweep(
                sweep.readings().stream()
                        .map(
                                reading ->
                                        reading.azimuth() == azimuth
                                                ? SweepReading.of(azimuth, -reading.value())
                                                : reading)
                        .toList());
    }
}
