package halfwidth.show;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Numbers as they are written, with a point whatever the machine's language. */
final class Numbers {
    private static final MathContext BRIEF = new MathContext(6);
    private static final MathContext FULL = new MathContext(12);
    private static final double TOO_LONG = 1e15;

    private Numbers() {}

    /** Rounds half up to so many decimals; a number too long for that is given briefly. */
    static String fixed(double value, int decimals) {
        return Math.abs(value) >= TOO_LONG
                ? brief(value)
                : rounded(value, decimals).toPlainString();
    }

    static BigDecimal rounded(double value, int decimals) {
        return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
    }

    /** Six significant digits and all whole ones, for a value on the way. */
    static String brief(double value) {
        double size = Math.abs(value);
        return size >= 1e6 && size < TOO_LONG ? fixed(value, 0) : significant(value, BRIEF);
    }

    /** Twelve significant digits, for other programs: all that is known, less the noise. */
    static String full(double value) {
        return significant(value, FULL);
    }

    private static String significant(double value, MathContext digits) {
        BigDecimal rounded = BigDecimal.valueOf(value).round(digits).stripTrailingZeros();
        int whole = rounded.precision() - rounded.scale();
        boolean plain = rounded.signum() == 0 || (whole > -5 && whole <= digits.getPrecision() + 3);
        return plain ? rounded.toPlainString() : rounded.toString();
    }
}
