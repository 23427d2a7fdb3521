package halfwidth.localizer.tolerance;

import halfwidth.localizer.array.Carrier;
import halfwidth.localizer.line.Line;
import java.util.List;

/**
 * exp(j k x sin θ) for every distance |x| of an element and every azimuth of one side.
 *
 * <p>An element at −x and one at x share a row, as do azimuths −θ and θ: cosines are even and sines
 * odd in both. That makes a quarter of the work for a symmetric array, and no error for any other.
 * The element pattern is left out, because it is common to CSB and SBO of both carriers.
 */
final class Steering {
    final double[][] cosines;
    final double[][] sines;

    /** Row of each element. */
    final int[] rows;

    /** 1 for an element at a positive position, −1 for one at a negative position. */
    final double[] signs;

    Steering(List<Double> positions, Carrier carrier) {
        double[] distances = positions.stream().mapToDouble(Math::abs).distinct().toArray();
        cosines = new double[distances.length][Grid.SIDE + 1];
        sines = new double[distances.length][Grid.SIDE + 1];
        double waveNumber = 2 * Math.PI * carrier.frequency() / Line.SPEED_OF_LIGHT;
        for (int row = 0; row < distances.length; row++) {
            for (int i = 0; i <= Grid.SIDE; i++) {
                double sine = Math.sin(Math.toRadians(Grid.azimuth(Grid.SIDE + i)));
                cosines[row][i] = Math.cos(waveNumber * distances[row] * sine);
                sines[row][i] = Math.sin(waveNumber * distances[row] * sine);
            }
        }
        rows = new int[positions.size()];
        signs = new double[positions.size()];
        for (int n = 0; n < rows.length; n++) {
            signs[n] = positions.get(n) < 0 ? -1 : 1;
            while (distances[rows[n]] != Math.abs(positions.get(n))) {
                rows[n]++;
            }
        }
    }
}
