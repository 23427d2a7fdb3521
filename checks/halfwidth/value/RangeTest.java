package halfwidth.value;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

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
                "39.37 in (1 m typed) must be at least 40 in",
                assertThrows(EntryRefused.class, () -> far.check(inches("1 m"))).getMessage());
        least.check(inches("12"));
    }

    private static String refused(String unit, double least, double most, String typed) {
        Range range = new Range(Optional.of(least), Optional.of(most), unit);
        Entry entry = Entry.read(new Kind.Number(), unit, typed);
        return assertThrows(EntryRefused.class, () -> range.check(entry)).getMessage();
    }

    /** Localizer channels lie from 108.10 to 111.95 MHz (ICAO Annex 10 Vol I, 3.1.3.2.1). */
    @ParameterizedTest
    @CsvSource({
        "Hz, 108e6, 112e6, 110.30, 110.30 MHz",
        "Hz, 108e6, 112e6, '110,30', '110,30 MHz'",
        "Hz, 108e6, 112e6, 110300, 110300 kHz",
        "1, 0.5, 1, 83, 83 %",
        "in, 0.015625, 1, 3, 3 mm",
        "in, 0.015625, 1, 2 1/2, 2 1/2 mm or 2 1/2 cm",
        "m, 500, 10000, 3.06, 3.06 km or 3.06 NM",
        "µA, 0.1, 20, 0.005, 0.005 mA",
    })
    void namesTheUnitsInWhichAPlainNumberWouldFit(
            String unit, double least, double most, String typed, String advice) {
        String words = refused(unit, least, most, typed);
        assertTrue(words.endsWith("; if another unit is meant, type " + advice), words);
    }

    @ParameterizedTest
    @CsvSource({
        "Hz, 108e6, 112e6, 113e6",
        "Hz, 108e6, 112e6, 110.30 kHz",
        "Hz, 108e6, 112e6, 1e305",
        "°, 0, 20, -1",
        "in, 0.015625, 1, 4' 3\"",
        "in, 0.015625, 1, 1 1/2",
        "dBm, 0, 10, 11",
    })
    void advisesNoUnitWhereOneWasTypedNoneFitsOrItIsNear(
            String unit, double least, double most, String typed) {
        String words = refused(unit, least, most, typed);
        assertFalse(words.contains("another unit"), words);
    }

    @Test
    void advisesNoUnitForACount() {
        Range range = new Range(Optional.of(1.0), Optional.of(10.0), "1");
        Entry count = Entry.read(new Kind.Count(), "1", "200");
        assertEquals(
                "200 must be at least 1 and at most 10",
                assertThrows(EntryRefused.class, () -> range.check(count)).getMessage());
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
