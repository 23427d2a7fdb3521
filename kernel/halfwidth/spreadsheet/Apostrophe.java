package halfwidth.spreadsheet;

import java.util.regex.Pattern;

/**
 * The apostrophe before text that a spreadsheet would run. A cell that begins with =, +, - or @ is
 * a formula to it wherever it comes from, and a formula may fetch, send or start something; the
 * apostrophe makes it text. Quotation marks do not: they are gone before the cell is looked at. A
 * spreadsheet set to another separator divides cells where ours do not end, so that what stands
 * behind such a separator is a beginning as well. An apostrophe that is there already gets another
 * before it, so that the text comes back as it was.
 */
final class Apostrophe {
    /** The wide forms are turned into the others by spreadsheets of eastern Asia. */
    private static final String RUNS = "(?=[=+\\-@\uff1d\uff0b\uff0d\uff20])";

    private static final Pattern NUMBER =
            Pattern.compile("[+-]?(?:\\d+(?:[.,]\\d*)?|[.,]\\d+)(?:[eE][+-]?\\d+)?");

    private Apostrophe() {}

    /** A text as it leaves. A number stays one: minus five is nothing that runs. */
    static String before(String text, Separator separator) {
        return NUMBER.matcher(text).matches()
                ? text
                : beginnings(separator, "('*)" + RUNS).matcher(text).replaceAll("$1$2'$3");
    }

    /** A text as it was before it left. */
    static String without(String text, Separator separator) {
        return beginnings(separator, "'('*)" + RUNS).matcher(text).replaceAll("$1$2$3");
    }

    private static Pattern beginnings(Separator own, String behind) {
        String others = ",;\t".replace(String.valueOf(own.sign()), "");
        return Pattern.compile("(^|[" + others + "\\r\\n])([\\s\"]*)" + behind);
    }
}
