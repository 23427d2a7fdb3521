package halfwidth.bench;

import halfwidth.localizer.cut.CutRule;
import halfwidth.localizer.cut.NextCut;
import halfwidth.localizer.line.Line;
import halfwidth.localizer.transmit.CutRow;
import halfwidth.localizer.transmit.FeedCutSeries;
import halfwidth.localizer.uncertainty.Estimate;
import java.util.List;

/** The steps of the feed-trim page on its worked example, as an ordinary compiled method. */
final class PlainFeedTrim {
    private static final double INCH = 0.0254;

    private final double[] csbCuts = {0, 1.5, 2.25};
    private final double[] offsets1 = {-14, -8, -4.5};
    private final double[] offsets2 = {-10, -4, -0.5};

    /**
     * Runs the page's math.
     *
     * @param target the offset at which to stop (deg), the input that changes
     * @return the offsets to expect, the cut and what is left, added up so that none is left out
     */
    double run(double target) {
        double sheet = 360 * 110.30e6 / (Line.SPEED_OF_LIGHT * 0.83);
        Estimate dataSheet = new Estimate(sheet, sheet * 0.02 / 0.83);
        List<CutRow> rows = List.of(row(0), row(1), row(2));
        FeedCutSeries before = new FeedCutSeries(rows.subList(0, 1), dataSheet, 0.5);
        FeedCutSeries series = new FeedCutSeries(rows, dataSheet, 0.5);
        double first = 0.8 * Math.abs(before.aim().value()) / (sheet * INCH);
        NextCut next = series.next(new CutRule(INCH / 16, target, 0.8));
        double netCut = rows.get(2).netCut();
        double after = netCut + next.direction() * next.length();
        double end = netCut + next.direction() * next.remaining().value();
        return first
                + next.length()
                + series.halfSpread()
                + series.departureFromDataSheet().orElseThrow()
                + series.offset(1, after).orElseThrow().value()
                + series.offset(2, after).orElseThrow().value()
                + curves(series, Math.min(0, end), Math.max(netCut, end));
    }

    /** What the page's plot draws: both fits and the band of the middle at 41 places. */
    private static double curves(FeedCutSeries series, double from, double to) {
        double sum = 0;
        for (int i = 0; i <= 40; i++) {
            double x = from + (to - from) * i / 40;
            Estimate middle = series.middle(x);
            sum += series.offset(1, x).orElseThrow().value();
            sum += series.offset(2, x).orElseThrow().value();
            sum += middle.value() + 2 * middle.standardUncertainty();
        }
        return sum;
    }

    private CutRow row(int i) {
        return CutRow.after(0, csbCuts[i] * INCH, offsets1[i], offsets2[i]);
    }
}
