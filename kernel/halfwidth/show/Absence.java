package halfwidth.show;

import halfwidth.run.Outcome;
import halfwidth.run.Run;
import halfwidth.run.Run.Ran;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Why a variable has no value at the end of a run, in words. */
final class Absence {
    private Absence() {}

    static String of(String name, Run run) {
        return made(name, run).map(Absence::of).orElse("not computed by any step");
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

    private static String of(Outcome outcome) {
        if (outcome instanceof Outcome.Waiting waiting) {
            return "waiting for " + String.join(", ", waiting.names());
        }
        if (outcome instanceof Outcome.Held held) {
            return "held back, since " + lines(held.lines()) + " failed";
        }
        if (outcome instanceof Outcome.Failed failed) {
            return "failed at line " + failed.line();
        }
        return "without a value";
    }

    static String lines(List<Integer> lines) {
        String numbers = lines.stream().map(String::valueOf).collect(Collectors.joining(", "));
        return (lines.size() == 1 ? "line " : "lines ") + numbers;
    }
}
