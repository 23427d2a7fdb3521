package halfwidth.show;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Numbers as they are written, with a point whatever the machine's language. */
final class Numbers {
    private static final MathContext BRIEF = new MathContext(6);
    private static final MathContext FULL = new MathContext(12);
    private static final double TOO_LONG = 1e15;

    /** Digits of an uncertainty: JCGM 100:2008, 7.2.6, allows two at most. */
    private static final MathContext OF_UNCERTAINTY = new MathContext(2);

    private static final MathContext OF_SENSITIVITY = new MathContext(3);

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

    /**
     * A value with its standard uncertainty, as in {@code 164.98 ± 0.37}: the uncertainty to two
     * significant digits, the value to the same place (JCGM 100:2008, 7.2.6).
     */
    static String measured(double value, double uncertainty) {
        BigDecimal size = BigDecimal.valueOf(uncertainty).round(OF_UNCERTAINTY);
        size = size.setScale(size.scale() + OF_UNCERTAINTY.getPrecision() - size.precision());
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(size.scale(), RoundingMode.HALF_UP);
        if (uncertainty == 0 || rounded.precision() > FULL.getPrecision()) {
            return full(value) + " ± " + significant(uncertainty, OF_UNCERTAINTY);
        }
        return rounded.toPlainString() + " ± " + size.toPlainString();
    }

    /** An uncertainty to two significant digits, the second even where it is 0. */
    static String ofUncertainty(double value) {
        int decimals = decimals(value);
        boolean plain = value >= 1e-5 && value < 1e5;
        return plain && decimals > 0 ? fixed(value, decimals) : significant(value, OF_UNCERTAINTY);
    }

    /** The decimals that show two significant digits of an uncertainty. */
    static int decimals(double uncertainty) {
        BigDecimal size = BigDecimal.valueOf(uncertainty).round(OF_UNCERTAINTY);
        return Math.max(0, size.scale() + OF_UNCERTAINTY.getPrecision() - size.precision());
    }

    /** Three significant digits: a difference over a step bears no more. */
    static String ofSensitivity(double value) {
        return significant(value, OF_SENSITIVITY);
    }

    /** The same with its sign. */
    static String signed(double value) {
        return (value > 0 ? "+" : "") + ofSensitivity(value);
    }

    private static String significant(double value, MathContext digits) {
        BigDecimal rounded = BigDecimal.valueOf(value).round(digits).stripTrailingZeros();
        int whole = rounded.precision() - rounded.scale();
        boolean plain = rounded.signum() == 0 || (whole > -5 && whole <= digits.getPrecision() + 3);
        return plain ? rounded.toPlainString() : rounded.toString();
    }
}
