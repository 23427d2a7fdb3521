package halfwidth.value;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.time.format.DateTimeParseException;
import java.time.format.ResolverStyle;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** Reads a calendar date that can only be read in one way. */
final class DateReader {
    private static final String EXPECTED =
            "year-month-day as in 2026-11-25, or 25.11.2026 or 25 Nov 2026";
    private static final List<DateTimeFormatter> FORMS =
            Stream.of("uuuu-MM-dd", "d.M.uuuu", "d MMM uuuu", "d MMMM uuuu")
                    .map(DateReader::form)
                    .toList();
    private static final int EARLIEST = 1900;
    private static final int LATEST = 2199;

    private DateReader() {}

    private static DateTimeFormatter form(String pattern) {
        return new DateTimeFormatterBuilder()
                .parseCaseInsensitive()
                .appendPattern(pattern)
                .toFormatter(Locale.ENGLISH)
                .withResolverStyle(ResolverStyle.STRICT);
    }

    static Entry read(String typed) {
        String text = Figure.plain(typed);
        if (text.matches("\\d{1,4}/\\d{1,2}/\\d{1,4}")) {
            throw new EntryRefused(
                    text + " does not say which is the day and which the month; type " + EXPECTED);
        }
        LocalDate date =
                FORMS.stream()
                        .flatMap(form -> parsed(form, text))
                        .findFirst()
                        .filter(day -> day.getYear() >= EARLIEST && day.getYear() <= LATEST)
                        .orElseThrow(() -> noDate(typed));
        String shown = date.toString();
        return new Entry(typed, date, text.equals(shown) ? shown : shown + " (" + text + " typed)");
    }

    private static EntryRefused noDate(String typed) {
        return new EntryRefused(
                String.format(
                        "%s is no date between %d and %d; type %s",
                        WordReader.named(typed), EARLIEST, LATEST, EXPECTED));
    }

    private static Stream<LocalDate> parsed(DateTimeFormatter form, String text) {
        try {
            return Stream.of(LocalDate.parse(text, form));
        } catch (DateTimeParseException otherForm) {
            return Stream.empty();
        }
    }
}
