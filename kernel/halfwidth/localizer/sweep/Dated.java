package halfwidth.localizer.sweep;

import halfwidth.localizer.Require;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;

/**
 * One value of a history.
 *
 * @param date when it was found
 * @param value the value (unit of the history), the same throughout
 */
public record Dated(LocalDate date, double value) {
    /** Days of a mean Gregorian year. */
    static final double DAYS_OF_A_YEAR = 365.2425;

    /**
     * @throws IllegalArgumentException if {@code value} is not finite
     */
    public Dated {
        Require.finite("value of " + date, value, "");
    }

    double yearsAfter(LocalDate start) {
        return ChronoUnit.DAYS.between(start, date) / DAYS_OF_A_YEAR;
    }
}
