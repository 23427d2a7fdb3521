package halfwidth.plot;

import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.knowm.xchart.XYChart;

/** What is written into the grid: the names of lines and limits, or that nothing is there. */
final class Notes {
    private static final int AWAY = 3;
    private static final int HATCH = 8;

    private final Plot plot;
    private final XYChart chart;
    private final Rectangle2D inside;
    private final List<Layer.Missing> missing;

    Notes(Plot plot, Frame frame, Frame.Spans spans) {
        this.plot = plot;
        this.chart = frame.chart();
        double left = x(spans.across().low());
        double top = y(spans.up().high());
        double right = x(spans.across().high());
        double bottom = y(spans.up().low());
        this.inside = new Rectangle2D.Double(left, top, right - left, bottom - top);
        this.missing =
                plot.layers().stream()
                        .filter(Layer.Missing.class::isInstance)
                        .map(Layer.Missing.class::cast)
                        .toList();
    }

    private double x(double value) {
        return chart.getScreenXFromChart(value);
    }

    private double y(double value) {
        return chart.getScreenYFromChart(value);
    }

    void write(Graphics2D g) {
        if (!plot.hasReadings()) {
            sayNothingIsThere(g);
        }
        for (int i = 0; i < missing.size(); i++) {
            Ticks ticks = new Ticks(i);
            missing.get(i).across().forEach(at -> ticks.draw(g, x(at), inside));
        }
        Labels labels = new Labels(inside, data());
        for (Layer layer : plot.layers()) {
            if (layer instanceof Layer.Limit limit) {
                hatch(g, limit);
                labels.write(g, limit.name(), Looks.LIMIT, beyond(limit));
            }
        }
        for (Layer layer : plot.layers()) {
            if (layer instanceof Layer.Level level) {
                labels.write(g, level.name(), Looks.SOFT_INK, along(level));
            } else if (layer instanceof Layer.Mark mark) {
                labels.write(g, mark.name(), Looks.SOFT_INK, beside(mark));
            }
        }
    }

    private void sayNothingIsThere(Graphics2D g) {
        Lettering letters = new Lettering(Looks.TITLE);
        String words = "no readings";
        g.setFont(Looks.TITLE);
        g.setColor(Looks.SOFT_INK);
        g.drawString(
                words,
                (float) (inside.getCenterX() - letters.width(words) / 2),
                (float) (inside.getY() + inside.getHeight() / 3));
    }

    /** Slanted strokes on the forbidden side, as ground is drawn in a section. */
    private void hatch(Graphics2D g, Layer.Limit limit) {
        double y = y(limit.at());
        double depth = limit.below() ? HATCH : -HATCH;
        double end = x(limit.to());
        g.setColor(Looks.LIMIT);
        g.setStroke(Looks.stroke(1.2f));
        for (double x = x(limit.from()) + HATCH; x <= end; x += HATCH) {
            g.draw(new Line2D.Double(x, y, x - HATCH, y + depth));
        }
    }

    /** Boxes on a limit's forbidden side, where data should not be; then on the other. */
    private List<Rectangle2D> beyond(Layer.Limit limit) {
        List<Rectangle2D> boxes = new ArrayList<>();
        double middle = (x(limit.from()) + x(limit.to())) / 2;
        for (boolean under : new boolean[] {limit.below(), !limit.below()}) {
            double clear = under ? HATCH : -HATCH;
            Rectangle2D box = box(limit.name(), 0, y(limit.at()) + clear, under);
            double centred = middle - box.getWidth() / 2;
            for (double x : new double[] {centred, x(limit.from()) + AWAY}) {
                boxes.add(kept(box, x));
            }
            boxes.add(kept(box, x(limit.to()) - AWAY - box.getWidth()));
        }
        return boxes;
    }

    private List<Rectangle2D> along(Layer.Level level) {
        List<Rectangle2D> boxes = new ArrayList<>();
        for (double part : new double[] {1, 0, 0.5, 0.25, 0.75}) {
            for (boolean under : new boolean[] {false, true}) {
                Rectangle2D box = box(level.name(), 0, y(level.at()), under);
                double room = inside.getWidth() - box.getWidth() - 2 * AWAY;
                boxes.add(kept(box, inside.getX() + AWAY + part * room));
            }
        }
        return boxes;
    }

    private List<Rectangle2D> beside(Layer.Mark mark) {
        List<Rectangle2D> boxes = new ArrayList<>();
        Rectangle2D size = Labels.size(mark.name());
        for (double part : new double[] {0, 1, 0.5, 0.25, 0.75}) {
            double room = inside.getHeight() - size.getHeight() - 2 * AWAY;
            double top = inside.getY() + AWAY + part * room;
            double right = x(mark.at()) + AWAY;
            double left = x(mark.at()) - AWAY - size.getWidth();
            for (double at : new double[] {right, left}) {
                boxes.add(new Rectangle2D.Double(at, top, size.getWidth(), size.getHeight()));
            }
        }
        return boxes;
    }

    private static Rectangle2D box(String text, double x, double line, boolean under) {
        Rectangle2D size = Labels.size(text);
        double top = under ? line + AWAY : line - AWAY - size.getHeight();
        return new Rectangle2D.Double(x, top, size.getWidth(), size.getHeight());
    }

    /** The same box at another place across, pushed into the grid where it fits. */
    private Rectangle2D kept(Rectangle2D box, double x) {
        double furthest = inside.getMaxX() - AWAY - box.getWidth();
        double at = Math.max(inside.getX() + AWAY, Math.min(x, furthest));
        return new Rectangle2D.Double(at, box.getY(), box.getWidth(), box.getHeight());
    }

    private List<Point2D> data() {
        List<Point2D> places = new ArrayList<>();
        for (Layer layer : plot.layers()) {
            if (layer instanceof Layer.Points points) {
                points.trace().present().forEach(i -> places.add(place(points.trace(), i)));
            } else if (layer instanceof Layer.Line line) {
                addLine(places, line.trace());
            }
        }
        for (int i = 0; i < missing.size(); i++) {
            Ticks ticks = new Ticks(i);
            missing.get(i).across().forEach(at -> places.add(ticks.at(x(at), inside).getP2()));
        }
        return places;
    }

    private Point2D place(Trace trace, int i) {
        return new Point2D.Double(x(trace.xs()[i]), y(trace.ys()[i]));
    }

    private void addLine(List<Point2D> places, Trace trace) {
        for (int i = 1; i < trace.length(); i++) {
            if (!trace.isMissing(i) && !trace.isMissing(i - 1)) {
                Point2D from = place(trace, i - 1);
                Point2D to = place(trace, i);
                int pieces = (int) Math.ceil(from.distance(to) / 4);
                for (int piece = 0; piece < pieces; piece++) {
                    double part = (double) piece / pieces;
                    places.add(
                            new Point2D.Double(
                                    from.getX() + part * (to.getX() - from.getX()),
                                    from.getY() + part * (to.getY() - from.getY())));
                }
            }
        }
    }
}
