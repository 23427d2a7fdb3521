package halfwidth.localizer.sweep;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class DriftStartTest {
    private static final LocalDate FIRST = LocalDate.of(2020, 3, 1);
    private static final LocalDate BEGIN = LocalDate.of(2022, 5, 10);

    private static History halfYearly(ToDoubleFunction<LocalDate> value) {
        return new History(
                IntStream.range(0, 12)
                        .mapToObj(i -> FIRST.plusMonths(6L * i))
                        .map(date -> new Dated(date, value.applyAsDouble(date)))
                        .toList());
    }

    private static double years(LocalDate from, LocalDate to) {
        return ChronoUnit.DAYS.between(from, to) / 365.2425;
    }

    private static double bent(LocalDate date) {
        return 4 + 0.08 * Math.max(0, years(BEGIN, date));
    }

    @Test
    void isFoundToTheDayWithoutScatter() {
        DriftStart found = halfYearly(DriftStartTest::bent).driftStart().orElseThrow();
        assertEquals(BEGIN, found.start());
        // Built so: the level and the slope that the values were made with.
        assertEquals(4, found.level(), 1e-12);
        assertEquals(0.08, found.slope(), 1e-12);
        assertEquals(bent(LocalDate.of(2026, 1, 1)), found.at(LocalDate.of(2026, 1, 1)), 1e-12);
    }

    /** 95 of 100 on average; the region is approximate, so below 85 it would be dishonest. */
    @Test
    void liesWithinItsIntervalAsOftenAsStated() {
        Random random = new Random(8);
        int within = 0;
        int found = 0;
        for (int i = 0; i < 200; i++) {
            Optional<DriftStart> drift =
                    halfYearly(date -> bent(date) + 0.01 * random.nextGaussian()).driftStart();
            if (drift.isPresent()) {
                found++;
                boolean before = drift.get().earliest().isAfter(BEGIN);
                boolean after = drift.get().latest().isBefore(BEGIN);
                within += before || after ? 0 : 1;
            }
        }
        assertTrue(found >= 190, "the bend was seen in " + found + " of 200");
        assertTrue(within >= 0.85 * found, within + " of " + found + " intervals hold the day");
    }

    /** The bend is one more number to fit: by chance one line in twenty seems to bend. */
    @Test
    void isSeldomSeenInAStraightDrift() {
        Random random = new Random(8);
        long seen =
                IntStream.range(0, 200)
                        .filter(
                                i ->
                                        halfYearly(
                                                        date ->
                                                                0.05 * years(FIRST, date)
                                                                        + 0.01
                                                                                * random
                                                                                        .nextGaussian())
                                                .driftStart()
                                                .isPresent())
                        .count();
        // The day is searched for, so somewhat more often than 10 in 200; 30 would be too many.
        assertTrue(seen <= 30, seen + " of 200");
    }

    @Test
    void tellsWhenALimitIsReached() {
        DriftStart drift = halfYearly(DriftStartTest::bent).driftStart().orElseThrow();
        LocalDate from = LocalDate.of(2026, 1, 1);
        // 0.08 of distance at 0.08 a year: one year.
        assertEquals(Optional.of(from.plusDays(365)), drift.reaches(bent(from) + 0.08, from));
        assertEquals(Optional.empty(), drift.reaches(3, from));
    }

    @Test
    void needsSixValues() {
        List<Dated> five = halfYearly(DriftStartTest::bent).values().subList(0, 5);
        assertFalse(new History(five).driftStart().isPresent());
    }
}
