package halfwidth.plot;

import java.awt.Graphics2D;
import java.util.ArrayList;
import java.util.List;

/** Names the series in rows below the plot, where it hides no data. */
final class Legend {
    private static final int GAP = 8;
    private static final int BETWEEN = 22;
    private static final int ROW = 24;
    private static final int MARGIN = 12;

    /** Draws what a series looks like, centred on a place. */
    interface Sample {
        void draw(Graphics2D g, double x, double y, double width);
    }

    /** A series and its sample, so many px wide. */
    record Item(String name, int width, Sample sample) {}

    private record Placed(Item item, double x, int row) {}

    private static final Lettering LETTERS = new Lettering(Looks.LABEL);

    private final List<Placed> placed = new ArrayList<>();

    Legend(List<Item> items, int width) {
        double x = MARGIN;
        int row = 0;
        for (Item item : items) {
            double needed = item.width() + GAP + LETTERS.width(item.name());
            if (x > MARGIN && x + needed > width - MARGIN) {
                x = MARGIN;
                row++;
            }
            placed.add(new Placed(item, x, row));
            x += needed + BETWEEN;
        }
    }

    int height() {
        return placed.isEmpty() ? 0 : (placed.get(placed.size() - 1).row() + 1) * ROW + 4;
    }

    void draw(Graphics2D g, double top) {
        for (Placed entry : placed) {
            double y = top + entry.row() * ROW + ROW / 2.0;
            Item item = entry.item();
            item.sample().draw(g, entry.x() + item.width() / 2.0, y, item.width());
            g.setColor(Looks.INK);
            g.setFont(Looks.LABEL);
            float x = (float) (entry.x() + item.width() + GAP);
            g.drawString(item.name(), x, (float) (y + LETTERS.ascent() * 0.36));
        }
    }
}
