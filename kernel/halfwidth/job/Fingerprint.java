package halfwidth.job;

import halfwidth.localizer.array.NamedArray;
import halfwidth.page.Filled;
import halfwidth.value.Decimal;
import halfwidth.value.Entry;
import java.io.Serializable;
import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * A digest of all that a sheet shows and a run of its page is made from: the page's text, every
 * value as typed and as understood with its stated uncertainty, the reason of each blank, and an
 * array with all that its file says.
 */
public final class Fingerprint {
    /** What it begins with, to be told from {@link #older}. */
    private static final String FORM = "2-";

    private Fingerprint() {}

    /**
     * The fingerprint of a sheet: SHA-256 in hexadecimal, after its form.
     *
     * @param reasons why there is no value, at each blank for which somebody said so
     */
    public static String of(Filled filled, Map<Place, String> reasons) {
        StringBuilder all = new StringBuilder(filled.page().text());
        values(filled, all, Fingerprint::whole);
        reasons.entrySet().stream()
                .sorted(Comparator.comparing(blank -> blank.getKey().toString()))
                .forEach(blank -> put(all, blank.getKey().toString(), blank.getValue()));
        filled.origins().keySet().stream().sorted().forEach(name -> put(all, name, "taken"));
        return FORM + of(all.toString());
    }

    /** Whether a fingerprint, be it of the older form, is that of a sheet. */
    public static boolean isOf(String made, Filled filled, Map<Place, String> reasons) {
        return made.equals(made.startsWith(FORM) ? of(filled, reasons) : older(filled));
    }

    /** What older programs took for it: uncertainties, reasons and what was typed are not in it. */
    private static String older(Filled filled) {
        StringBuilder all = new StringBuilder(filled.page().text());
        values(filled, all, entry -> value(entry.value()));
        return of(all.toString());
    }

    private static void values(Filled filled, StringBuilder all, Function<Entry, String> words) {
        filled.entries().forEach((name, entry) -> put(all, name, words.apply(entry)));
        filled.readings()
                .forEach(
                        (name, rows) -> {
                            put(all, name, "");
                            rows.forEach(row -> put(all, row, words));
                        });
    }

    private static void put(
            StringBuilder all, List<Optional<Entry>> row, Function<Entry, String> words) {
        row.forEach(cell -> put(all, "", cell.map(words).orElse("")));
        all.append('\n');
    }

    private static String whole(Entry entry) {
        StringBuilder whole = new StringBuilder();
        put(whole, "value", value(entry.value()));
        put(whole, "typed", entry.typed());
        put(whole, "u", entry.uncertainty().map(Decimal::print).orElse(""));
        return whole.toString();
    }

    /** Lengths first, so that no value can pass for another's name. */
    private static void put(StringBuilder all, String name, String value) {
        all.append(name).append(':').append(value.length()).append(':').append(value).append('\n');
    }

    private static String value(Serializable value) {
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
