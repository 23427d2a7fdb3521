package halfwidth.plot;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class ThinningTest {
    private static final Grain ONE_DOT_A_UNIT = new Grain(1, 1);

    private static Trace noise(int length, double perUnit) {
        Random random = new Random(7);
        return new Trace(
                "noise",
                IntStream.range(0, length).mapToDouble(i -> i / perUnit).toArray(),
                IntStream.range(0, length).mapToDouble(i -> random.nextGaussian() * 50).toArray());
    }

    @Test
    void keepsThePeaksOfADenseLine() {
        Trace dense = noise(100_000, 200);
        Trace thin = ONE_DOT_A_UNIT.line(dense);
        assertTrue(thin.length() <= 4 * 501, () -> thin.length() + " points for 500 columns");
        assertEquals(range(dense)[0], range(thin)[0]);
        assertEquals(range(dense)[1], range(thin)[1]);
    }

    private static double[] range(Trace trace) {
        var heights = trace.present().mapToDouble(i -> trace.ys()[i]).summaryStatistics();
        return new double[] {heights.getMin(), heights.getMax()};
    }

    @Test
    void keepsOnlyTheBendsOfAStraightLine() {
        Trace bent =
                new Trace(
                        "bent", new double[] {0, 10, 20, 30, 40}, new double[] {0, 10, 20, 10, 0});
        assertArrayEquals(new double[] {0, 20, 40}, ONE_DOT_A_UNIT.line(bent).xs());
    }

    @Test
    void keepsTheGapsOfALine() {
        double gap = Double.NaN;
        Trace broken =
                new Trace(
                        "broken",
                        new double[] {0, 10, gap, gap, 40, 50, 60},
                        new double[] {0, 0, gap, gap, 0, 0, 0});
        assertArrayEquals(new double[] {0, 10, gap, 40, 60}, withOneGap(broken));
    }

    private static double[] withOneGap(Trace broken) {
        double[] xs = ONE_DOT_A_UNIT.line(broken).xs();
        return IntStream.range(0, xs.length)
                .filter(i -> i == 0 || !Double.isNaN(xs[i]) || !Double.isNaN(xs[i - 1]))
                .mapToDouble(i -> xs[i])
                .toArray();
    }

    @Test
    void keepsOnePointForEachCellOfDots() {
        Trace crowd = new Trace("crowd", new double[10_000], new double[10_000]);
        assertEquals(1, ONE_DOT_A_UNIT.points(crowd).length());
    }

    @Test
    void dashesKeepTheirLengthHoweverDenseTheLineIs() {
        Dashes dashes = new Dashes(ONE_DOT_A_UNIT, new double[] {10, 6});
        Trace coarse = dashes.cut(straight(2));
        Trace fine = dashes.cut(straight(1601));
        assertEquals(160 * 10 / 16.0, drawn(coarse), 1e-6);
        // Equal but for the rounding of 1600 sums.
        assertEquals(drawn(coarse), drawn(fine), 1e-6);
    }

    private static Trace straight(int points) {
        double[] xs =
                IntStream.range(0, points).mapToDouble(i -> 160.0 * i / (points - 1)).toArray();
        return new Trace("straight", xs, new double[points]);
    }

    private static double drawn(Trace trace) {
        return IntStream.range(1, trace.length())
                .mapToDouble(i -> trace.xs()[i] - trace.xs()[i - 1])
                .filter(piece -> !Double.isNaN(piece))
                .sum();
    }
}
