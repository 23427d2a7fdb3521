package halfwidth.job;

/**
 * One result as a run published it.
 *
 * @param name the result's name on the page
 * @param value the number, unrounded, or the words; "" if it has none
 * @param unit of the number; "" for words, "1" for a plain number
 * @param uncertainty its standard uncertainty in the same unit; "" if it has none
 * @param verdict whether it keeps its limits, in words, or why it has no value
 * @param shown the number at the decimals that its page shows; "" if that is not known
 */
public record Finding(
        String name, String value, String unit, String uncertainty, String verdict, String shown) {

    /** A finding of which it is not known how its page shows it. */
    public Finding(String name, String value, String unit, String uncertainty, String verdict) {
        this(name, value, unit, uncertainty, verdict, "");
    }

    /** What was found alone, as a record keeps it. */
    public Finding withoutLook() {
        return new Finding(name, value, unit, uncertainty, verdict);
    }
}
