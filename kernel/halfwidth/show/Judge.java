package halfwidth.show;

import halfwidth.page.Result;
import halfwidth.page.ShownWhen;
import halfwidth.page.ShownWhen.Condition;
import halfwidth.run.Run;
import halfwidth.run.Shown;
import halfwidth.vocabulary.Action;
import java.util.Optional;

/** Judges one result on its unrounded value. A value on its limit keeps it. */
record Judge(Result result, Run run) {
    /** In parts of the last printed place: less than this is the rounding of binary sums. */
    private static final double ROUNDING = 1e-9;

    /** A limit nearer than that many standard uncertainties cannot be told from the value. */
    private static final double COVERAGE = 2;

    Answer answer() {
        Optional<Answer> withheld = result.shown().flatMap(this::withheld);
        return withheld.orElseGet(this::judged);
    }

    /** The answer while what it goes with or rests on keeps it from being shown. */
    private Optional<Answer> withheld(ShownWhen when) {
        Shown condition = run.finals().get(when.name());
        if (when.variable().isPresent()) {
            return new Shown.Flag(false).equals(condition)
                    ? Optional.of(answer(Optional.empty(), Ruling.blank(Absence.OPTIONAL)))
                    : Optional.empty();
        }
        if (condition instanceof Shown.Nothing) {
            // No action was called for, as for a transmitter that the station has not.
            return Optional.of(
                    answer(Optional.of(condition), new Ruling(Verdict.NO_LIMIT, "", "")));
        }
        if (!(condition instanceof Shown.Advice advice)) {
            return Optional.of(answer(Optional.empty(), withoutValue(when.name())));
        }
        Action action = advice.action();
        boolean held = action.state() == Action.State.HELD;
        if (held || when.condition() == Condition.WITH_ACTION && !action.hasAmount()) {
            String why =
                    switch (action.state()) {
                        case HELD -> "not before the advice is settled";
                        case TO_DO -> "not before that is done";
                        case FINISHED -> "nothing is left to do";
                    };
            return Optional.of(
                    answer(
                            Optional.of(new Shown.Nothing()),
                            new Ruling(Verdict.NO_LIMIT, "", why)));
        }
        return Optional.empty();
    }

    private Answer answer(Optional<Shown> value, Ruling ruling) {
        return new Answer(result, value, Optional.empty(), Limits.of(result, run), ruling);
    }

    private Answer judged() {
        Optional<Shown> value = Optional.ofNullable(run.finals().get(result.name()));
        Optional<Double> uncertainty = uncertainty(value);
        Limits limits = Limits.of(result, run);
        Ruling ruling =
                value.map(computed -> ruling(computed, limits, uncertainty))
                        .orElseGet(() -> withoutValue(result.name()));
        return new Answer(result, value, uncertainty, limits, ruling);
    }

    private Ruling withoutValue(String name) {
        String why = Absence.of(name, run);
        return Absence.leftBlank(name, run).isEmpty() ? Ruling.notJudged(why) : Ruling.blank(why);
    }

    /** The one that the page declares, or that the value carries with it. */
    private Optional<Double> uncertainty(Optional<Shown> value) {
        if (value.isPresent()
                && value.get() instanceof Shown.Measured measured
                && result.uncertainty().isEmpty()) {
            return Optional.of(measured.standardUncertainty());
        }
        return result.uncertainty()
                .flatMap(name -> Limits.number(run.finals().get(name)))
                .filter(size -> size >= 0);
    }

    private Ruling ruling(Shown value, Limits limits, Optional<Double> uncertainty) {
        Optional<Double> number = Limits.number(value);
        boolean none = value instanceof Shown.Nothing;
        if (value instanceof Shown.Advice advice) {
            return new Ruling(verdict(advice.action().state()), "", "");
        }
        if (!limits.declared()) {
            return new Ruling(Verdict.NO_LIMIT, "", none ? "" : missing(uncertainty));
        }
        if (number.isEmpty()) {
            return Ruling.notJudged(none ? "there is no value" : "the value is not a number");
        }
        if (limits.contradictory()) {
            return Ruling.notJudged("the lower limit is above the upper one");
        }
        double margin = limits.margin(number.get());
        if (margin < -slack(number.get())) {
            return new Ruling(Verdict.NOT_MET, "", remark(margin, uncertainty));
        }
        return limits.unknown().isEmpty()
                ? new Ruling(Verdict.MET, "", remark(margin, uncertainty))
                : Ruling.notJudged(limits.unknown());
    }

    private static Verdict verdict(Action.State state) {
        return switch (state) {
            case HELD -> Verdict.HELD;
            case TO_DO -> Verdict.TO_DO;
            case FINISHED -> Verdict.FINISHED;
        };
    }

    private double slack(double number) {
        return Math.max(ROUNDING * Math.pow(10, -result.decimals()), 4 * Math.ulp(number));
    }

    private String remark(double margin, Optional<Double> uncertainty) {
        if (uncertainty.isEmpty() || Math.abs(margin) >= COVERAGE * uncertainty.get()) {
            return missing(uncertainty);
        }
        return margin < 0
                ? "but by less than the uncertainty"
                : "but the limit is within the uncertainty";
    }

    /** What to say where an uncertainty is declared and did not come out. */
    private String missing(Optional<Double> uncertainty) {
        return uncertainty.isPresent() || result.uncertainty().isEmpty()
                ? ""
                : "its uncertainty is " + absence(result.uncertainty().get());
    }

    private String absence(String name) {
        return run.finals().containsKey(name)
                ? "not a number of at least 0"
                : Absence.of(name, run);
    }
}
