package halfwidth.localizer.tolerance;

import halfwidth.localizer.Range;
import halfwidth.localizer.Require;
import java.util.Arrays;

/** How a figure of the array is distributed over the draws, known to the width of a bin. */
public final class FigureDistribution {
    private final Range range;
    private final long[] counts;
    private final long total;

    FigureDistribution(Range range, long[] counts) {
        this.range = range;
        this.counts = counts.clone();
        this.total = Arrays.stream(counts).sum();
    }

    /**
     * Returns how many draws had this figure.
     *
     * @return the number of draws (1)
     */
    public long draws() {
        return total;
    }

    /**
     * Returns the width of the bins that the values were counted in.
     *
     * @return the resolution (unit of the figure)
     */
    public double resolution() {
        return range.width() / counts.length;
    }

    /**
     * Returns the range that is told apart; what was beyond counts at its ends.
     *
     * @return the range (unit of the figure)
     */
    public Range range() {
        return range;
    }

    /**
     * Returns the value that a given part of the draws do not exceed.
     *
     * @param percent the part (%), 0 to 100
     * @return the value, within one {@link #resolution()} (unit of the figure)
     * @throws IllegalArgumentException if {@code percent} is outside its range or no draw had this
     *     figure
     */
    public double percentile(double percent) {
        Require.within("percentile", percent, new Range(0, 100), "%");
        requireDraws();
        double wanted = percent / 100 * total;
        double below = 0;
        int bin = 0;
        while (counts[bin] == 0 || below + counts[bin] < wanted) {
            below += counts[bin++];
        }
        double part = Math.max(0, (wanted - below) / counts[bin]);
        return range.least() + (bin + part) * resolution();
    }

    /**
     * Returns the mean of all draws.
     *
     * @return the mean (unit of the figure)
     * @throws IllegalArgumentException if no draw had this figure
     */
    public double mean() {
        requireDraws();
        double sum = 0;
        for (int i = 0; i < counts.length; i++) {
            sum += counts[i] * middle(i);
        }
        return sum / total;
    }

    /**
     * Returns the standard deviation of the draws.
     *
     * @return the standard deviation (unit of the figure)
     * @throws IllegalArgumentException if no draw had this figure
     */
    public double standardDeviation() {
        double mean = mean();
        double sum = 0;
        for (int i = 0; i < counts.length; i++) {
            sum += counts[i] * (middle(i) - mean) * (middle(i) - mean);
        }
        return Math.sqrt(sum / total);
    }

    /**
     * Returns the part of the draws that keep a limit.
     *
     * @param limit the range allowed (unit of the figure)
     * @return the part (1), of the draws that had this figure; a bin counts by its middle
     * @throws IllegalArgumentException if no draw had this figure
     */
    public double partWithin(Range limit) {
        requireDraws();
        long within = 0;
        for (int i = 0; i < counts.length; i++) {
            within += limit.contains(middle(i)) ? counts[i] : 0;
        }
        return (double) within / total;
    }

    /**
     * Returns the share of the draws in each of some equal steps, for a bar chart.
     *
     * @param span from where to where (unit of the figure)
     * @param bars how many steps (1), 1 to 1000
     * @return the part of the draws in each (1); a bin counts by its middle
     */
    public double[] shares(Range span, int bars) {
        Require.within("bars", bars, new Range(1, 1000), "");
        requireDraws();
        double[] shares = new double[bars];
        for (int i = 0; i < counts.length; i++) {
            double bar = (middle(i) - span.least()) / span.width() * bars;
            if (bar >= 0 && bar < bars) {
                shares[(int) bar] += (double) counts[i] / total;
            }
        }
        return shares;
    }

    private double middle(int bin) {
        return range.least() + (bin + 0.5) * resolution();
    }

    private void requireDraws() {
        if (total == 0) {
            throw new IllegalArgumentException("figure must be found in at least one draw");
        }
    }
}
