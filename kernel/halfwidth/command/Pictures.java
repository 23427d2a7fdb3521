package halfwidth.command;

import halfwidth.run.OpenPage;
import halfwidth.show.Sheet;

/** Draws the plots of a sheet that is to be written to a file. */
final class Pictures {
    /** The layout of a plot (px) and its dots for each px: sharp on paper and on a dense screen. */
    private static final int WIDTH = 720;

    private static final int HEIGHT = 450;
    private static final double SCALE = 2;

    private Pictures() {}

    static Sheet drawn(Sheet sheet, OpenPage page) {
        return sheet.drawn(step -> page.draw(step, WIDTH, HEIGHT, SCALE));
    }
}
