package halfwidth.value;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Optional;
import org.junit.jupiter.api.Test;

class RangeTest {
    private static final Range RANGE = new Range(Optional.of(0.5), Optional.of(10.0), "in");

    private static Entry inches(String typed) {
        return Entry.read(new Kind.Number(), "in", typed);
    }

    @Test
    void acceptsItsLimits() {
        Entry least = inches("1/2");
        assertSame(least, RANGE.check(least));
        assertSame(Optional.empty(), new Range(Optional.empty(), RANGE.most(), "in").least());
        RANGE.check(inches("10 in"));
    }

    @Test
    void namesTheLimitsWithTheirUnit() {
        assertEquals(
                "11 in must be at least 0.5 in and at most 10 in",
                assertThrows(EntryRefused.class, () -> RANGE.check(inches("11"))).getMessage());
    }

    @Test
    void namesTheOnlyLimit() {
        Range most = new Range(Optional.empty(), Optional.of(10.0), "1");
        Entry count = Entry.read(new Kind.Count(), "1", "11");
        assertEquals(
                "11 must be at most 10",
                assertThrows(EntryRefused.class, () -> most.check(count)).getMessage());
        Range least = new Range(Optional.of(12.0), Optional.empty(), "in");
        // 1 m = 39.37007874… in
        Range far = new Range(Optional.of(40.0), Optional.empty(), "in");
        assertEquals(
                "39.37007874 in (1 m typed) must be at least 40 in",
                assertThrows(EntryRefused.class, () -> far.check(inches("1 m"))).getMessage());
        least.check(inches("12"));
    }

    @Test
    void acceptsAnythingWithoutLimits() {
        Range free = new Range(Optional.empty(), Optional.empty(), "");
        Entry text = Entry.read(new Kind.Text(), "", "anything");
        assertSame(text, free.check(text));
    }

    @Test
    void rejectsLimitsForWords() {
        Entry text = Entry.read(new Kind.Text(), "", "anything");
        assertThrows(IllegalArgumentException.class, () -> RANGE.check(text));
    }

    @Test
    void rejectsLimitsTheWrongWayRound() {
        assertThrows(
                IllegalArgumentException.class,
                () -> new Range(Optional.of(2.0), Optional.of(1.0), "m"));
        assertThrows(
                IllegalArgumentException.class,
                () -> new Range(Optional.of(Double.NaN), Optional.empty(), "m"));
    }
}
