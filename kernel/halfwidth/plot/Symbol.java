package halfwidth.plot;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import org.knowm.xchart.style.markers.Marker;

/** The mark of one reading. Every other shape is hollow, so that marks on top of others show. */
final class Symbol extends Marker {
    /** What marks look like, in the order they are given out. */
    enum Shape {
        DISC,
        OPEN_SQUARE,
        TRIANGLE,
        OPEN_DIAMOND,
        CROSS,
        OPEN_DISC,
        SQUARE
    }

    private final Shape shape;

    Symbol(Shape shape) {
        this.shape = shape;
    }

    @Override
    public void paint(Graphics2D g, double x, double y, int size) {
        Color colour = g.getColor();
        double half = size / 2.0;
        java.awt.Shape outline = outline(x, y, half);
        g.setStroke(Looks.stroke(2));
        if (shape == Shape.OPEN_SQUARE || shape == Shape.OPEN_DIAMOND || shape == Shape.OPEN_DISC) {
            g.setColor(new Color(255, 255, 255, 170));
            g.fill(outline);
            g.setColor(colour);
        } else if (shape != Shape.CROSS) {
            g.fill(outline);
        }
        g.draw(outline);
    }

    private java.awt.Shape outline(double x, double y, double half) {
        return switch (shape) {
            case DISC, OPEN_DISC -> new Ellipse2D.Double(x - half, y - half, 2 * half, 2 * half);
            case SQUARE, OPEN_SQUARE ->
                    new Rectangle2D.Double(x - half, y - half, 2 * half, 2 * half);
            case TRIANGLE -> closed(x, y - half, x + half, y + half, x - half, y + half);
            case OPEN_DIAMOND -> {
                double wide = half * 1.3;
                yield closed(x, y - wide, x + wide, y, x, y + wide, x - wide, y);
            }
            case CROSS -> cross(x, y, half);
        };
    }

    private static Path2D closed(double... corners) {
        Path2D path = new Path2D.Double();
        path.moveTo(corners[0], corners[1]);
        for (int i = 2; i < corners.length; i += 2) {
            path.lineTo(corners[i], corners[i + 1]);
        }
        path.closePath();
        return path;
    }

    private static Path2D cross(double x, double y, double half) {
        Path2D path = new Path2D.Double();
        path.moveTo(x - half, y - half);
        path.lineTo(x + half, y + half);
        path.moveTo(x - half, y + half);
        path.lineTo(x + half, y - half);
        return path;
    }
}
