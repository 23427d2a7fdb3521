package halfwidth.plot;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.DoubleStream;
import tech.tablesaw.api.NumericColumn;

/**
 * A plot as a step of a page builds it; every method returns a new one.
 *
 * <pre>{@code
 * Plot.of("Offset against total cut").across("Total cut", "in").up("SBO offset", "°")
 *     .points("Transmitter 1", cuts, offsets).line("Fit", xs, ys).level("Aim", 0);
 * }</pre>
 *
 * <p>A missing value, NaN in an array or blank in a column, leaves a gap and is counted in the
 * description. Infinity is refused by the series' name.
 */
public final class Plot {
    private final String title;
    private final Axis across;
    private final Axis up;
    private final List<Layer> layers;

    private Plot(String title, Axis across, Axis up, List<Layer> layers) {
        this.title = title;
        this.across = across;
        this.up = up;
        this.layers = layers;
    }

    /** Starts a plot with nothing on it. */
    public static Plot of(String title) {
        return new Plot(title, Axis.UNNAMED, Axis.UNNAMED, List.of());
    }

    /** Names the horizontal axis; a unit of "" or "1" is not written. */
    public Plot across(String label, String unit) {
        return new Plot(title, new Axis(label, unit), up, layers);
    }

    /** Names the vertical axis; a unit of "" or "1" is not written. */
    public Plot up(String label, String unit) {
        return new Plot(title, across, new Axis(label, unit), layers);
    }

    /**
     * Adds separate marks, as for readings.
     *
     * @throws IllegalArgumentException if {@code xs} is empty, {@code ys} is of another length or a
     *     value is infinite
     */
    public Plot points(String name, double[] xs, double[] ys) {
        return with(new Layer.Points(new Trace(name, xs, ys)));
    }

    /** Adds separate marks from two columns of a table. */
    public Plot points(String name, NumericColumn<?> xs, NumericColumn<?> ys) {
        return points(name, xs.asDoubleArray(), ys.asDoubleArray());
    }

    /**
     * Adds the places of missing readings, as ticks at the edge of the picture, where no reading
     * can be: those of the first series named at the lower edge, of the second at the upper one,
     * and so on further in. Without any place it adds nothing.
     *
     * @param at places across; NaN is ignored
     * @throws IllegalArgumentException if a place is infinite
     */
    public Plot missing(String name, double[] at) {
        List<Double> known =
                Arrays.stream(at)
                        .filter(place -> !Double.isNaN(place))
                        .map(place -> finite(name, place))
                        .boxed()
                        .toList();
        return known.isEmpty() ? this : with(new Layer.Missing(name, known));
    }

    /**
     * Adds a line through its points in the order given, as for a computed curve.
     *
     * @throws IllegalArgumentException if {@code xs} is empty, {@code ys} is of another length or a
     *     value is infinite
     */
    public Plot line(String name, double[] xs, double[] ys) {
        return with(new Layer.Line(new Trace(name, xs, ys)));
    }

    /** Adds a line from two columns of a table. */
    public Plot line(String name, NumericColumn<?> xs, NumericColumn<?> ys) {
        return line(name, xs.asDoubleArray(), ys.asDoubleArray());
    }

    /**
     * Adds the area between two curves, as for an uncertainty.
     *
     * @throws IllegalArgumentException if {@code xs} is empty, another array is of another length
     *     or a value is infinite
     */
    public Plot band(String name, double[] xs, double[] low, double[] high) {
        return with(new Layer.Band(new Trace(name, xs, low), new Trace(name, xs, high)));
    }

    /** Adds a labelled line from side to side, as for an aim. */
    public Plot level(String label, double y) {
        return with(new Layer.Level(label, finite(label, y)));
    }

    /** Adds a labelled line from bottom to top, as for the edge of a sector. */
    public Plot mark(String label, double x) {
        return with(new Layer.Mark(label, finite(label, x)));
    }

    /** Adds a lower limit that holds between two places across; what is below it is shaded. */
    public Plot atLeast(String label, double from, double to, double y) {
        return limit(label, from, to, new Bound(y, true));
    }

    /** Adds an upper limit that holds between two places across; what is above it is shaded. */
    public Plot atMost(String label, double from, double to, double y) {
        return limit(label, from, to, new Bound(y, false));
    }

    private record Bound(double at, boolean below) {}

    private Plot limit(String label, double from, double to, Bound bound) {
        if (!(finite(label, from) < finite(label, to))) {
            throw new IllegalArgumentException(
                    "%s must start before it ends, not run from %s to %s"
                            .formatted(label, from, to));
        }
        double at = finite(label, bound.at());
        return with(new Layer.Limit(label, from, to, at, bound.below()));
    }

    private static double finite(String label, double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(label + " must be a finite number, not " + value);
        }
        return value;
    }

    private Plot with(Layer layer) {
        List<Layer> more = new ArrayList<>(layers);
        more.add(layer);
        return new Plot(title, across, up, List.copyOf(more));
    }

    public String title() {
        return title;
    }

    /** Says in words what the picture shows, well enough to stand in for it. */
    public String description() {
        return new Wording(across, up).of(title, layers);
    }

    /**
     * Tells it from any plot that looks otherwise: a digest of all that is on it, in hexadecimal.
     */
    public String digest() {
        MessageDigest sha = sha256();
        for (String words : List.of(title, across.words(), up.words())) {
            sha.update((words + '\n').getBytes(StandardCharsets.UTF_8));
        }
        for (Layer layer : layers) {
            boolean below = layer instanceof Layer.Limit limit && limit.below();
            String kind = layer.getClass().getSimpleName() + below + layer.name() + '\n';
            sha.update(kind.getBytes(StandardCharsets.UTF_8));
            DoubleStream.concat(layer.across(), layer.up())
                    .forEach(value -> sha.update(bytes(Double.doubleToLongBits(value))));
        }
        return HexFormat.of().formatHex(sha.digest(), 0, 16);
    }

    private static byte[] bytes(long bits) {
        return ByteBuffer.allocate(Long.BYTES).putLong(bits).array();
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    /** Draws it at the size of a sheet's column, sharp enough for print: 720 × 450 at twice. */
    public byte[] png() {
        return png(720, 450, 2);
    }

    /**
     * Draws it as a PNG picture of {@code scale * width} by {@code scale * height} dots.
     *
     * @param width width of the layout (px), 240 to 4000
     * @param height height of the layout (px), 180 to 4000
     * @param scale dots for each px of the layout (1), 0.5 to 4
     * @throws IllegalArgumentException if a size is outside these limits
     */
    public byte[] png(int width, int height, double scale) {
        return new Drawing(width, height, scale).png(this);
    }

    Axis across() {
        return across;
    }

    Axis up() {
        return up;
    }

    List<Layer> layers() {
        return layers;
    }

    /** Whether there is anything but lines and limits to see. */
    boolean hasReadings() {
        return layers.stream().anyMatch(Plot::hasValues);
    }

    private static boolean hasValues(Layer layer) {
        boolean carriesData =
                layer instanceof Layer.Points
                        || layer instanceof Layer.Line
                        || layer instanceof Layer.Band;
        return carriesData && layer.up().anyMatch(value -> !Double.isNaN(value));
    }

    @Override
    public String toString() {
        return description();
    }
}
