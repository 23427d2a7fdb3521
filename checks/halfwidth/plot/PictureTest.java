package halfwidth.plot;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.laws.Draw;
import halfwidth.laws.Law;
import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.time.Duration;
import java.util.Arrays;
import java.util.Locale;
import java.util.Random;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What can be said of a picture without comparing pixels, which differ with the fonts. */
class PictureTest {
    private static final double[] XS = {0, 1, 2, 3};
    private static final double[] YS = {3, 1, 2, 5};

    private static BufferedImage decoded(byte[] png) throws IOException {
        return ImageIO.read(new ByteArrayInputStream(png));
    }

    private static boolean hasInk(BufferedImage image, Color colour) {
        return IntStream.range(0, image.getWidth() * image.getHeight())
                .anyMatch(
                        i ->
                                image.getRGB(i % image.getWidth(), i / image.getWidth())
                                        == colour.getRGB());
    }

    @Test
    void hasTheSizeThatWasAskedFor() throws IOException {
        BufferedImage image = decoded(Plot.of("Size").points("p", XS, YS).png(400, 300, 1.5));
        assertEquals(600, image.getWidth());
        assertEquals(450, image.getHeight());
        assertEquals(Color.WHITE.getRGB(), image.getRGB(0, 0));
    }

    /** Every dot, in all the ways in which bytes may fall, as the JDK's own reader reads it. */
    @Law(tries = 50)
    void pngIsReadBackDotForDot(Draw draw) throws IOException {
        int width = draw.whole(1, 90);
        int height = draw.whole(1, 60);
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Random random = draw.random();
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                image.setRGB(x, y, random.nextInt(1 << 24));
            }
        }
        BufferedImage read = decoded(Png.of(image));
        assertEquals(width, read.getWidth());
        assertEquals(height, read.getHeight());
        assertArrayEquals(
                image.getRGB(0, 0, width, height, null, 0, width),
                read.getRGB(0, 0, width, height, null, 0, width));
    }

    @Test
    void drawsEverySeries() throws IOException {
        Plot plot =
                Plot.of("All kinds")
                        .points("a", XS, YS)
                        .points("b", XS, new double[] {4, 4, 4, 4})
                        .line("c", XS, YS)
                        .line("d", XS, new double[] {1, 2, 3, 4})
                        .band("e", XS, new double[] {0, 0, 0, 0}, new double[] {1, 1, 1, 1})
                        .atMost("limit", 1, 2, 4.5);
        BufferedImage image = decoded(plot.png());
        assertTrue(hasInk(image, Looks.colour(0)));
        assertTrue(hasInk(image, Looks.colour(1)));
        assertTrue(hasInk(image, Looks.band(0)));
        assertTrue(hasInk(image, Looks.LIMIT));
    }

    @Test
    void drawsOnlyWhatIsThere() throws IOException {
        double[] missing = {Double.NaN, Double.NaN, Double.NaN, Double.NaN};
        BufferedImage image = decoded(Plot.of("None").points("a", XS, missing).png());
        assertFalse(hasInk(image, Looks.colour(0)));
    }

    @Test
    void drawsAPlotWithNothingOnIt() throws IOException {
        assertEquals(1440, decoded(Plot.of("").png()).getWidth());
    }

    @ParameterizedTest
    @ValueSource(doubles = {1e-12, 1e-7, 1e-3, 1, 1e7, 1e14})
    void drawsValuesOfEverySizeInTime(double size) {
        double[] ys = Arrays.stream(YS).map(y -> y * size).toArray();
        double[] near = Arrays.stream(YS).map(y -> 1 + y * 1e-14).toArray();
        Plot plot = Plot.of("Size").line("a", ys, ys).points("b", ys, ys);
        assertTimeoutPreemptively(Duration.ofSeconds(20), () -> plot.png());
        assertTimeoutPreemptively(
                Duration.ofSeconds(20), () -> Plot.of("Near").line("n", near, near).png());
    }

    @Test
    void drawsMoreSeriesThanThereIsRoomForInTheSmallestPicture() throws IOException {
        Plot plot = Plot.of("A title so long that it takes several lines of a small picture");
        for (int i = 0; i < 40; i++) {
            plot = plot.points("Series number " + i, XS, YS).line("Line number " + i, XS, YS);
        }
        assertEquals(180, decoded(plot.png(240, 180, 1)).getHeight());
    }

    @Test
    void thinsOutALongRecord() {
        double[] xs = IntStream.range(0, 300_000).mapToDouble(i -> i).toArray();
        double[] ys = Arrays.stream(xs).map(x -> Math.sin(x) * x).toArray();
        // Undecimated, XChart needs minutes for it.
        assertTimeoutPreemptively(
                Duration.ofSeconds(20), () -> Plot.of("Long").line("a", xs, ys).png());
    }

    @Test
    void isTheSameWhateverTheMachinesLanguage() {
        Locale before = Locale.getDefault();
        try {
            Plot plot = Plot.of("Decimals").points("p", new double[] {0.5}, new double[] {1.25});
            byte[] here = plot.png();
            Locale.setDefault(Locale.GERMANY);
            assertTrue(Arrays.equals(here, plot.png()));
            assertTrue(plot.description().contains("1.25 at 0.5"));
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void refusesSizesNobodyCanLookAt() {
        Plot plot = Plot.of("Size").points("p", XS, YS);
        assertThrows(IllegalArgumentException.class, () -> plot.png(100, 300, 2));
        assertThrows(IllegalArgumentException.class, () -> plot.png(400, 300, Double.NaN));
    }
}
