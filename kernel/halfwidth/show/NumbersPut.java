package halfwidth.show;

import halfwidth.formula.Formula;
import halfwidth.formula.PlainFormula;
import halfwidth.formula.PutIn;
import halfwidth.formula.Term;
import halfwidth.formula.Terms;
import halfwidth.run.Shown;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Puts the numbers that a step or a row used into formulas.
 *
 * @param used by place
 */
public record NumbersPut(Map<Integer, Shown> used) {

    /** A formula with the numbers put in; empty if no number went into it by itself. */
    Optional<Term> in(Term formula) {
        return Optional.of(put(formula)).filter(term -> !term.equals(formula));
    }

    private Term put(Term term) {
        return PutIn.numbers(term, this::number);
    }

    private Optional<String> number(int place) {
        return Optional.ofNullable(used.get(place))
                .map(
                        value ->
                                value instanceof Shown.Measured
                                        ? "(" + Values.words(value) + ")"
                                        : Values.words(value));
    }

    /** What methods stand for; without those that only hand on to another. */
    List<Defined> methods(List<Formula> methods) {
        return methods.stream()
                .filter(method -> Terms.computes(method.term()))
                .map(this::defined)
                .toList();
    }

    private Defined defined(Formula method) {
        List<Term> parameters =
                method.parameters().stream()
                        .map(name -> (Term) new Term.Name(Term.NO_PLACE, name))
                        .toList();
        Term head = new Term.Call(Term.NO_PLACE, method.name(), null, parameters);
        return new Defined(head, method.term(), in(method.term()));
    }

    /**
     * A method of the page.
     *
     * @param numbers its formula with the numbers that went in; empty if it was called with several
     */
    public record Defined(Term head, Term formula, Optional<Term> numbers) {}

    /** The conditions in a formula, each with whether it held. */
    List<Branch> branches(Term formula) {
        List<Branch> branches = new ArrayList<>();
        Terms.all(formula)
                .filter(Term.Choice.class::isInstance)
                .map(Term.Choice.class::cast)
                .forEach(
                        choice -> {
                            if (used.get(choice.place()) instanceof Shown.Flag flag) {
                                Term condition = choice.condition();
                                branches.add(new Branch(condition, put(condition), flag.value()));
                            }
                        });
        return branches;
    }

    /** A condition, with names and with numbers, and whether it held. */
    public record Branch(Term condition, Term numbers, boolean held) {
        /** The condition as it was met, in plain text. */
        String words() {
            return PlainFormula.of(numbers) + (held ? "" : " is not so");
        }
    }
}
