package halfwidth.show;

import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Times as they are written on a record: year first, with the offset from UTC. */
final class Dates {
    private static final DateTimeFormatter FORMAT =
            DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm:ss 'UTC'XXX", Locale.ROOT);

    private Dates() {}

    static String words(ZonedDateTime time) {
        String words = FORMAT.format(time);
        return words.endsWith("Z") ? words.substring(0, words.length() - 1) : words;
    }
}
