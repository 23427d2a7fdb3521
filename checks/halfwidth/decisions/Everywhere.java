package halfwidth.decisions;

import halfwidth.page.ShownWhen;
import halfwidth.run.Outcome;
import halfwidth.show.Answer;
import halfwidth.show.Limits;
import halfwidth.show.Verdict;
import halfwidth.vocabulary.Action;
import java.util.Optional;

/** What holds for every page, whatever was entered. */
final class Everywhere {
    /** The rounding of a sum of decimal figures in binary. */
    private static final double ROUNDING = 1e-9;

    private Everywhere() {}

    /** What is wrong with a sheet; "" if nothing. */
    static String objection(Decided decided) {
        for (Outcome.Failed failed : decided.failures()) {
            boolean inWords =
                    failed.refused().isPresent()
                            || failed.reason().startsWith("A value was refused: ");
            if (!inWords) {
                return "an exception reaches the reader: " + failed;
            }
        }
        for (Answer answer : decided.answers()) {
            String wrong = objection(decided, answer);
            if (!wrong.isEmpty()) {
                return answer.result().name() + " " + wrong;
            }
        }
        return "";
    }

    private static String objection(Decided decided, Answer answer) {
        Optional<Double> number = answer.number();
        if (number.isPresent() && !Double.isFinite(number.get())) {
            return "is " + number.get();
        }
        if (answer.uncertainty().filter(u -> !Double.isFinite(u)).isPresent()) {
            return "has the uncertainty " + answer.uncertainty().get();
        }
        boolean shown =
                number.isPresent()
                        || answer.value().isPresent()
                                && !answer.shownValue().equals("none")
                                && !answer.shownValue().isEmpty();
        Optional<ShownWhen> when = answer.result().shown();
        if (shown && when.isPresent() && when.get().variable().isEmpty()) {
            Optional<Action> action = decided.action(when.get().name());
            boolean held = action.filter(a -> a.state() != Action.State.HELD).isEmpty();
            boolean figure = when.get().condition() == ShownWhen.Condition.WITH_ACTION;
            if (held || figure && !action.get().hasAmount()) {
                return answer.shownValue() + " stands beside: " + action.map(Action::words);
            }
        }
        return number.map(value -> judgement(answer, value)).orElse("");
    }

    /** A value beyond a limit is not met, one within it is not "not met". */
    private static String judgement(Answer answer, double value) {
        Limits limits = answer.limits();
        double slack = ROUNDING * Math.max(1, Math.abs(value));
        boolean below = limits.least().filter(least -> value < least.at() - slack).isPresent();
        boolean above = limits.most().filter(most -> value > most.at() + slack).isPresent();
        boolean clearlyWithin =
                limits.least().filter(least -> value < least.at() + slack).isEmpty()
                        && limits.most().filter(most -> value > most.at() - slack).isEmpty();
        if ((below || above) && answer.verdict() != Verdict.NOT_MET && !contradict(limits)) {
            return value + " breaks its limit and is " + answer.verdict().words();
        }
        if (clearlyWithin && answer.verdict() == Verdict.NOT_MET) {
            return value + " keeps its limit and is not met";
        }
        return "";
    }

    private static boolean contradict(Limits limits) {
        return limits.least().isPresent()
                && limits.most().isPresent()
                && limits.least().get().at() > limits.most().get().at();
    }
}
