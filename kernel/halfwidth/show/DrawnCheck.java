package halfwidth.show;

import halfwidth.run.Drawn;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * Whether first order agrees with random draws: JCGM 101:2008, 8.1. Both ends of the 95 % interval
 * must agree to half a unit in the one significant digit of u that is asked for.
 */
enum DrawnCheck {
    AGREES("agrees"),
    DIFFERS("differs: use the draws"),
    /** The ends of the interval scatter by more than they may differ. */
    TOO_FEW("too few draws to tell");

    /** The factor of a 95 % interval of a normal distribution. */
    static final double COVERAGE = 1.96;

    /** JCGM 101:2008 asks for one or two; the second would need a million draws. */
    private static final MathContext DIGITS = new MathContext(1, RoundingMode.HALF_UP);

    /** The standard error of an end of the interval, √(p (1 − p)) / φ, over u / √draws. */
    private static final double SCATTER = 2.671;

    private final String words;

    DrawnCheck(String words) {
        this.words = words;
    }

    static DrawnCheck of(double value, double uncertainty, Drawn drawn) {
        double apart =
                Math.max(
                        Math.abs(value - COVERAGE * uncertainty - drawn.low()),
                        Math.abs(value + COVERAGE * uncertainty - drawn.high()));
        double allowed = tolerance(uncertainty);
        double scatter = SCATTER * drawn.standardDeviation() / Math.sqrt(drawn.draws());
        if (apart <= allowed) {
            return AGREES;
        }
        return apart > allowed + 2 * scatter ? DIFFERS : TOO_FEW;
    }

    /** Half a unit in the digit of u that counts. */
    static double tolerance(double uncertainty) {
        BigDecimal rounded = BigDecimal.valueOf(uncertainty).round(DIGITS);
        return rounded.ulp().doubleValue() / 2;
    }

    String words() {
        return words;
    }
}
