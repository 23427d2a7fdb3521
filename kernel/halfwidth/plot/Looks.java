package halfwidth.plot;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.util.List;

/**
 * Colours, dashes, shapes and letters. Two series never differ by colour alone: marks differ in
 * shape, lines in dash. Every colour has at least 5:1 contrast on white, so that it holds in
 * sunlight and in grey print.
 */
final class Looks {
    static final Color INK = new Color(0x1B2126);
    static final Color SOFT_INK = new Color(0x4A545C);
    static final Color GRID = new Color(0xDDE2E6);
    static final Color FRAME = new Color(0x7D8890);
    static final Color LIMIT = new Color(0x8E1B1B);

    static final Font TITLE = new Font(Font.SANS_SERIF, Font.BOLD, 18);
    static final Font LETTERS = new Font(Font.SANS_SERIF, Font.PLAIN, 15);
    static final Font LABEL = new Font(Font.SANS_SERIF, Font.PLAIN, 14);

    static final float LINE_WIDTH = 2.2f;
    static final int MARK_SIZE = 10;

    private static final List<Color> COLOURS =
            List.of(
                    new Color(0x12408F),
                    new Color(0xA93B06),
                    new Color(0x00684F),
                    new Color(0x7A1F6B),
                    new Color(0x6B5200),
                    new Color(0x3D4B57));
    private static final List<Color> BANDS =
            List.of(new Color(0xD5DFF0), new Color(0xF2DCC8), new Color(0xCFE5DB));

    /** Lengths drawn and left out in turn (px); the first is unbroken. */
    private static final List<double[]> DASHES =
            List.of(
                    new double[0],
                    new double[] {11, 6},
                    new double[] {3, 5},
                    new double[] {16, 5, 3, 5},
                    new double[] {6, 4});

    private Looks() {}

    static Color colour(int series) {
        return COLOURS.get(series % COLOURS.size());
    }

    static Color band(int band) {
        return BANDS.get(band % BANDS.size());
    }

    static double[] dash(int line) {
        return DASHES.get(line % DASHES.size()).clone();
    }

    /** The mark of a series of points; after all colours are used they meet other shapes. */
    static Symbol symbol(int series) {
        Symbol.Shape[] shapes = Symbol.Shape.values();
        int turn = series / COLOURS.size();
        return new Symbol(shapes[(series + turn) % shapes.length]);
    }

    static BasicStroke stroke(float width) {
        return new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND);
    }

    /** For a line in many pieces, whose ends must meet. */
    static BasicStroke pieced(float width) {
        return new BasicStroke(width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
    }

    static BasicStroke dashed(float width, float... lengths) {
        return new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, lengths, 0);
    }
}
