package halfwidth.plot;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.util.List;

/** Lays out and draws a plot: title, chart, legend, from top to bottom. */
record Drawing(int width, int height, double scale) {
    private static final int MOST = 4000;
    private static final int TOP = 8;

    /** Below this there is no room for ticks; a very long legend is cut off instead. */
    private static final int LEAST_CHART = 140;

    Drawing {
        requireWithin("width", width, 240, MOST);
        requireWithin("height", height, 180, MOST);
        requireWithin("scale", scale, 0.5, 4);
    }

    private static void requireWithin(String name, double value, double least, double most) {
        if (!(value >= least && value <= most)) {
            throw new IllegalArgumentException(
                    "%s %s must be from %s to %s".formatted(name, value, least, most));
        }
    }

    byte[] png(Plot plot) {
        BufferedImage image =
                new BufferedImage(
                        (int) Math.round(width * scale),
                        (int) Math.round(height * scale),
                        BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        try {
            prepare(g);
            draw(g, plot);
        } finally {
            g.dispose();
        }
        return Png.of(image);
    }

    private void prepare(Graphics2D g) {
        g.scale(scale, scale);
        g.setColor(Color.WHITE);
        g.fillRect(0, 0, width, height);
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(
                RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    }

    private void draw(Graphics2D g, Plot plot) {
        double top = title(g, plot.title());
        Picture picture = new Picture(plot);
        Legend legend = new Legend(picture.legend(), width);
        int chartHeight = (int) Math.max(LEAST_CHART, height - top - legend.height());
        g.translate(0, top);
        picture.draw(g, width, chartHeight);
        legend.draw(g, chartHeight);
        g.translate(0, -top);
    }

    private double title(Graphics2D g, String title) {
        Lettering letters = new Lettering(Looks.TITLE);
        List<String> lines = letters.lines(title, width - 24.0);
        g.setFont(Looks.TITLE);
        g.setColor(Looks.INK);
        double y = TOP;
        for (String line : lines) {
            g.drawString(line, 12, (float) (y + letters.ascent()));
            y += letters.height();
        }
        return y;
    }
}
