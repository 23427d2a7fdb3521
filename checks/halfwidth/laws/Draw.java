package halfwidth.laws;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.LongStream;

/**
 * The values of one try, at random but with the edges of their ranges far more often than chance
 * would have them. The same seed gives the same values to the same law.
 */
public final class Draw {
    private static final int ONE_EDGE_IN = 10;

    /** Its sequence is laid down in its Javadoc, so that a seed means the same on every JDK. */
    private final Random random;

    private final boolean edgesOnly;
    private final List<Object> drawn = new ArrayList<>();

    Draw(Seed seed) {
        random = new Random(seed.bits());
        edgesOnly = seed.drawsEdgesOnly();
    }

    /** Any double from {@code least} to {@code most}, both included; every other one is round. */
    public double between(double least, double most) {
        return noted(new Reals(least, most, 1e-9).next(random, edge()));
    }

    /** As {@link #between}, but always with two decimals. */
    public double hundredths(double least, double most) {
        double value = new Reals(least, most, 0.01).next(random, edge());
        return noted(Math.rint(value * 100) / 100 + 0.0);
    }

    /** Any finite double, of any exponent. */
    public double finite() {
        if (edge()) {
            double one = one(0.0, 1.0, Double.MIN_VALUE, Double.MIN_NORMAL, Double.MAX_VALUE);
            return noted(random.nextBoolean() ? one : -one);
        }
        double value = Double.longBitsToDouble(random.nextLong());
        return noted(Double.isFinite(value) ? value : Double.MAX_VALUE);
    }

    public boolean flag() {
        return noted(random.nextBoolean());
    }

    /** Any whole number from {@code least} to {@code most}, both included. */
    public int whole(int least, int most) {
        return noted((int) integer(least, most));
    }

    public long anyLong() {
        return noted(
                edge()
                        ? one(0L, 1L, -1L, 2L, -2L, Long.MIN_VALUE, Long.MAX_VALUE)
                        : random.nextLong() >> (random.nextBoolean() ? 0 : random.nextInt(64)));
    }

    /** For what makes its values itself: a generator that starts at random. */
    public Random random() {
        return new Random(noted(random.nextLong()));
    }

    @SafeVarargs
    public final <T> T of(T... choices) {
        return noted(choices[random.nextInt(choices.length)]);
    }

    public <T> T of(List<T> choices) {
        return noted(choices.get(random.nextInt(choices.size())));
    }

    /** From {@code least} to {@code most} of the choices, each at most once, in any order. */
    public <T> List<T> some(int least, int most, List<T> choices) {
        List<T> shuffled = new ArrayList<>(choices);
        Collections.shuffle(shuffled, random);
        return noted(List.copyOf(shuffled.subList(0, (int) integer(least, most))));
    }

    /** A list of {@code least} to {@code most} elements, each drawn from this by {@code next}. */
    public <T> List<T> list(int least, int most, Supplier<T> next) {
        int size = (int) integer(least, most);
        int before = drawn.size();
        List<T> list = IntStream.range(0, size).mapToObj(i -> next.get()).toList();
        drawn.subList(before, drawn.size()).clear(); // the list says it all
        return noted(list);
    }

    /** Up to {@code most} of these characters. */
    public String text(String characters, int most) {
        return noted(
                IntStream.range(0, (int) integer(0, most))
                        .map(i -> characters.charAt(random.nextInt(characters.length())))
                        .mapToObj(c -> String.valueOf((char) c))
                        .collect(Collectors.joining()));
    }

    /** Up to {@code most} of any code points, half surrogates and control characters among them. */
    public String anyText(int most) {
        return noted(
                IntStream.range(0, (int) integer(0, most))
                        .map(i -> random.nextInt(one(0x80, 0x100, 0x3000, 0x110000)))
                        .mapToObj(Character::toString)
                        .collect(Collectors.joining()));
    }

    private long integer(long least, long most) {
        if (edge()) {
            long[] edges =
                    LongStream.of(least, most, least + 1, most - 1, 0, 1, -1, 2, -2)
                            .filter(value -> least <= value && value <= most)
                            .toArray();
            return edges[random.nextInt(edges.length)];
        }
        return least + (long) (random.nextDouble() * (most - least + 1));
    }

    @SafeVarargs
    private <T> T one(T... choices) {
        return choices[random.nextInt(choices.length)];
    }

    private boolean edge() {
        return edgesOnly || random.nextInt(ONE_EDGE_IN) == 0;
    }

    private <T> T noted(T value) {
        drawn.add(value);
        return value;
    }

    /** What was drawn, in this order. */
    @Override
    public String toString() {
        return drawn.isEmpty()
                ? "nothing drawn"
                : drawn.stream().map(Draw::shown).collect(Collectors.joining(", "));
    }

    /** Text as it would be typed in Java, since what fails is often a character not seen. */
    private static String shown(Object value) {
        if (value instanceof List<?> list) {
            return list.stream().map(Draw::shown).collect(Collectors.joining(", ", "[", "]"));
        }
        if (!(value instanceof String text)) {
            return String.valueOf(value);
        }
        return text.chars()
                .mapToObj(
                        c ->
                                c >= ' ' && c < 0x7f && c != '"' && c != '\\'
                                        ? String.valueOf((char) c)
                                        : "\\u%04x".formatted(c))
                .collect(Collectors.joining("", "\"", "\""));
    }
}
