package halfwidth.adapt;

/**
 * Whole lines of a page's text.
 *
 * @param first the first of them, 1-based
 * @param last the last of them
 * @param fenced whether they stand in a block, which a line of ``` alone would end
 */
public record Place(int first, int last, boolean fenced) {
    public Place {
        if (first < 1 || last < first) {
            throw new IllegalArgumentException(
                    "lines %s to %s must run from at least 1 upwards".formatted(first, last));
        }
    }

    /** How many lines. */
    int count() {
        return last - first + 1;
    }
}
