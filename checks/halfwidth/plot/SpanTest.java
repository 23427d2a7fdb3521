package halfwidth.plot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.laws.Draw;
import halfwidth.laws.Law;
import java.math.BigDecimal;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;

class SpanTest {

    @Law
    void showsEveryValueBetweenRoundEnds(Draw draw) {
        double a = draw.between(-1e6, 1e6);
        double b = draw.between(-1e6, 1e6);
        int steps = draw.whole(3, 12);
        Span span = Span.around(DoubleStream.of(a, b), steps);
        assertTrue(span.low() <= Math.min(a, b) && span.high() >= Math.max(a, b), span::toString);
        assertRound(span);
    }

    /** The step is 1, 2 or 5 times a power of ten; the ends are multiples of its half. */
    private static void assertRound(Span span) {
        BigDecimal step = BigDecimal.valueOf(span.step()).stripTrailingZeros();
        int lead = step.unscaledValue().intValueExact();
        assertTrue(lead == 1 || lead == 2 || lead == 5, span::toString);
        double halves = span.low() / (span.step() / 2);
        // The division of two doubles near 1e7 is good to about 1e-9.
        assertEquals(Math.rint(halves), halves, 1e-6, span::toString);
    }

    @Law
    void wastesLessThanHalfTheRoom(Draw draw) {
        double least = draw.between(-1000, 1000);
        double spread = draw.between(0.01, 1000);
        Span span = Span.around(DoubleStream.of(least, least + spread), 6);
        assertTrue(span.length() < 2 * spread, span::toString);
    }

    @Test
    void endsOnTheFullNumbersThatAPersonWouldChoose() {
        Span span = Span.around(DoubleStream.of(-35, 35), 8);
        assertEquals(new Span(-40, 40, 10), span);
    }

    @Test
    void givesASingleValueSomeRoom() {
        Span span = Span.around(DoubleStream.of(0.155, 0.155), 6);
        assertTrue(span.low() < 0.155 && span.high() > 0.155, span::toString);
        assertEquals(new Span(-1, 1, 0.5), Span.around(DoubleStream.of(0), 4));
    }

    @Test
    void looksPastMissingValues() {
        Span span = Span.around(DoubleStream.of(Double.NaN, 1, 9, Double.NaN), 5);
        assertEquals(new Span(0, 10, 2), span);
        assertEquals(new Span(0, 1, 0.2), Span.around(DoubleStream.of(Double.NaN), 5));
    }

    @Test
    void writesAsManyDecimalsAsTheStepHas() {
        assertEquals("0", new Span(0, 100, 20).pattern());
        assertEquals("0.0", new Span(0, 1, 0.2).pattern());
        assertEquals("0.000", new Span(0, 0.01, 0.005).pattern());
        assertEquals("0.###E0", new Span(0, 2e9, 5e8).pattern());
    }
}
