package halfwidth.localizer;

/** Refusals of impossible arguments, all worded {@code name value unit must constraint}. */
public final class Require {
    private Require() {}

    /**
     * Refuses NaN and infinity.
     *
     * @param name what the value is, for the message
     * @param value the value (unit of the value)
     * @param unit its unit, empty for a ratio
     * @return the value (unit of the value)
     * @throws IllegalArgumentException if {@code value} is NaN or infinite
     */
    public static double finite(String name, double value, String unit) {
        if (!Double.isFinite(value)) {
            throw refusal(name, value, unit, "be finite");
        }
        return value;
    }

    /**
     * Refuses what is not above a bound.
     *
     * @param name what the value is, for the message
     * @param value the value (unit of the value)
     * @param bound the bound (unit of the value), itself refused
     * @param unit the unit of both, empty for a ratio
     * @return the value (unit of the value)
     * @throws IllegalArgumentException if {@code value} is not finite or not above {@code bound}
     */
    public static double above(String name, double value, double bound, String unit) {
        if (!(value > bound) || Double.isInfinite(value)) {
            throw refusal(name, value, unit, "be finite and above " + plain(bound));
        }
        return value;
    }

    /**
     * Refuses what is outside a closed range.
     *
     * @param name what the value is, for the message
     * @param value the value (unit of the value)
     * @param range the least and the most value allowed (unit of the value), both allowed
     *     themselves
     * @param unit the unit of all, empty for a ratio
     * @return the value (unit of the value)
     * @throws IllegalArgumentException if {@code value} is NaN or outside {@code range}
     */
    public static double within(String name, double value, Range range, String unit) {
        if (!(value >= range.least() && value <= range.most())) {
            throw refusal(
                    name, value, unit, "be " + plain(range.least()) + " to " + plain(range.most()));
        }
        return value;
    }

    /**
     * Refuses two columns of different length.
     *
     * @param names what the two are, for the message
     * @param first the length of the first (1)
     * @param second the length of the second (1)
     * @throws IllegalArgumentException if the lengths differ
     */
    public static void sameLength(String names, int first, int second) {
        if (first != second) {
            throw new IllegalArgumentException(
                    names + " must be of one length, not " + first + " and " + second);
        }
    }

    private static IllegalArgumentException refusal(
            String name, double value, String unit, String constraint) {
        String shown = unit.isEmpty() ? plain(value) : plain(value) + " " + unit;
        return new IllegalArgumentException(name + " " + shown + " must " + constraint);
    }

    private static String plain(double value) {
        return value == Math.rint(value) && Math.abs(value) < 1e15
                ? Long.toString((long) value)
                : Double.toString(value);
    }
}
