package halfwidth.value;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What is asked of an entry when it is typed and not when it is read again: what an older program
 * kept is still understood as it was then.
 */
public final class NewEntry {
    private static final Pattern FRACTION = Pattern.compile("(?<![\\d.,/ ])(\\d{2,6})/(\\d{1,6})");

    private NewEntry() {}

    /**
     * Looks at what is typed.
     *
     * @throws EntryRefused if a slip is as likely as what is typed
     */
    public static void check(Kind kind, String typed) {
        checkLetters(typed);
        if (kind instanceof Kind.Number) {
            checkFractions(typed);
        }
    }

    private static void checkLetters(String typed) {
        if (!isLegible(typed)) {
            throw new EntryRefused(
                    "\""
                            + typed
                            + "\" has letters that could not be read; type it again, on a terminal"
                            + " set to UTF-8, or save the file as UTF-8");
        }
    }

    /** Whether nothing in a text stands for letters that could not be decoded. */
    public static boolean isLegible(String text) {
        return text.codePoints()
                .noneMatch(
                        letter ->
                                letter == 0xfffd
                                        || Character.getType(letter) == Character.SURROGATE);
    }

    /** 21/16 is 2 1/16 without its space as likely as it is 1 5/16. */
    private static void checkFractions(String typed) {
        Matcher fraction = FRACTION.matcher(Figure.plain(typed));
        while (fraction.find()) {
            String digits = fraction.group(1);
            int size = Integer.parseInt(digits);
            int parts = Integer.parseInt(fraction.group(2));
            for (int cut = 1; cut < digits.length() && size >= parts; cut++) {
                if (digits.charAt(cut) != '0' && Integer.parseInt(digits.substring(cut)) < parts) {
                    String spaced = digits.substring(0, cut) + " " + digits.substring(cut);
                    String one = spaced + "/" + parts;
                    String other = mixed(size, parts);
                    throw new EntryRefused(
                            "%s may be %s or %s; type %s or %s"
                                    .formatted(fraction.group(), one, other, one, other));
                }
            }
        }
    }

    private static String mixed(int size, int parts) {
        String whole = Integer.toString(size / parts);
        return size % parts == 0 ? whole : whole + " " + size % parts + "/" + parts;
    }
}
