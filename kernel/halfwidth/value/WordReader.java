package halfwidth.value;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads what needs no measuring: whole numbers, one of several words, any text. */
final class WordReader {
    private static final Pattern WHOLE = Pattern.compile("([+-]?\\d{1,10})(?: ?(\\D.*))?");

    private WordReader() {}

    /**
     * Reads a whole number.
     *
     * @param unit its unit, which may be typed after it; "1" if it has none
     */
    static Entry count(String unit, String typed) {
        Matcher whole = WHOLE.matcher(Figure.plain(typed));
        Unit own = Unit.of(unit);
        boolean plain = own.equals(Unit.ONE);
        String expected =
                "a whole number such as 12" + (plain ? "" : ", alone or with " + own.label());
        if (!whole.matches() || !fits(whole.group(1)) || !fitsUnit(whole.group(2), own)) {
            throw new EntryRefused(named(typed) + " is no whole number; type " + expected);
        }
        int value = Integer.parseInt(whole.group(1));
        return new Entry(typed, value, plain ? "" + value : value + " " + own.label());
    }

    private static boolean fits(String digits) {
        long value = Long.parseLong(digits);
        return value == (int) value;
    }

    private static boolean fitsUnit(String typed, Unit own) {
        return typed == null
                || !own.equals(Unit.ONE) && Unit.find(typed).filter(own::equals).isPresent();
    }

    static Entry choice(List<String> options, String typed) {
        String word = typed.strip();
        return options.stream()
                .filter(option -> option.equalsIgnoreCase(word))
                .findFirst()
                .map(option -> new Entry(typed, option, option))
                .orElseThrow(
                        () ->
                                new EntryRefused(
                                        named(typed)
                                                + " is not among the choices; type one of "
                                                + String.join(", ", options)));
    }

    static Entry text(String typed) {
        String words = typed.strip();
        if (words.isEmpty()) {
            throw new EntryRefused("nothing is typed; type at least one word");
        }
        return new Entry(typed, words, words);
    }

    /** What was typed, in a form that can be named in a message. */
    static String named(String typed) {
        String text = typed.strip();
        return text.isEmpty() ? "nothing" : text.length() > 60 ? text.substring(0, 60) + "…" : text;
    }
}
