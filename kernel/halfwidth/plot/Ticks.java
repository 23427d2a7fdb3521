package halfwidth.plot;

import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;

/**
 * The marks of missing readings at the edge of the picture, of series by series: the first at the
 * lower edge, the second at the upper one, the next ones a row further in.
 *
 * @param series from 0, as the points that they belong to
 */
record Ticks(int series) {
    private static final int LENGTH = 11;
    private static final int ROW = 14;

    private boolean atTop() {
        return series % 2 == 1;
    }

    /** The tick at one place across, within the grid. */
    Line2D at(double x, Rectangle2D grid) {
        double in = series / 2 * ROW;
        double outer = atTop() ? grid.getMinY() + in : grid.getMaxY() - in;
        double inner = atTop() ? outer + LENGTH : outer - LENGTH;
        return new Line2D.Double(x, outer, x, inner);
    }

    void draw(Graphics2D g, double x, Rectangle2D grid) {
        g.setColor(Looks.colour(series));
        g.setStroke(Looks.stroke(3));
        g.draw(at(x, grid));
    }

    /** Two ticks on their edge. */
    Legend.Sample sample() {
        return (g, x, y, width) -> {
            Rectangle2D box = new Rectangle2D.Double(x - width / 2, y - 6, width, 12);
            double edge = atTop() ? box.getMinY() : box.getMaxY();
            g.setColor(Looks.FRAME);
            g.setStroke(Looks.stroke(1));
            g.draw(new Line2D.Double(box.getMinX(), edge, box.getMaxX(), edge));
            Ticks atEdge = new Ticks(series % 2);
            g.setColor(Looks.colour(series));
            g.setStroke(Looks.stroke(3));
            g.draw(atEdge.at(x - width / 4, box));
            g.draw(atEdge.at(x + width / 4, box));
        };
    }
}
