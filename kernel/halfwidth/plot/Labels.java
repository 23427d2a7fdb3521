package halfwidth.plot;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Writes labels into the plot, each where it hides least of the data and no other label. */
final class Labels {
    private static final Lettering LETTERS = new Lettering(Looks.LABEL);
    private static final Color VEIL = new Color(255, 255, 255, 200);
    private static final int PAD = 3;

    /** Half a mark's size and its stroke. */
    private static final int CLEAR = Looks.MARK_SIZE / 2 + 2;

    /** As bad as covering that many points of data: covering a label, leaving the plot. */
    private static final int COLLISION = 10_000;

    private final Rectangle2D inside;
    private final List<Point2D> data;
    private final List<Rectangle2D> taken = new ArrayList<>();

    /**
     * @param inside the grid's area (px)
     * @param data places that labels should leave free (px)
     */
    Labels(Rectangle2D inside, List<Point2D> data) {
        this.inside = inside;
        this.data = data;
    }

    /** Width and height of the box that a label needs. */
    static Rectangle2D size(String text) {
        return new Rectangle2D.Double(0, 0, LETTERS.width(text) + 2 * PAD, LETTERS.height() + PAD);
    }

    /** Writes a label into the best of some boxes; the first of equals. */
    void write(Graphics2D g, String text, Color colour, List<Rectangle2D> boxes) {
        Rectangle2D box = boxes.stream().min(Comparator.comparingInt(this::cost)).orElseThrow();
        taken.add(box);
        g.setColor(VEIL);
        g.fill(box);
        g.setColor(colour);
        g.setFont(Looks.LABEL);
        float y = (float) (box.getCenterY() + LETTERS.ascent() * 0.36);
        g.drawString(text, (float) box.getX() + PAD, y);
    }

    private int cost(Rectangle2D box) {
        Rectangle2D around =
                new Rectangle2D.Double(
                        box.getX() - CLEAR,
                        box.getY() - CLEAR,
                        box.getWidth() + 2 * CLEAR,
                        box.getHeight() + 2 * CLEAR);
        int covered = (int) data.stream().filter(around::contains).count();
        int collisions = (int) taken.stream().filter(box::intersects).count();
        int outside = inside.contains(box) ? 0 : 1;
        return covered + COLLISION * (collisions + outside);
    }
}
