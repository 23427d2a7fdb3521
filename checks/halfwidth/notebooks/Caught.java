package halfwidth.notebooks;

import halfwidth.page.Page;
import halfwidth.page.PageRefused;
import halfwidth.run.Outcome;
import halfwidth.run.Run;
import halfwidth.show.Answer;
import halfwidth.show.Verdict;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** By what a mistake in a page comes to light. */
enum Caught {
    /** The page, or one of its steps, is refused with words about a unit. */
    UNITS,
    /** A check does not hold, or a step fails. */
    CHECKS,
    /** A result that kept its limit does no more. */
    LIMITS,
    NONE;

    private static final Pattern OF_A_UNIT = Pattern.compile("\\b[Uu]nits?\\b");

    static Caught by(PageRefused refusal) {
        return OF_A_UNIT.matcher(refusal.getMessage()).find() ? UNITS : CHECKS;
    }

    static Caught by(Page page, Run run, List<Answer> sound) {
        if (failures(run.steps()).anyMatch(Caught::tellsOfAUnit)) {
            return UNITS;
        }
        boolean notDone =
                Stream.concat(run.steps().stream(), run.checks().stream())
                        .anyMatch(ran -> !(ran.outcome() instanceof Outcome.Done));
        if (notDone) {
            return CHECKS;
        }
        return notMet(Answer.of(page, run)) > notMet(sound) ? LIMITS : NONE;
    }

    private static Stream<Outcome.Failed> failures(List<Run.Ran> ran) {
        return ran.stream()
                .map(Run.Ran::outcome)
                .filter(Outcome.Failed.class::isInstance)
                .map(Outcome.Failed.class::cast);
    }

    private static boolean tellsOfAUnit(Outcome.Failed failure) {
        String words = failure.reason() + " " + failure.detail() + " " + failure.advice();
        return OF_A_UNIT.matcher(words).find();
    }

    private static long notMet(List<Answer> answers) {
        return answers.stream().filter(answer -> answer.verdict() == Verdict.NOT_MET).count();
    }
}
