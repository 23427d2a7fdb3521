package halfwidth.job;

import halfwidth.localizer.array.NamedArray;
import halfwidth.page.Filled;
import halfwidth.value.Entry;
import java.io.Serializable;
import java.nio.charset.StandardCharsets;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;

/**
 * A digest of all that a run of a page is made from: its text and the values it runs with, which an
 * array is with all that its file says.
 */
public final class Fingerprint {
    private Fingerprint() {}

    /** SHA-256 of a page's text and values, in hexadecimal. */
    public static String of(Filled filled) {
        StringBuilder all = new StringBuilder(filled.page().text());
        filled.entries().forEach((name, entry) -> put(all, name, Optional.of(entry)));
        filled.readings()
                .forEach(
                        (name, rows) -> {
                            put(all, name, Optional.empty());
                            rows.forEach(row -> put(all, row));
                        });
        return of(all.toString());
    }

    private static void put(StringBuilder all, List<Optional<Entry>> row) {
        row.forEach(cell -> put(all, "", cell));
        all.append('\n');
    }

    /** Lengths first, so that no value can pass for another's name. */
    private static void put(StringBuilder all, String name, Optional<Entry> entry) {
        String value = entry.map(e -> whole(e.value())).orElse("");
        all.append(name).append(':').append(value.length()).append(':').append(value).append('\n');
    }

    private static String whole(Serializable value) {
        return value instanceof NamedArray array
                ? array.name() + "\n" + array.text()
                : value.toString();
    }

    /** SHA-256 of a text in UTF-8, in hexadecimal. */
    public static String of(String text) {
        return of(text.getBytes(StandardCharsets.UTF_8));
    }

    /** SHA-256 of bytes, in hexadecimal. */
    public static String of(byte[] bytes) {
        return HexFormat.of().formatHex(Chain.sha256().digest(bytes));
    }
}
