package halfwidth.record;

import halfwidth.run.OpenPage;
import halfwidth.show.Sheet;

/** Draws the plots of a sheet that is to be written to a file, always in the same size. */
public final class PaperPlots {
    /** The layout of a plot (px) and its dots for each px: sharp on paper and on a dense screen. */
    public static final int WIDTH = 720;

    public static final int HEIGHT = 450;
    public static final double SCALE = 2;

    private PaperPlots() {}

    /** Draws the plots of a sheet whose page was run last with just its values. */
    public static Sheet drawn(Sheet sheet, OpenPage page) {
        return sheet.drawn(step -> page.draw(step, WIDTH, HEIGHT, SCALE));
    }
}
