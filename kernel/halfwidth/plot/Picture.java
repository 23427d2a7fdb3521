package halfwidth.plot;

import halfwidth.plot.Legend.Item;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.stream.Stream;

/** Puts a plot's layers into XChart's chart, each kind with its look, and writes the labels. */
final class Picture {
    private final Plot plot;
    private final List<Layer.Points> points;
    private final List<Layer.Line> lines;
    private final List<Layer.Band> bands;
    private final List<Layer.Missing> missing;

    Picture(Plot plot) {
        this.plot = plot;
        this.points = all(Layer.Points.class).toList();
        this.lines = all(Layer.Line.class).toList();
        this.bands = all(Layer.Band.class).toList();
        this.missing = all(Layer.Missing.class).toList();
    }

    private <T extends Layer> Stream<T> all(Class<T> kind) {
        return plot.layers().stream().filter(kind::isInstance).map(kind::cast);
    }

    /** What the legend names; nothing where there is only one series. */
    List<Item> legend() {
        Stream.Builder<Item> items = Stream.builder();
        for (int i = 0; i < points.size(); i++) {
            items.add(new Item(points.get(i).name(), 16, pointSample(i)));
        }
        for (int i = 0; i < missing.size(); i++) {
            items.add(new Item(missing.get(i).name(), 28, new Ticks(i).sample()));
        }
        for (int i = 0; i < lines.size(); i++) {
            items.add(new Item(lines.get(i).name(), 40, lineSample(i)));
        }
        for (int i = 0; i < bands.size(); i++) {
            items.add(new Item(bands.get(i).name(), 32, bandSample(Looks.band(i))));
        }
        List<Item> all = items.build().toList();
        return all.size() > 1 ? all : List.of();
    }

    private static Legend.Sample pointSample(int series) {
        return (g, x, y, width) -> {
            g.setColor(Looks.colour(series));
            Looks.symbol(series).paint(g, x, y, Looks.MARK_SIZE);
        };
    }

    /** As many lines as series of points belong to them; otherwise each has its own colour. */
    private Color lineColour(int line) {
        return Looks.colour(lines.size() == points.size() ? line : points.size() + line);
    }

    private Legend.Sample lineSample(int series) {
        return (g, x, y, width) -> {
            g.setColor(lineColour(series));
            double[] dash = Looks.dash(series);
            float[] lengths = new float[dash.length];
            for (int i = 0; i < dash.length; i++) {
                lengths[i] = (float) dash[i];
            }
            g.setStroke(
                    dash.length == 0
                            ? Looks.stroke(Looks.LINE_WIDTH)
                            : Looks.dashed(Looks.LINE_WIDTH, lengths));
            g.draw(new Line2D.Double(x - width / 2, y, x + width / 2, y));
        };
    }

    private static Legend.Sample bandSample(Color colour) {
        return (g, x, y, width) -> {
            Rectangle2D box = new Rectangle2D.Double(x - width / 2, y - 7, width, 14);
            g.setColor(colour);
            g.fill(box);
        };
    }

    void draw(Graphics2D g, int width, int height) {
        Frame.Spans spans =
                new Frame.Spans(
                        Span.around(
                                plot.layers().stream().flatMapToDouble(Layer::across),
                                Math.max(3, width / 85)),
                        Span.around(
                                plot.layers().stream().flatMapToDouble(Layer::up),
                                Math.max(3, height / 55)));
        Frame frame = new Frame(plot, spans, width, height);
        fill(frame);
        frame.chart().paint(g, width, height);
        new Notes(plot, frame, spans).write(g);
    }

    private void fill(Frame frame) {
        Grain grain = frame.grain();
        for (int i = 0; i < bands.size(); i++) {
            frame.band(bands.get(i), Looks.band(i));
        }
        all(Layer.Level.class).forEach(level -> frame.level(level.at()));
        all(Layer.Mark.class).forEach(mark -> frame.mark(mark.at()));
        all(Layer.Limit.class).forEach(frame::edge);
        for (int i = 0; i < lines.size(); i++) {
            Trace thin = grain.line(lines.get(i).trace());
            Trace dashed = new Dashes(grain, Looks.dash(i)).cut(thin);
            frame.line(dashed, Looks.pieced(Looks.LINE_WIDTH), lineColour(i));
        }
        for (int i = 0; i < points.size(); i++) {
            if (points.get(i).trace().present().findAny().isPresent()) {
                Trace thin = grain.points(points.get(i).trace());
                frame.points(thin, Looks.symbol(i), Looks.colour(i));
            }
        }
    }
}
