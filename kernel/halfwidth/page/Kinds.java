package halfwidth.page;

import halfwidth.value.Kind;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The words by which a page names a kind of entry. */
final class Kinds {
    static final String EXPECTED =
            "expected number, count, ddm, ddm size, choice A|B, array, array or none, text or date";

    private Kinds() {}

    /** Reads a word such as {@code count} or {@code choice CSB|SBO}; empty if it is none. */
    static Optional<Kind> of(String word) {
        return word.startsWith("choice ") ? choice(word.substring(7)) : simple(word);
    }

    private static Optional<Kind> simple(String word) {
        return Optional.ofNullable(
                switch (word) {
                    case "number" -> new Kind.Number();
                    case "count" -> new Kind.Count();
                    case "ddm" -> new Kind.Ddm();
                    case "ddm size" -> new Kind.DdmSize();
                    case "array" -> new Kind.Array(false);
                    case "array or none" -> new Kind.Array(true);
                    case "text" -> new Kind.Text();
                    case "date" -> new Kind.Date();
                    default -> null;
                });
    }

    private static Optional<Kind> choice(String words) {
        List<String> options = Arrays.stream(words.split("\\|", -1)).map(String::strip).toList();
        HashSet<String> distinct = new HashSet<>();
        options.forEach(option -> distinct.add(option.toLowerCase(Locale.ROOT)));
        boolean clear =
                options.size() > 1 && distinct.size() == options.size() && !distinct.contains("");
        return clear ? Optional.of(new Kind.Choice(options)) : Optional.empty();
    }

    /** Whether an entry of this kind is compared with limits. */
    static boolean isNumeric(Kind kind) {
        return kind instanceof Kind.Number || kind instanceof Kind.Count || isDdm(kind);
    }

    /** Whether a column may hold entries of this kind under its name in words. */
    static boolean isWords(Kind kind) {
        return !isNumeric(kind) && !(kind instanceof Kind.Array);
    }

    static boolean isDdm(Kind kind) {
        return kind instanceof Kind.Ddm || kind instanceof Kind.DdmSize;
    }
}
