package halfwidth.plot;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LooksTest {
    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3, 4, 5})
    void coloursStandOutOnWhite(int series) {
        double contrast = 1.05 / (luminance(Looks.colour(series)) + 0.05);
        assertTrue(contrast >= 5, () -> "contrast " + contrast);
    }

    /** Relative luminance as defined by the W3C's WCAG 2.2. */
    private static double luminance(Color colour) {
        return 0.2126 * linear(colour.getRed())
                + 0.7152 * linear(colour.getGreen())
                + 0.0722 * linear(colour.getBlue());
    }

    private static double linear(int value) {
        double part = value / 255.0;
        return part <= 0.04045 ? part / 12.92 : Math.pow((part + 0.055) / 1.055, 2.4);
    }
}
