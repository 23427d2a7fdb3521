package halfwidth.localizer.limits;

import halfwidth.localizer.Range;
import halfwidth.localizer.Require;
import java.util.OptionalDouble;

/**
 * One published figure: what a quantity may be, for one category.
 *
 * @param key the name pages ask for
 * @param quantity what it is of, in words
 * @param category "I", "II", "III", or "any"
 * @param least the least allowed, empty if there is none (unit)
 * @param most the most allowed, empty if there is none (unit)
 * @param unit the unit of both; "1" for a ratio
 * @param source where it is published and how sure it is
 */
public record Limit(
        String key,
        String quantity,
        String category,
        OptionalDouble least,
        OptionalDouble most,
        String unit,
        Source source) {

    /**
     * @throws IllegalArgumentException if a text is blank, there is no bound, or the bounds run
     *     backwards
     */
    public Limit {
        requireText("key", key);
        requireText("quantity", quantity);
        requireText("category", category);
        requireText("unit", unit);
        if (least.isEmpty() && most.isEmpty()) {
            throw new IllegalArgumentException(key + " must have a least or a most value");
        }
        new Range(least.orElse(Double.NEGATIVE_INFINITY), most.orElse(Double.POSITIVE_INFINITY));
    }

    /**
     * Tells whether a value meets the limit; a value on the limit does.
     *
     * @param value the value (unit)
     * @return true if it is neither below the least nor above the most
     * @throws IllegalArgumentException if {@code value} is not finite
     */
    public boolean isMetBy(double value) {
        Require.finite(quantity, value, unit);
        return value >= least.orElse(Double.NEGATIVE_INFINITY)
                && value <= most.orElse(Double.POSITIVE_INFINITY);
    }

    /**
     * Returns the figure of a quantity that is given as one value.
     *
     * @param expectedUnit the unit the caller counts in, so that an edited table cannot slip one in
     * @return the value (unit)
     * @throws IllegalStateException if the unit is another or least and most differ
     */
    public double nominal(String expectedUnit) {
        double value = least(expectedUnit);
        if (value != most(expectedUnit)) {
            throw new IllegalStateException(
                    key + " must be one value, not " + value + " to " + most(expectedUnit));
        }
        return value;
    }

    /**
     * Returns the least value allowed.
     *
     * @param expectedUnit the unit the caller counts in
     * @return the least value (unit)
     * @throws IllegalStateException if the unit is another or there is no least value
     */
    public double least(String expectedUnit) {
        return bound(least, "least", expectedUnit);
    }

    /**
     * Returns the most allowed.
     *
     * @param expectedUnit the unit the caller counts in
     * @return the most (unit)
     * @throws IllegalStateException if the unit is another or there is no most value
     */
    public double most(String expectedUnit) {
        return bound(most, "most", expectedUnit);
    }

    /**
     * Returns the limit in words.
     *
     * @return for example "-10.5 to 10.5 m", "at least 0.155", "at most 6 deg"
     */
    public String words() {
        String of = unit.equals("1") ? "" : " " + unit;
        if (least.isEmpty()) {
            return "at most " + plain(most.getAsDouble()) + of;
        }
        if (most.isEmpty()) {
            return "at least " + plain(least.getAsDouble()) + of;
        }
        return least.equals(most)
                ? plain(least.getAsDouble()) + of
                : plain(least.getAsDouble()) + " to " + plain(most.getAsDouble()) + of;
    }

    private double bound(OptionalDouble bound, String which, String expectedUnit) {
        if (!unit.equals(expectedUnit)) {
            throw new IllegalStateException(
                    key + " is in " + unit + " where " + expectedUnit + " is needed");
        }
        return bound.orElseThrow(
                () -> new IllegalStateException(key + " has no " + which + " value"));
    }

    private static void requireText(String column, String text) {
        if (text.isBlank()) {
            throw new IllegalArgumentException(column + " must not be blank");
        }
    }

    private static String plain(double value) {
        return value == Math.rint(value) ? Long.toString((long) value) : Double.toString(value);
    }
}
