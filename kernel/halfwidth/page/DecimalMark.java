package halfwidth.page;

import halfwidth.spreadsheet.Separator;
import halfwidth.value.EntryRefused;
import halfwidth.value.Kind;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The decimal mark of a file's numbers. One program wrote all of them: where one number can only
 * have a decimal comma, as 3,5 or 0,125, and none a decimal point, 1,234 has a decimal comma as
 * well. Where nothing proves it, 1,234 is refused, and so is 1.234 between semicolons, since there
 * the point may stand between thousands.
 *
 * @param mayBeComma whether the file's separator leaves the comma to its numbers
 * @param mayGroup whether a point may stand between thousands where nothing proves otherwise
 * @param comma whether a number has a decimal comma for certain
 * @param point whether a number has a decimal point for certain
 */
record DecimalMark(boolean mayBeComma, boolean mayGroup, boolean comma, boolean point) {
    private static final Pattern NUMBER =
            Pattern.compile("(?<![\\d.,])(\\d*)([.,])(\\d+)(?![\\d.,])");

    /**
     * Finds the decimal mark.
     *
     * @param cells all cells of the file that hold numbers
     */
    static DecimalMark of(Separator separator, Stream<String> cells) {
        boolean comma = false;
        boolean point = false;
        for (String cell : (Iterable<String>) cells::iterator) {
            Matcher number = NUMBER.matcher(cell);
            while (number.find()) {
                boolean certain = !isUncertain(number);
                comma |= certain && number.group(2).equals(",");
                point |= certain && number.group(2).equals(".");
            }
        }
        boolean mayBeComma = separator == Separator.SEMICOLON || separator == Separator.TAB;
        return new DecimalMark(mayBeComma, separator == Separator.SEMICOLON, comma, point);
    }

    /** Whether cells of this kind have decimals. */
    static boolean isIn(Kind kind) {
        return kind instanceof Kind.Number || Kinds.isDdm(kind);
    }

    /** Three digits behind the mark, and one to three before it of which the first is not 0. */
    private static boolean isUncertain(Matcher number) {
        return number.group(1).matches("[1-9]\\d{0,2}") && number.group(3).length() == 3;
    }

    /**
     * A cell with decimal points.
     *
     * @throws EntryRefused if a mark in it may stand between thousands
     */
    String read(String cell) {
        if (!mayBeComma) {
            return cell;
        }
        boolean commas = comma && !point;
        Matcher number = NUMBER.matcher(cell);
        while (number.find()) {
            boolean proved = number.group(2).equals(",") ? commas : !comma && (point || !mayGroup);
            if (isUncertain(number) && !proved) {
                throw refusal(number, commas || !point ? "," : ".");
            }
        }
        return commas ? number.reset().replaceAll("$1.$3") : cell;
    }

    /** One more digit leaves no doubt; so does none. */
    private static EntryRefused refusal(Matcher number, String mark) {
        String whole = number.group(1);
        String decimals = number.group(3);
        return new EntryRefused(
                "%s may be %s.%s or %s%s, and no other number of the file tells; type %s%s%s0 or %s%s"
                        .formatted(
                                number.group(),
                                whole,
                                decimals,
                                whole,
                                decimals,
                                whole,
                                mark,
                                decimals,
                                whole,
                                decimals));
    }
}
