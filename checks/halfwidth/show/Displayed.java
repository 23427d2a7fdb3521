package halfwidth.show;

import halfwidth.formula.Formula;
import halfwidth.formula.PlainFormula;
import halfwidth.formula.Term;
import halfwidth.formula.Terms;
import halfwidth.run.Shown;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What a reviewer sees of a number.
 *
 * @param formula with names
 * @param last what stands before the result: the formula with numbers, where any were put in
 * @param methods the page's methods whose formula is shown
 * @param handingOn the page's methods that the formula rests on and that only hand on to another
 * @param of the names that stand for a row, which differ from row to row
 * @param value what it came to
 */
record Displayed(
        Term formula,
        Term last,
        List<NumbersPut.Defined> methods,
        List<NumbersPut.Defined> handingOn,
        List<String> of,
        Shown value) {

    /** What is shown of a step; empty if it has no formula. */
    static Optional<Displayed> of(WorkedStep step) {
        return step.formula()
                .map(
                        formula ->
                                new Displayed(
                                        formula,
                                        step.numbers().orElse(formula),
                                        step.methods(),
                                        handingOn(step.worked().methods()),
                                        List.of(),
                                        step.value()));
    }

    /** What is shown of a number in a row; empty if it has no formula. */
    static Optional<Displayed> of(WorkedRows rows, WorkedRows.OneRow row, WorkedRows.Came came) {
        List<Formula> methods = rows.rows().methods();
        Map<String, Term> before = new HashMap<>();
        for (WorkedRows.Came one : row.numbers().subList(0, row.numbers().indexOf(came))) {
            before.put(one.name(), new Term.Literal(Values.words(one.value())));
        }
        return rows.formulas().stream()
                .filter(part -> part.name().equals(came.name()) && part.complete())
                .map(
                        part ->
                                new Displayed(
                                        part.formula(),
                                        put(came.numbers().orElse(part.formula()), before),
                                        new NumbersPut(Map.of()).methods(methods),
                                        handingOn(methods),
                                        rows.rows().each().of(),
                                        came.value()))
                .findFirst();
    }

    /** What the same row shows above for a name. */
    private static Term put(Term term, Map<String, Term> before) {
        if (term instanceof Term.Name name && before.containsKey(name.name())) {
            return before.get(name.name());
        }
        List<Term> parts = Terms.parts(term);
        List<Term> changed = parts.stream().map(part -> put(part, before)).toList();
        return changed.equals(parts) ? term : Terms.with(term, changed);
    }

    private static List<NumbersPut.Defined> handingOn(List<Formula> methods) {
        return methods.stream()
                .filter(method -> method.complete() && !Terms.computes(method.term()))
                .map(
                        method ->
                                new NumbersPut.Defined(
                                        new Term.Call(
                                                Term.NO_PLACE,
                                                method.name(),
                                                null,
                                                method.parameters().stream()
                                                        .<Term>map(
                                                                name ->
                                                                        new Term.Name(
                                                                                Term.NO_PLACE,
                                                                                name))
                                                        .toList()),
                                        method.term(),
                                        Optional.empty()))
                .toList();
    }

    /**
     * What is shown of a page's method that a step calls once, with the value that is shown for it.
     *
     * @return empty if the method is called more than once or by another, or its numbers or its
     *     value are not shown
     */
    static Optional<Displayed> of(WorkedStep step, NumbersPut.Defined method) {
        Displayed whole = of(step).orElseThrow();
        String name = ((Term.Call) method.head()).name();
        List<Optional<Shown>> values = new ArrayList<>();
        gather(name, whole.formula(), whole.last(), Optional.of(step.value()), values);
        boolean byOthers =
                step.methods().stream()
                        .flatMap(one -> Terms.all(one.formula()))
                        .anyMatch(term -> isCall(term, name));
        return values.size() == 1 && !byOthers && method.numbers().isPresent()
                ? values.get(0)
                        .map(
                                value ->
                                        new Displayed(
                                                method.formula(),
                                                method.numbers().get(),
                                                whole.methods(),
                                                whole.handingOn(),
                                                parameters(method),
                                                value))
                : Optional.empty();
    }

    private static List<String> parameters(NumbersPut.Defined method) {
        return ((Term.Call) method.head())
                .arguments().stream().map(term -> ((Term.Name) term).name()).toList();
    }

    private static boolean isCall(Term term, String name) {
        return term instanceof Term.Call call && call.subject() == null && call.name().equals(name);
    }

    /** Goes through a formula and the same with numbers side by side. */
    private static void gather(
            String name,
            Term formula,
            Term last,
            Optional<Shown> value,
            List<Optional<Shown>> values) {
        if (isCall(formula, name)) {
            boolean number =
                    last instanceof Term.Literal one && Printed.value(one) instanceof Double;
            values.add(
                    number
                            ? Optional.of(
                                    new Shown.Real((Double) Printed.value((Term.Literal) last)))
                            : value);
        }
        List<Term> parts = Terms.parts(formula);
        List<Term> numbers = Terms.parts(last);
        for (int i = 0; i < parts.size(); i++) {
            Term beside = numbers.size() == parts.size() ? numbers.get(i) : parts.get(i);
            gather(name, parts.get(i), beside, Optional.empty(), values);
        }
    }

    /** The same with another formula. */
    Displayed with(Term altered) {
        return new Displayed(formula, altered, methods, handingOn, of, value);
    }

    String text() {
        return PlainFormula.of(last);
    }

    /** The literals that stand where a value was put in; those of the formula are exact. */
    List<Term.Literal> putIn() {
        Set<Term> written = Collections.newSetFromMap(new IdentityHashMap<>());
        Terms.all(formula).forEach(written::add);
        return Terms.all(last)
                .filter(term -> term instanceof Term.Literal && !written.contains(term))
                .map(Term.Literal.class::cast)
                .toList();
    }
}
