package halfwidth.show;

import halfwidth.formula.Formula;
import halfwidth.formula.PlainFormula;
import halfwidth.formula.PutIn;
import halfwidth.formula.Term;
import halfwidth.formula.Terms;
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
        return formula()
                .map(this::withNumbers)
                .filter(term -> !term.equals(worked.formula().term()));
    }

    private Term withNumbers(Term term) {
        return PutIn.numbers(term, this::number);
    }

    private Optional<String> number(int place) {
        return Optional.ofNullable(worked.used().get(place))
                .map(
                        used ->
                                used instanceof Shown.Measured
                                        ? "(" + Values.words(used) + ")"
                                        : Values.words(used));
    }

    /** What it came to, with its unit. */
    public String result() {
        return Values.words(value, step.unit());
    }

    /**
     * The page's own methods that it rests on, each with the formula it stands for; without those
     * that only hand on to another.
     */
    public List<Defined> methods() {
        return worked.methods().stream()
                .filter(method -> Terms.all(method.term()).anyMatch(WorkedStep::isMath))
                .map(this::defined)
                .toList();
    }

    private static boolean isMath(Term term) {
        return term instanceof Term.Binary binary && binary.operation().isArithmetic()
                || term instanceof Term.Known
                || term instanceof Term.Negative;
    }

    private Defined defined(Formula method) {
        List<Term> parameters =
                method.parameters().stream()
                        .map(name -> (Term) new Term.Name(Term.NO_PLACE, name))
                        .toList();
        Term head = new Term.Call(Term.NO_PLACE, method.name(), null, parameters);
        Term numbers = withNumbers(method.term());
        return new Defined(
                head,
                method.term(),
                Optional.of(numbers).filter(term -> !term.equals(method.term())));
    }

    /**
     * A method of the page.
     *
     * @param numbers the formula with the numbers that this step put in; empty if it was called
     *     with several
     */
    public record Defined(Term head, Term formula, Optional<Term> numbers) {}

    /** The conditions on the way to the value, each with whether it held. */
    public List<Branch> branches() {
        List<Branch> branches = new ArrayList<>();
        formula().ifPresent(term -> branches(term, branches));
        return branches;
    }

    private void branches(Term term, List<Branch> branches) {
        Terms.all(term)
                .filter(Term.Choice.class::isInstance)
                .map(Term.Choice.class::cast)
                .forEach(
                        choice -> {
                            if (worked.used().get(choice.place()) instanceof Shown.Flag flag) {
                                Term condition = choice.condition();
                                branches.add(
                                        new Branch(
                                                condition, withNumbers(condition), flag.value()));
                            }
                        });
    }

    /** A condition, with names and with numbers, and whether it held. */
    public record Branch(Term condition, Term numbers, boolean held) {}

    /** The step in one line of text. */
    public String text() {
        List<String> forms = new ArrayList<>(List.of(step.name()));
        forms.add(formula().map(PlainFormula::of).orElseGet(() -> code()));
        numbers().map(PlainFormula::of).ifPresent(forms::add);
        forms.add(result());
        String branches =
                branches().stream()
                        .map(
                                branch ->
                                        PlainFormula.of(branch.numbers())
                                                + (branch.held() ? "" : " is not so"))
                        .collect(Collectors.joining("; "));
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
