package halfwidth.localizer.tolerance;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import halfwidth.localizer.Range;
import java.util.Arrays;
import java.util.Random;
import org.hipparchus.stat.StatUtils;
import org.junit.jupiter.api.Test;

class FigureDistributionTest {

    private static FigureDistribution counted(double... values) {
        Histogram histogram = new Histogram(new Range(-5, 5), 1000);
        Arrays.stream(values).forEach(histogram::add);
        return histogram.distribution();
    }

    @Test
    void agreesWithTheSortedValuesToItsResolution() {
        double[] values = new Random(4).doubles(5000, -2, 3).toArray();
        FigureDistribution figure = counted(values);
        assertEquals(0.01, figure.resolution(), 1e-15);
        for (double percent : new double[] {1, 5, 50, 95, 99, 100}) {
            assertEquals(StatUtils.percentile(values, percent), figure.percentile(percent), 0.011);
        }
        assertEquals(StatUtils.mean(values), figure.mean(), 1e-3);
        assertEquals(Math.sqrt(StatUtils.variance(values)), figure.standardDeviation(), 1e-3);
    }

    @Test
    void countsWhatIsBeyondItsRangeAtTheEnds() {
        FigureDistribution figure = counted(-100, 0, 100);
        assertEquals(-5, figure.percentile(0), 0.011);
        assertEquals(5, figure.percentile(100), 0.011);
        assertEquals(3, figure.draws());
    }

    @Test
    void tellsThePartThatKeepsALimit() {
        FigureDistribution figure = counted(-1.005, 0.005, 1.005, 2.005);
        assertEquals(0.5, figure.partWithin(new Range(0, 2)));
        assertEquals(0.75, figure.partWithin(new Range(0, Double.POSITIVE_INFINITY)));
    }

    @Test
    void sharesItsDrawsAmongBars() {
        double[] shares = counted(-1.005, 0.005, 0.505, 2.005).shares(new Range(0, 1), 2);
        assertArrayEquals(new double[] {0.25, 0.25}, shares);
    }

    @Test
    void refusesPercentilesOfNothing() {
        assertThrows(IllegalArgumentException.class, () -> counted().percentile(50));
        assertThrows(IllegalArgumentException.class, () -> counted().mean());
        assertThrows(IllegalArgumentException.class, () -> counted(1).percentile(101));
    }
}
