package halfwidth.plot;

import java.awt.Color;
import java.util.Arrays;
import java.util.Locale;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.XYSeries.XYSeriesRenderStyle;
import org.knowm.xchart.style.AxesChartStyler.TextAlignment;
import org.knowm.xchart.style.XYStyler;
import org.knowm.xchart.style.lines.SeriesLines;
import org.knowm.xchart.style.markers.Marker;
import org.knowm.xchart.style.markers.SeriesMarkers;

/** XChart's chart, with our axes and theme; adds a plot's layers to it as series. */
final class Frame {
    private final XYChart chart;
    private final Span across;
    private final Span up;

    /** Room that labels and titles take beside and below the grid (px), near enough for ticks. */
    private static final int BESIDE = 90;

    private static final int BELOW = 80;

    Frame(Plot plot, Spans spans, int width, int height) {
        across = spans.across();
        up = spans.up();
        chart = new XYChart(width, height);
        chart.setXAxisTitle(plot.across().words());
        chart.setYAxisTitle(plot.up().words());
        XYStyler styler = chart.getStyler();
        ground(styler);
        letters(styler);
        limits(styler);
        styler.setXAxisTickMarkSpacingHint(hint(across, width - BESIDE));
        styler.setYAxisTickMarkSpacingHint(hint(up, height - BELOW));
        addBallast();
    }

    /** Both axes. */
    record Spans(Span across, Span up) {}

    /** The distance between ticks that makes XChart choose our step. */
    private static int hint(Span span, int room) {
        return (int) Math.max(20, Math.round(span.step() / span.length() * room));
    }

    private static void ground(XYStyler styler) {
        styler.setChartBackgroundColor(Color.WHITE);
        styler.setPlotBackgroundColor(Color.WHITE);
        styler.setPlotBorderVisible(true);
        styler.setPlotBorderColor(Looks.FRAME);
        styler.setPlotGridLinesColor(Looks.GRID);
        styler.setPlotGridLinesStroke(Looks.stroke(1));
        styler.setPlotTicksMarksVisible(false);
        // At 1 XChart leaves out the labels at the ends.
        styler.setPlotContentSize(0.999);
        styler.setPlotMargin(0);
        styler.setChartPadding(16);
        styler.setChartTitleVisible(false);
        styler.setLegendVisible(false);
        styler.setMarkerSize(Looks.MARK_SIZE);
        styler.setDefaultSeriesRenderStyle(XYSeriesRenderStyle.Line);
    }

    private static void letters(XYStyler styler) {
        styler.setLocale(Locale.ROOT);
        styler.setAxisTitleFont(Looks.LETTERS);
        styler.setAxisTickLabelsFont(Looks.LETTERS);
        styler.setXAxisTitleColor(Looks.INK);
        styler.setYAxisTitleColor(Looks.INK);
        styler.setAxisTickLabelsColor(Looks.INK);
        styler.setAxisTickMarksColor(Looks.FRAME);
        styler.setAxisTickMarksStroke(Looks.stroke(1));
        styler.setAxisTickMarkLength(4);
        styler.setAxisTickPadding(5);
        styler.setAxisTitlePadding(10);
        styler.setAxisTicksLineVisible(false);
        styler.setYAxisLabelAlignment(TextAlignment.Right);
    }

    private void limits(XYStyler styler) {
        styler.setXAxisMin(across.low());
        styler.setXAxisMax(across.high());
        styler.setYAxisMin(up.low());
        styler.setYAxisMax(up.high());
        styler.setXAxisDecimalPattern(across.pattern());
        styler.setYAxisDecimalPattern(up.pattern());
    }

    /**
     * Keeps XChart from setting ticks on the data, which it does where all values look evenly
     * spaced, to 0.0001 whatever the scale: a series that is never drawn, out of step with all.
     */
    private void addBallast() {
        double x = across.low() - across.length() - 1;
        double y = up.low() - up.length() - 1;
        add(new double[] {x}, new double[] {y}).setEnabled(false);
    }

    private XYSeries add(double[] xs, double[] ys) {
        XYSeries series = chart.addSeries("s" + chart.getSeriesCollection().size(), xs, ys);
        series.setMarker(SeriesMarkers.NONE);
        return series;
    }

    private XYSeries add(Trace trace) {
        double[] xs = trace.xs().clone();
        for (int i = 0; i < xs.length; i++) {
            // XChart looks for the gap in the height only.
            xs[i] = Double.isNaN(xs[i]) ? across.low() : xs[i];
        }
        return add(xs, trace.ys());
    }

    void points(Trace trace, Marker mark, Color colour) {
        XYSeries series = add(trace);
        series.setXYSeriesRenderStyle(XYSeriesRenderStyle.Scatter);
        series.setMarker(mark);
        series.setMarkerColor(colour);
    }

    void line(Trace trace, java.awt.BasicStroke stroke, Color colour) {
        XYSeries series = add(trace);
        series.setLineStyle(stroke);
        series.setLineColor(colour);
    }

    /** How many dots the grid has for one unit each way, near enough to thin out and to dash. */
    Grain grain() {
        return new Grain(
                (chart.getWidth() - BESIDE) / across.length(),
                (chart.getHeight() - BELOW) / up.length());
    }

    /** Draws the edge of a limit. */
    void edge(Layer.Limit limit) {
        XYSeries edge =
                add(new double[] {limit.from(), limit.to()}, new double[] {limit.at(), limit.at()});
        edge.setLineStyle(Looks.stroke(2));
        edge.setLineColor(Looks.LIMIT);
    }

    /** Fills between two curves wherever both are there. */
    void band(Layer.Band band, Color colour) {
        Trace low = band.low();
        int start = 0;
        for (int i = 0; i <= low.length(); i++) {
            if (i == low.length() || low.isMissing(i) || band.high().isMissing(i)) {
                if (i - start > 1) {
                    stretch(band, start, i, colour);
                }
                start = i + 1;
            }
        }
    }

    private void stretch(Layer.Band band, int start, int end, Color colour) {
        Trace low = grain().line(band.low().part(start, end));
        Trace high = grain().line(band.high().part(start, end));
        int n = low.length() + high.length();
        double[] xs = Arrays.copyOf(low.xs(), n);
        double[] ys = Arrays.copyOf(low.ys(), n);
        for (int i = 0; i < high.length(); i++) {
            xs[n - 1 - i] = high.xs()[i];
            ys[n - 1 - i] = high.ys()[i];
        }
        area(xs, ys, colour);
    }

    private void area(double[] xs, double[] ys, Color colour) {
        XYSeries series = add(xs, ys);
        series.setXYSeriesRenderStyle(XYSeriesRenderStyle.PolygonArea);
        series.setLineStyle(SeriesLines.NONE);
        series.setFillColor(colour);
    }

    void level(double y) {
        rule(new double[] {across.low(), across.high()}, new double[] {y, y});
    }

    void mark(double x) {
        rule(new double[] {x, x}, new double[] {up.low(), up.high()});
    }

    private void rule(double[] xs, double[] ys) {
        XYSeries rule = add(xs, ys);
        rule.setLineStyle(Looks.dashed(1.5f, 7, 5));
        rule.setLineColor(Looks.SOFT_INK);
    }

    XYChart chart() {
        return chart;
    }
}
