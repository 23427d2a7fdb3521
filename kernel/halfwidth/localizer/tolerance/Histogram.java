package halfwidth.localizer.tolerance;

import halfwidth.localizer.Range;

/**
 * Counts of equal bins: its size does not depend on how much it counts, nor the counts on the
 * order, so that any number of threads gives the same.
 */
final class Histogram {
    private final Range range;
    private final long[] counts;

    Histogram(Range range, int bins) {
        this.range = range;
        this.counts = new long[bins];
    }

    /** Counts a value; one beyond the range counts in the bin at that end. */
    void add(double value) {
        double bin = (value - range.least()) / range.width() * counts.length;
        counts[(int) Math.max(0, Math.min(counts.length - 1, bin))]++;
    }

    void add(Histogram other) {
        for (int i = 0; i < counts.length; i++) {
            counts[i] += other.counts[i];
        }
    }

    FigureDistribution distribution() {
        return new FigureDistribution(range, counts);
    }
}
