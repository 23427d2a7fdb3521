package halfwidth.approval;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a sheet shows to whoever signs it.
 *
 * @param content the fingerprint of all that it shows
 * @param filledIn whether anything is filled in
 * @param checks the checks that fail on the page's worked example
 * @param steps the steps that fail
 * @param limits the results that do not keep their limits
 * @param unjudged the results whose limits cannot be judged since something is missing without a
 *     stated reason
 * @param difference what the page has otherwise than the shipped one; empty if it is that
 */
public record Evidence(
        String content,
        boolean filledIn,
        List<String> checks,
        List<String> steps,
        List<String> limits,
        List<String> unjudged,
        Optional<PageDifference> difference) {
    public Evidence {
        checks = List.copyOf(checks);
        steps = List.copyOf(steps);
        limits = List.copyOf(limits);
        unjudged = List.copyOf(unjudged);
    }

    /** The same of a sheet on which something is filled in, or nothing. */
    public Evidence filledIn(boolean anything) {
        return new Evidence(content, anything, checks, steps, limits, unjudged, difference);
    }

    /** What is wrong with the sheet itself, whoever signs it, each in words. */
    public List<String> wrong() {
        List<String> wrong = new ArrayList<>();
        put(wrong, "checks that fail on the worked example", checks);
        put(wrong, "steps that fail", steps);
        put(wrong, "limits not met", limits);
        put(wrong, "limits that cannot be judged", unjudged);
        return wrong;
    }

    private static void put(List<String> wrong, String what, List<String> which) {
        if (!which.isEmpty()) {
            wrong.add(what + ": " + String.join("; ", which));
        }
    }
}
