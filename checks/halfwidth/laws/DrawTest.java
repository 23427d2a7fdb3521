package halfwidth.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What is drawn keeps to its range, and comes to its edges. */
class DrawTest {
    /** Seeds in order, so that the counts below are the same in each run. */
    private static <T> Stream<T> drawn(int tries, Function<Draw, T> one) {
        return IntStream.range(0, tries)
                .mapToObj(i -> one.apply(new Draw(Seed.of(i * 0x9e3779b97f4a7c15L >>> 4, i))));
    }

    @Law
    void staysWithinItsRange(Draw draw) {
        double one = draw.finite() / 4;
        double other = draw.finite() / 4;
        double least = Math.min(one, other);
        double most = Math.max(one, other);
        double between = draw.between(least, most);
        assertTrue(least <= between && between <= most);
        int low = draw.whole(Integer.MIN_VALUE, Integer.MAX_VALUE);
        assertTrue(draw.whole(low, Integer.MAX_VALUE) >= low);
        assertTrue(draw.whole(Integer.MIN_VALUE, low) <= low);
    }

    @Test
    void comesToTheEdgesOfARangeWithinAFewTries() {
        Set<Double> values = drawn(400, draw -> draw.between(-7, 9.5)).collect(Collectors.toSet());
        List<Double> edges =
                List.of(-7.0, 9.5, -7 + 1e-9, 9.5 - 1e-9, 0.0, 1e-9, -1e-9, 0.01, -0.01, 1.0, -1.0);
        assertTrue(values.containsAll(edges), values::toString);
        assertTrue(values.size() > 200, "and to others: " + values);
    }

    @Test
    void fillsTheRangeBetween() {
        double[] values = drawn(8000, draw -> draw.between(2, 6)).mapToDouble(d -> d).toArray();
        for (int part = 0; part < 8; part++) {
            double from = 2 + part / 2.0;
            long within =
                    IntStream.range(0, values.length)
                            .filter(i -> from <= values[i] && values[i] < from + 0.5)
                            .count();
            assertTrue(within > 400, within + " from " + from);
        }
    }

    @Test
    void drawsNothingButEdgesInEverySixteenthTry() {
        for (int number = 0; number < 32; number++) {
            Draw draw = new Draw(Seed.of(0x123456789L, number));
            boolean edges =
                    IntStream.range(0, 60)
                            .map(i -> draw.whole(-1000, 1000))
                            .allMatch(i -> Math.abs(i) <= 2 || Math.abs(i) >= 999);
            assertEquals(number % 16 == 0, edges, "try " + number);
        }
    }

    @Test
    void comesToBothEndsOfWholeNumbersAndSizes() {
        assertEquals(
                Set.of(-2, -1, 0, 1, 2, 3),
                drawn(200, draw -> draw.whole(-2, 3)).collect(Collectors.toSet()));
        assertEquals(
                Set.of(1, 2, 3, 4),
                drawn(200, draw -> draw.list(1, 4, draw::flag).size()).collect(Collectors.toSet()));
        assertEquals(
                Set.of(0, 1, 2),
                drawn(200, d -> d.text("ab", 2).length()).collect(Collectors.toSet()));
    }

    @Test
    void hundredthsHaveTwoDecimals() {
        drawn(1000, draw -> draw.hundredths(-34.99, 34.99))
                .forEach(value -> assertEquals(Math.round(value * 100) / 100.0, value));
    }

    @Law
    void someAreDistinctOnesOfTheChoices(Draw draw) {
        List<Integer> some = draw.some(1, 3, List.of(7, 8, 9));
        assertTrue(some.size() >= 1 && Set.of(7, 8, 9).containsAll(some));
        assertEquals(some.size(), new HashSet<>(some).size());
    }

    @Test
    void textHasHalvesOfSurrogatePairsToo() {
        String all = drawn(200, draw -> draw.anyText(20)).collect(Collectors.joining("x"));
        assertTrue(all.codePoints().anyMatch(c -> c >= 0xd800 && c < 0xe000));
        assertTrue(all.codePoints().anyMatch(c -> c >= 0x10000));
        assertTrue(all.codePoints().anyMatch(c -> c < ' '));
    }

    @Test
    void saysWhatWasDrawn() {
        Draw draw = new Draw(new Seed(5));
        List<Integer> list = draw.list(2, 2, () -> draw.whole(3, 3));
        assertEquals(List.of(3, 3), list);
        assertEquals("[3, 3]", draw.toString());
        Draw control = new Draw(new Seed(0));
        assertEquals("nothing drawn", control.toString());
        control.of("a\n\"\u00e9");
        control.list(1, 1, () -> "\r");
        assertEquals("\"a\\u000a\\u0022\\u00e9\", [\"\\u000d\"]", control.toString());
    }

    @Test
    void refusesARangeTheWrongWayRound() {
        assertThrows(IllegalArgumentException.class, () -> new Draw(new Seed(5)).between(1, 0));
    }
}
