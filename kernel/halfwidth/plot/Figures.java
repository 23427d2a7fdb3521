package halfwidth.plot;

import java.math.BigDecimal;
import java.math.MathContext;

/** Numbers in words: four significant digits, a point whatever the machine's language. */
final class Figures {
    private static final MathContext FOUR_DIGITS = new MathContext(4);

    private Figures() {}

    static String brief(double value) {
        BigDecimal rounded = new BigDecimal(value).round(FOUR_DIGITS).stripTrailingZeros();
        boolean plain = rounded.scale() <= 9 && rounded.precision() - rounded.scale() <= 9;
        return plain ? rounded.toPlainString() : rounded.toString();
    }
}
