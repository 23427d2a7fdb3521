package halfwidth.localizer;

/**
 * A closed range of values of one unit.
 *
 * @param least the lower end (unit of the range)
 * @param most the upper end (unit of the range), at least {@code least}
 */
public record Range(double least, double most) {

    /**
     * @throws IllegalArgumentException if an end is NaN or {@code least} is above {@code most}
     */
    public Range {
        if (!(least <= most)) {
            throw new IllegalArgumentException(
                    "range from " + least + " to " + most + " must not run backwards");
        }
    }

    /**
     * Tells whether a value lies in the range, its ends included.
     *
     * @param value the value (unit of the range)
     * @return true if it does
     */
    public boolean contains(double value) {
        return value >= least && value <= most;
    }

    /**
     * Returns how long the range is.
     *
     * @return {@code most - least} (unit of the range)
     */
    public double width() {
        return most - least;
    }
}
