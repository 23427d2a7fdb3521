package halfwidth.show;

import halfwidth.run.Outcome;
import halfwidth.run.Run;
import halfwidth.run.Run.Ran;
import halfwidth.vocabulary.EntryPlace;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Why a variable has no value at the end of a run, in words. */
final class Absence {
    /** Why there is nothing where something optional is left blank. */
    static final String OPTIONAL = "not filled in: optional";

    private Absence() {}

    static String of(String name, Run run) {
        return made(name, run).map(outcome -> of(outcome, run)).orElse("not computed by any step");
    }

    /** The optional inputs without which it is left out; none if it is not. */
    static List<String> leftBlank(String name, Run run) {
        return made(name, run)
                .filter(Outcome.Skipped.class::isInstance)
                .map(outcome -> ((Outcome.Skipped) outcome).names())
                .orElse(List.of());
    }

    /** The inputs that it waits for; none if it does not wait. */
    static List<String> awaited(String name, Run run) {
        return made(name, run)
                .filter(Outcome.Waiting.class::isInstance)
                .map(outcome -> ((Outcome.Waiting) outcome).names())
                .orElse(List.of());
    }

    /** What came of the last step that makes it. */
    private static Optional<Outcome> made(String name, Run run) {
        return run.steps().stream()
                .filter(ran -> ran.step().name().equals(name))
                .map(Ran::outcome)
                .reduce((first, second) -> second);
    }

    private static String of(Outcome outcome, Run run) {
        if (outcome instanceof Outcome.Waiting waiting) {
            return "waiting for " + String.join(", ", waiting.names());
        }
        if (outcome instanceof Outcome.Skipped skipped) {
            return OPTIONAL + " (" + String.join(", ", skipped.names()) + ")";
        }
        if (outcome instanceof Outcome.Held held) {
            return refusal(held, run)
                    .orElseGet(() -> "held back, since " + lines(held.lines()) + " failed");
        }
        if (outcome instanceof Outcome.Failed failed) {
            return failed.refused()
                    .map(Absence::refusal)
                    .orElseGet(() -> "failed at line " + failed.line());
        }
        return "without a value";
    }

    /** The entry that the page refuses, where that is what holds a step back. */
    private static Optional<String> refusal(Outcome.Held held, Run run) {
        return run.steps().stream()
                .filter(ran -> held.lines().contains(ran.step().line()))
                .map(Ran::outcome)
                .filter(Outcome.Failed.class::isInstance)
                .map(Outcome.Failed.class::cast)
                .flatMap(failed -> failed.refused().stream())
                .map(Absence::refusal)
                .findFirst();
    }

    /** The message itself stands at the entry, and once among what failed. */
    private static String refusal(EntryPlace entry) {
        return "cannot calculate: " + words(entry);
    }

    /** Where an entry stands, as in {@code cuts row 3, 90 Hz side}. */
    static String words(EntryPlace entry) {
        return entry.row() == 0
                ? entry.name()
                : "%s row %s, %s".formatted(entry.name(), entry.row(), entry.column());
    }

    static String lines(List<Integer> lines) {
        String numbers = lines.stream().map(String::valueOf).collect(Collectors.joining(", "));
        return (lines.size() == 1 ? "line " : "lines ") + numbers;
    }
}
