package halfwidth.page;

import java.util.Optional;

/**
 * One answer of a page.
 *
 * @param line its line in the file, 1-based
 * @param name the page variable that holds it
 * @param decimals how many decimals are printed
 * @param least lower limit: a number, or the name of a page variable that holds it
 * @param most upper limit, likewise
 * @param source where the limits come from
 * @param uncertainty name of the page variable that holds its standard uncertainty
 * @param label what a technician reads beside it
 * @param group the heading that it stands under, from the nearest row above that has a label alone;
 *     "" if there is none
 * @param shown when it is shown, if it goes with an action or rests on something optional; always,
 *     if empty
 */
public record Result(
        int line,
        String name,
        String unit,
        int decimals,
        Optional<String> least,
        Optional<String> most,
        String source,
        Optional<String> uncertainty,
        String label,
        String group,
        Optional<ShownWhen> shown) {

    /** A result that is always shown. */
    public Result(
            int line,
            String name,
            String unit,
            int decimals,
            Optional<String> least,
            Optional<String> most,
            String source,
            Optional<String> uncertainty,
            String label,
            String group) {
        this(
                line,
                name,
                unit,
                decimals,
                least,
                most,
                source,
                uncertainty,
                label,
                group,
                Optional.empty());
    }
}
