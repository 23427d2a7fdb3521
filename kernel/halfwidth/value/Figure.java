package halfwidth.value;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The number at the start of an entry.
 *
 * @param value its value, with its sign
 * @param signed whether a sign was typed
 * @param fraction whether it was typed as a common fraction
 * @param rest what follows it
 */
record Figure(BigDecimal value, boolean signed, boolean fraction, String rest) {
    private static final Pattern FRACTION =
            Pattern.compile("([+-]?)(?:(\\d{1,9})\\s+)?(\\d{1,9})\\s*/\\s*(\\d{1,9})");
    private static final Pattern DECIMAL =
            Pattern.compile("([+-]?)((?:\\d+(?:\\.\\d*|,\\d+)?|[.,]\\d+)(?:[eE][+-]?\\d+)?)");
    private static final Pattern NUMBER_GOES_ON = Pattern.compile("[\\d.,/+_-].*|['’]\\d{3}.*");
    private static final Pattern GROUPED =
            Pattern.compile("([+-]?\\d{1,3}(?:[ ,.'’_]\\d{3})+)([.,]\\d+)?(?!\\d).*");
    private static final Pattern THREE_AFTER_COMMA = Pattern.compile("[1-9]\\d{0,2},\\d{3}");
    private static final Pattern DASHED = Pattern.compile("(\\d+)-(\\d+/\\d+)(.*)");
    private static final int LONGEST = 100;

    /**
     * What is typed, with typographic minus signs and spaces as the plain ones, and a number copied
     * from where {@link Decimal#grouped} wrote it in one piece.
     */
    static String plain(String typed) {
        return Decimal.ungrouped(typed)
                .replace('\u2212', '-')
                .replaceAll("[\\s\u00a0\u2009\u202f]+", " ")
                .strip();
    }

    /**
     * Reads the number that an entry starts with.
     *
     * @param text as {@link #plain} leaves it
     * @param expected what to type, for the refusal
     */
    static Figure first(String text, Supplier<String> expected) {
        if (text.isEmpty()) {
            throw new EntryRefused("nothing is typed; type " + expected.get());
        }
        if (text.length() > LONGEST) {
            throw new EntryRefused(
                    text.length()
                            + " characters are too long for a number; type "
                            + expected.get());
        }
        Figure figure = atStart(text, expected);
        if (NUMBER_GOES_ON.matcher(figure.rest).matches()) {
            throw new EntryRefused(text + " is not one number; type " + other(text, expected));
        }
        return figure;
    }

    private static Figure atStart(String text, Supplier<String> expected) {
        Matcher fraction = FRACTION.matcher(text);
        if (fraction.lookingAt()) {
            return ofFraction(fraction, rest(text, fraction));
        }
        Matcher decimal = DECIMAL.matcher(text);
        if (decimal.lookingAt()) {
            return ofDecimal(decimal, rest(text, decimal));
        }
        throw new EntryRefused(text + " does not start with a number; type " + expected.get());
    }

    private static String rest(String text, Matcher number) {
        return text.substring(number.end()).strip();
    }

    private static String other(String text, Supplier<String> expected) {
        Matcher grouped = GROUPED.matcher(text);
        if (grouped.matches()) {
            String decimals = grouped.group(2) == null ? "" : "." + grouped.group(2).substring(1);
            return "it without separators of thousands, "
                    + grouped.group(1).replaceAll("[ ,.'’_]", "")
                    + decimals;
        }
        Matcher dashed = DASHED.matcher(text);
        return dashed.matches()
                ? dashed.group(1) + " " + dashed.group(2) + dashed.group(3)
                : expected.get();
    }

    private static Figure ofFraction(Matcher typed, String rest) {
        BigDecimal numerator = new BigDecimal(typed.group(3));
        BigDecimal denominator = new BigDecimal(typed.group(4));
        boolean mixed = typed.group(2) != null;
        if (denominator.signum() == 0 || mixed && numerator.compareTo(denominator) >= 0) {
            throw new EntryRefused(
                    typed.group() + " is no proper fraction; type it as in 3/8 or 4 1/16");
        }
        BigDecimal whole = mixed ? new BigDecimal(typed.group(2)) : BigDecimal.ZERO;
        BigDecimal size =
                whole.multiply(denominator)
                        .add(numerator)
                        .divide(denominator, MathContext.DECIMAL128);
        return new Figure(signed(typed, size), !typed.group(1).isEmpty(), true, rest);
    }

    private static Figure ofDecimal(Matcher typed, String rest) {
        String digits = typed.group(2);
        String point = digits.replace(',', '.');
        if (THREE_AFTER_COMMA.matcher(digits).matches()
                && !NUMBER_GOES_ON.matcher(rest).matches()) {
            throw new EntryRefused(
                    String.format(
                            "%s may be %s or %s; type %2$s or %3$s",
                            digits, point, digits.replace(",", "")));
        }
        double size = Double.parseDouble(point);
        boolean zero = point.replaceFirst("[eE].*", "").matches("[0.]*");
        if (Double.isInfinite(size) || size == 0 && !zero) {
            throw new EntryRefused(
                    digits + " is out of reach; type a number between 1e-300 and 1e300");
        }
        BigDecimal exact = zero ? BigDecimal.ZERO : new BigDecimal(point);
        return new Figure(signed(typed, exact), !typed.group(1).isEmpty(), false, rest);
    }

    private static BigDecimal signed(Matcher typed, BigDecimal size) {
        return typed.group(1).equals("-") ? size.negate() : size;
    }
}
