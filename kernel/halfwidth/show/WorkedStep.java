package halfwidth.show;

import halfwidth.formula.Formula;
import halfwidth.formula.PlainFormula;
import halfwidth.formula.Term;
import halfwidth.run.Outcome;
import halfwidth.run.Run;
import halfwidth.run.Run.Ran;
import halfwidth.run.Shown;
import halfwidth.run.Step;
import halfwidth.run.Worked;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A numeric step as a reviewer reads it: the formula, the same with the numbers put in, and what
 * came of it.
 *
 * @param step the step
 * @param value what it came to
 * @param worked how
 */
public record WorkedStep(Step step, Shown value, Worked worked) {

    /** The step in this form; empty unless its value is a number and the run kept its workings. */
    public static Optional<WorkedStep> of(Run run, Ran ran) {
        Worked worked = run.worked().get(ran.step().index());
        return worked != null && ran.outcome() instanceof Outcome.Done done
                ? Optional.of(new WorkedStep(ran.step(), done.value(), worked))
                : Optional.empty();
    }

    /** What it computes, where that can be written as a formula. */
    public Optional<Term> formula() {
        return Optional.ofNullable(worked.formula()).filter(Formula::complete).map(Formula::term);
    }

    /** The formula with the numbers put in; empty if no number went into it by itself. */
    public Optional<Term> numbers() {
        return formula().flatMap(put()::in);
    }

    NumbersPut put() {
        return new NumbersPut(worked.used());
    }

    /** What it came to, with its unit. */
    public String result() {
        return Values.words(value, step.unit());
    }

    /**
     * The page's own methods that it rests on, each with the formula it stands for; without those
     * that only hand on to another.
     */
    public List<NumbersPut.Defined> methods() {
        return put().methods(worked.methods());
    }

    /** The conditions on the way to the value, each with whether it held. */
    public List<NumbersPut.Branch> branches() {
        return formula().map(put()::branches).orElse(List.of());
    }

    /** The step in one line of text. */
    public String text() {
        List<String> forms = new ArrayList<>(List.of(step.name()));
        forms.add(formula().map(PlainFormula::of).orElseGet(() -> code()));
        numbers().map(PlainFormula::of).ifPresent(forms::add);
        forms.add(result());
        String branches =
                branches().stream().map(NumbersPut.Branch::words).collect(Collectors.joining("; "));
        return String.join(" = ", forms.stream().distinct().toList())
                + (branches.isEmpty() ? "" : "  [" + branches + "]");
    }

    /** The Java behind the name, for a step too complex to be a formula. */
    private String code() {
        return step.code()
                .replaceAll("\\s+", " ")
                .replaceFirst("^[^=]*=\\s*", "")
                .replaceFirst(";$", "");
    }
}
