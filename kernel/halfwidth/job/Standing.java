package halfwidth.job;

import halfwidth.approval.Approval;
import java.util.List;
import java.util.Optional;

/**
 * How a visit stands.
 *
 * @param words as a person reads it: {@code not started}, {@code not run}, {@code waiting for …},
 *     {@code met}, {@code not met}, {@code not judged}, {@code ran}, {@code failed}, {@code out of
 *     date} or {@code refused}
 * @param because what made it out of date, or why it is refused; empty otherwise
 * @param ran the outcome of the last run, if there was one
 * @param approval who prepared, checked or sent back its sheet as it is now
 */
public record Standing(
        String words, List<String> because, Optional<Outcome> ran, Approval approval) {
    public Standing {
        because = List.copyOf(because);
    }

    /** How a visit stands that cannot be run, and why. */
    public static Standing refused(String why) {
        return new Standing("refused", List.of(why), Optional.empty(), Approval.NONE);
    }
}
