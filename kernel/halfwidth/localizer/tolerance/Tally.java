package halfwidth.localizer.tolerance;

import halfwidth.localizer.Range;
import halfwidth.localizer.pattern.PredictedCourse;

/** Counts the figures of draws; two tallies add up to what one would have counted. */
final class Tally {
    private static final int BINS = 20_000;
    private static final Range CLEARANCES = new Range(-0.5, 0.5);

    private final double nominalLine;
    private final Histogram courseShift;
    private final Histogram width;
    private final Histogram symmetry90 = new Histogram(new Range(0, 100), BINS);
    private final Histogram inner = new Histogram(CLEARANCES, BINS);
    private final Histogram outer = new Histogram(CLEARANCES, BINS);
    private long draws;
    private long lost;

    Tally(PredictedCourse nominal) {
        double half = nominal.width() / 2;
        this.nominalLine = nominal.courseLine();
        this.courseShift = new Histogram(new Range(-half, half), BINS);
        this.width = new Histogram(new Range(half, 4 * half), BINS);
    }

    void add(double[] ddm) {
        GridFigures figures = new GridFigures(ddm);
        draws++;
        inner.add(figures.innerClearance());
        outer.add(figures.outerClearance());
        double line = figures.coursePlace();
        double edge90 = figures.edgePlace(line, -1);
        double edge150 = figures.edgePlace(line, 1);
        if (Double.isNaN(edge90 + edge150)) {
            lost++;
            return;
        }
        courseShift.add(Grid.azimuth(line) - nominalLine);
        width.add((edge150 - edge90) * Grid.STEP);
        symmetry90.add(100 * (line - edge90) / (edge150 - edge90));
    }

    void add(Tally other) {
        draws += other.draws;
        lost += other.lost;
        courseShift.add(other.courseShift);
        width.add(other.width);
        symmetry90.add(other.symmetry90);
        inner.add(other.inner);
        outer.add(other.outer);
    }

    ToleranceResult result(PredictedCourse nominal) {
        return new ToleranceResult(
                draws,
                lost,
                nominal,
                courseShift.distribution(),
                width.distribution(),
                symmetry90.distribution(),
                inner.distribution(),
                outer.distribution());
    }
}
