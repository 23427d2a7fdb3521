package halfwidth.engine;

import halfwidth.formula.Formula;
import halfwidth.formula.Term;
import halfwidth.formula.Terms;
import halfwidth.run.Proof;
import halfwidth.run.Shown;
import halfwidth.run.Worked;
import java.io.Serializable;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a page's statements compute, as formulas, and whether their units follow.
 *
 * @param formulas by the statements' indices; none for a statement without a formula
 * @param proofs by the indices of the steps whose value is a number
 */
record Workings(Map<Integer, Formula> formulas, Map<Integer, Proof> proofs)
        implements Serializable {

    /**
     * How a step came to its value.
     *
     * @param notes the values it used, by place
     * @return empty if its value is no number
     */
    Optional<Worked> of(int index, Map<Integer, Object> notes) {
        if (!proofs.containsKey(index)) {
            return Optional.empty();
        }
        Formula formula = formulas.get(index);
        List<Formula> methods = formula == null ? List.of() : methods(formula);
        return Optional.of(new Worked(formula, shown(notes), methods, proofs.get(index)));
    }

    private static Map<Integer, Shown> shown(Map<Integer, Object> notes) {
        Map<Integer, Shown> shown = new HashMap<>();
        notes.forEach(
                (place, value) -> {
                    Shown one = ValueView.brief(value);
                    boolean finite =
                            !(one instanceof Shown.Real real) || Double.isFinite(real.value());
                    if (finite && !(one instanceof Shown.Words)) {
                        shown.put(place, one);
                    }
                });
        return shown;
    }

    /** The page's methods that a formula calls, and those that these call. */
    private List<Formula> methods(Formula formula) {
        Map<String, Formula> known = new HashMap<>();
        formulas.values().stream()
                .filter(Formula::method)
                .forEach(method -> known.put(method.name(), method));
        Map<String, Formula> found = new LinkedHashMap<>();
        Deque<Formula> open = new ArrayDeque<>(List.of(formula));
        while (!open.isEmpty()) {
            Terms.all(open.pop().term())
                    .filter(part -> part instanceof Term.Call call && call.subject() == null)
                    .map(call -> known.get(((Term.Call) call).name()))
                    .filter(method -> method != null)
                    .filter(method -> found.putIfAbsent(method.name(), method) == null)
                    .forEach(open::add);
        }
        return List.copyOf(found.values());
    }
}
