package halfwidth.value;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Prints numbers with a decimal point, in any locale. */
public final class Decimal {
    private static final MathContext SHOWN = new MathContext(10);
    private static final int LEAST_DIGITS = 4;
    private static final int PLAIN_DIGITS = 15;
    private static final String SPACE = "\u202f"; // narrow, does not break
    private static final Pattern GROUPED =
            Pattern.compile(
                    "(?<![\\d.,"
                            + SPACE
                            + "])\\d{1,3}(?:"
                            + SPACE
                            + "\\d{3}){2,}(?!\\d|"
                            + SPACE
                            + "\\d)");
    private static final Pattern MILLIONS = Pattern.compile("(-?\\d{7,})((?:\\.\\d+)?)");

    private Decimal() {}

    /**
     * Prints a number with as many digits as it takes to read the same number back.
     *
     * @param value a finite number
     * @return as in {@code 4.0625}, {@code -120}, {@code 1E-9}
     * @throws IllegalArgumentException if {@code value} is NaN or infinite
     */
    public static String print(double value) {
        return print(exactly(value));
    }

    /**
     * A printed number of a million or more with its digits in groups of three, apart by a narrow
     * space that does not break (ISO 80000-1:2009, 7.3.1, from memory): for reading, not for other
     * programs.
     *
     * @param number as {@link #print(double)} leaves it
     */
    public static String grouped(String number) {
        Matcher millions = MILLIONS.matcher(number);
        return millions.matches()
                ? millions.group(1).replaceAll("\\B(?=(?:\\d{3})+$)", SPACE) + millions.group(2)
                : number;
    }

    /** The same text with its {@linkplain #grouped groups} joined again, as when it is copied. */
    static String ungrouped(String text) {
        return GROUPED.matcher(text).replaceAll(group -> group.group().replace(SPACE, ""));
    }

    /** Rounds to ten digits: no reader needs more of them. */
    static String brief(double value) {
        return print(exactly(value).round(SHOWN));
    }

    /**
     * Rounds a converted value to one place more than was typed, and to no less than four digits.
     *
     * @param typedPlace what one in the last typed place is worth in the value's unit, above 0
     */
    static String converted(double value, double typedPlace) {
        BigDecimal exact = exactly(value);
        int places =
                1 + (int) Math.ceil(-Math.log10(Math.max(typedPlace, Double.MIN_NORMAL)) - 1e-9);
        int forDigits = LEAST_DIGITS - exact.precision() + exact.scale();
        return print(
                exact.setScale(Math.max(places, forDigits), RoundingMode.HALF_UP).round(SHOWN));
    }

    /** Rounds to so many decimals, and to ten digits. */
    static String rounded(double value, int decimals) {
        return print(exactly(value).setScale(decimals, RoundingMode.HALF_UP).round(SHOWN));
    }

    private static BigDecimal exactly(double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("value " + value + " must be finite");
        }
        return BigDecimal.valueOf(value);
    }

    private static String print(BigDecimal value) {
        BigDecimal bare = value.stripTrailingZeros();
        int exponent = bare.precision() - bare.scale();
        boolean plain = exponent > -PLAIN_DIGITS / 2 && exponent <= PLAIN_DIGITS;
        return plain ? bare.toPlainString() : bare.toString();
    }
}
