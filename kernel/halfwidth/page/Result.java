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
        String label) {}
