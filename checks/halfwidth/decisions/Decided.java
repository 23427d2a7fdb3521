package halfwidth.decisions;

import halfwidth.page.Filled;
import halfwidth.run.Outcome;
import halfwidth.run.Run;
import halfwidth.run.Shown;
import halfwidth.show.Answer;
import halfwidth.vocabulary.Action;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a page made of a set of readings.
 *
 * @param filled what was entered
 * @param run what came of it
 * @param answers its results as a sheet shows them
 */
record Decided(Filled filled, Run run, List<Answer> answers) {

    static Decided of(Filled filled, Run run) {
        return new Decided(filled, run, Answer.of(filled.page(), run));
    }

    Answer answer(String result) {
        return answers.stream()
                .filter(answer -> answer.result().name().equals(result))
                .findFirst()
                .orElseThrow(() -> new AssertionError("the page has no result " + result));
    }

    /** The number that the sheet shows; empty where it shows none. */
    OptionalDouble number(String result) {
        Optional<Double> number = answer(result).number();
        return number.isPresent() ? OptionalDouble.of(number.get()) : OptionalDouble.empty();
    }

    /** The action; empty where the page could not say any. */
    Optional<Action> action(String result) {
        return answer(result).action();
    }

    /** Whether a result has a limit to keep. */
    static boolean isLimited(Answer answer) {
        return answer.limits().least().isPresent() || answer.limits().most().isPresent();
    }

    boolean says(String result, Action.State state) {
        return action(result).filter(action -> action.state() == state).isPresent();
    }

    /** The words of a result, "" if it has none. */
    String words(String result) {
        return answer(result).value().isPresent() ? answer(result).shownValue() : "";
    }

    List<Outcome.Failed> failures() {
        return run.steps().stream()
                .map(Run.Ran::outcome)
                .filter(Outcome.Failed.class::isInstance)
                .map(Outcome.Failed.class::cast)
                .toList();
    }

    /** Whether the page refuses what was entered, in words meant for the reader. */
    boolean refuses() {
        return !failures().isEmpty();
    }

    /** A number that a page variable had at the end; empty if it had none. */
    OptionalDouble variable(String name) {
        return run.finals().get(name) instanceof Shown.Real real
                ? OptionalDouble.of(real.value())
                : OptionalDouble.empty();
    }
}
