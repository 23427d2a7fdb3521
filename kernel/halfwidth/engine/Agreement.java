package halfwidth.engine;

import java.util.Locale;

/**
 * What a page's check found: whether a value agrees with one from outside the project.
 *
 * @param holds whether it does
 * @param text expected and found, for the reader
 */
public record Agreement(boolean holds, String text) {

    /**
     * Compares a computed value with an expected one.
     *
     * @param actual what the page computed
     * @param expected what the source says, in the same unit
     * @param tolerance largest difference that still agrees, above 0; half a unit of the last digit
     *     that the source prints, unless the page says why it is another
     * @return the comparison; a value that is not a number does not agree
     * @throws IllegalArgumentException if {@code tolerance} is not above 0 and finite, or {@code
     *     expected} is not finite
     */
    public static Agreement agrees(double actual, double expected, double tolerance) {
        if (!(tolerance > 0) || Double.isInfinite(tolerance)) {
            throw new IllegalArgumentException(
                    "tolerance " + tolerance + " must be finite and above 0");
        }
        if (!Double.isFinite(expected)) {
            throw new IllegalArgumentException("expected " + expected + " must be finite");
        }
        boolean holds = Math.abs(actual - expected) <= tolerance;
        return new Agreement(
                holds,
                String.format(
                        Locale.ROOT,
                        "expected %s ± %s, found %s",
                        plain(expected),
                        plain(tolerance),
                        plain(actual)));
    }

    private static String plain(double value) {
        return String.format(Locale.ROOT, "%.6g", value);
    }
}
