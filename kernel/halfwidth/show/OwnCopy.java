package halfwidth.show;

import halfwidth.run.Outcome;
import halfwidth.run.Run;
import java.util.List;
import java.util.stream.Collectors;

/**
 * What whoever reads a sheet must know of a page that is a job's own and not a shipped one: whether
 * its checks hold, which run on its worked example alone.
 *
 * @param hasShipped whether there is a shipped page of its name, that it goes before
 * @param checks how many it has
 * @param broken the lines of those that do not hold
 * @param outside who agreed that it leaves the bounds of page code, in words; "" if it does not
 */
public record OwnCopy(boolean hasShipped, int checks, List<Integer> broken, String outside) {

    /**
     * Looks at the run of its worked example.
     *
     * @param hasShipped whether there is a shipped page of its name
     * @param outside who agreed that it leaves the bounds of page code, in words; "" if it does not
     */
    public static OwnCopy of(boolean hasShipped, Run example, String outside) {
        List<Integer> broken =
                example.checks().stream()
                        .filter(ran -> !(ran.outcome() instanceof Outcome.Done))
                        .map(ran -> ran.step().line())
                        .toList();
        return new OwnCopy(hasShipped, example.checks().size(), broken, outside);
    }

    boolean isSound() {
        return checks > 0 && broken.isEmpty() && outside.isEmpty();
    }

    String words() {
        String what =
                (hasShipped
                                ? "This page is a copy that belongs to the job, not the shipped"
                                        + " one. "
                                : "This page belongs to the job; none of its name is shipped. ")
                        + (outside.isEmpty() ? "" : outside + " ");
        if (checks == 0) {
            return what + "It has no checks.";
        }
        if (broken.isEmpty()) {
            return what + "On its worked example all its checks hold (" + checks + ").";
        }
        String lines = broken.stream().map(Object::toString).collect(Collectors.joining(", "));
        return ("%sOn its worked example checks fail: %s of %s (line %s). Do not rely on its"
                        + " results before somebody has found out why.")
                .formatted(what, broken.size(), checks, lines);
    }
}
