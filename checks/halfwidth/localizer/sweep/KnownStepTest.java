package halfwidth.localizer.sweep;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Random;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.hipparchus.stat.regression.OLSMultipleLinearRegression;
import org.junit.jupiter.api.Test;

/** Twelve half-yearly values with a change on a known day, of a scatter of 0.01. */
class KnownStepTest {
    private static final LocalDate FIRST = LocalDate.of(2020, 3, 1);
    private static final LocalDate CHANGE = LocalDate.of(2022, 1, 10);
    private static final LocalDate BEGIN = LocalDate.of(2023, 5, 10);
    private static final double SCATTER = 0.01;
    private static final int TRIALS = 200;

    private static History halfYearly(ToDoubleFunction<LocalDate> value) {
        return new History(
                IntStream.range(0, 12)
                        .mapToObj(i -> FIRST.plusMonths(6L * i))
                        .map(date -> new Dated(date, value.applyAsDouble(date)))
                        .toList());
    }

    private static double years(LocalDate from, LocalDate to) {
        return Math.max(0, ChronoUnit.DAYS.between(from, to) / 365.2425);
    }

    private static double stepped(LocalDate date) {
        return date.isBefore(CHANGE) ? 0 : 0.06;
    }

    private static double laterDrift(LocalDate date) {
        return 0.08 * years(BEGIN, date);
    }

    /** How many of the trials find a step. */
    private static long clear(ToDoubleFunction<LocalDate> value) {
        Random random = new Random(8);
        return IntStream.range(0, TRIALS)
                .mapToObj(
                        i ->
                                halfYearly(
                                        date ->
                                                value.applyAsDouble(date)
                                                        + SCATTER * random.nextGaussian()))
                .filter(history -> history.stepBesideDrift(CHANGE).clear())
                .count();
    }

    /** One in twenty by chance; somewhat more since the start of a drift is searched for. */
    @Test
    void isSeldomSeenWhereThereIsNone() {
        assertTrue(clear(date -> 4) <= 0.1 * TRIALS, "level: " + clear(date -> 4));
        assertTrue(clear(date -> 0.05 * years(FIRST, date)) <= 0.1 * TRIALS, "drift");
        long later = clear(KnownStepTest::laterDrift);
        assertTrue(later <= 0.1 * TRIALS, "a later drift: " + later);
    }

    @Test
    void isSeenWithAndWithoutADrift() {
        assertTrue(clear(KnownStepTest::stepped) >= 0.9 * TRIALS, "alone");
        long both = clear(date -> stepped(date) + laterDrift(date));
        assertTrue(both >= 0.9 * TRIALS, "beside a later drift: " + both);
    }

    @Test
    void isTheDifferenceOfTheMeansWhereNothingDrifts() {
        History history =
                halfYearly(date -> stepped(date) + (date.getMonthValue() < 6 ? 0.01 : -0.01));
        KnownStep step = history.stepBesideDrift(CHANGE);
        assertEquals(history.stepAt(CHANGE), step.size());
        assertTrue(step.clear());
    }

    /** Hipparchus, least squares over all three at once, with the start that was built in. */
    @Test
    void isThatOfAMultipleRegressionWhereItDriftsToo() {
        History history =
                halfYearly(
                        date ->
                                stepped(date)
                                        + laterDrift(date)
                                        + 1e-4 * (date.getDayOfYear() % 3 - 1));
        double[][] x = new double[12][];
        double[] y = new double[12];
        for (int i = 0; i < 12; i++) {
            Dated value = history.values().get(i);
            x[i] = new double[] {stepped(value.date()) > 0 ? 1 : 0, years(BEGIN, value.date())};
            y[i] = value.value();
        }
        OLSMultipleLinearRegression regression = new OLSMultipleLinearRegression();
        regression.newSampleData(y, x);
        double expected = regression.estimateRegressionParameters()[1];
        double error = regression.estimateRegressionParametersStandardErrors()[1];
        KnownStep step = history.stepBesideDrift(CHANGE);
        assertTrue(step.clear());
        assertEquals(expected, step.size().value(), error);
        // One number less is fitted there, and its start is not the best one.
        assertEquals(error, step.size().standardUncertainty(), 0.2 * error);
    }

    @Test
    void isNotClearInAPerfectLine() {
        assertFalse(halfYearly(date -> 0.05 * years(FIRST, date)).stepBesideDrift(CHANGE).clear());
        assertFalse(halfYearly(date -> 4).stepBesideDrift(CHANGE).clear());
    }

    @Test
    void needsSixValuesAndTwoOnEitherSide() {
        History twelve = halfYearly(date -> 4);
        assertThrows(
                IllegalArgumentException.class,
                () -> new History(twelve.values().subList(0, 5)).stepBesideDrift(CHANGE));
        assertThrows(
                IllegalArgumentException.class, () -> twelve.stepBesideDrift(FIRST.plusDays(1)));
    }
}
