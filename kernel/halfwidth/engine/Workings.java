package halfwidth.engine;

import halfwidth.formula.EachRow;
import halfwidth.formula.Formula;
import halfwidth.formula.Term;
import halfwidth.formula.Terms;
import halfwidth.run.Proof;
import halfwidth.run.Rows;
import halfwidth.run.Shown;
import halfwidth.run.Worked;
import java.io.Serializable;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What a page's statements compute, as formulas, and whether their units follow.
 *
 * @param formulas by the statements' indices; none for a statement without a formula
 * @param rows what is computed row by row, by the place of its notes
 * @param proofs by the indices of the steps whose value is a number
 */
record Workings(
        Map<Integer, Formula> formulas, Map<Integer, EachRow> rows, Map<Integer, Proof> proofs)
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
        List<Formula> methods = formula == null ? List.of() : methods(List.of(formula.term()));
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

    /**
     * How a step came to its rows.
     *
     * @param seen by the place of what computes them
     * @param value what the step gave
     */
    List<Rows> rows(Map<Integer, RowsSeen> seen, Object value) {
        return seen.entrySet().stream()
                .filter(one -> rows.containsKey(one.getKey()) && one.getValue().any())
                .sorted(Map.Entry.comparingByKey())
                .map(one -> rows(rows.get(one.getKey()), one.getValue(), value))
                .toList();
    }

    private Rows rows(EachRow each, RowsSeen seen, Object value) {
        Map<RowsSeen.Seen, List<Rows.Why>> why =
                new TreeMap<>(Comparator.comparingInt(RowsSeen.Seen::number));
        choose(why, seen.first(), Rows.Why.FIRST);
        List<RowsSeen.Seen> ends = List.of(seen.least(), seen.greatest());
        Optional<RowsSeen.Seen> taken =
                ends.stream().filter(row -> isValue(row.result(), value)).findFirst();
        if (taken.isPresent()) {
            choose(why, taken.get(), Rows.Why.TAKEN);
        } else {
            boolean below = Math.abs(seen.least().result()) > Math.abs(seen.greatest().result());
            choose(why, ends.get(below ? 0 : 1), Rows.Why.FARTHEST);
        }
        choose(why, seen.last(), Rows.Why.LAST);
        List<Rows.Row> chosen =
                why.entrySet().stream()
                        .map(
                                row ->
                                        new Rows.Row(
                                                row.getKey().number(),
                                                row.getValue(),
                                                row.getKey().of().stream()
                                                        .map(CellView::words)
                                                        .toList(),
                                                shown(row.getKey().values())))
                        .toList();
        return new Rows(
                each,
                seen.count(),
                chosen,
                methods(each.parts().stream().map(EachRow.Part::term).toList()));
    }

    private static void choose(
            Map<RowsSeen.Seen, List<Rows.Why>> why, RowsSeen.Seen row, Rows.Why reason) {
        why.computeIfAbsent(row, r -> new ArrayList<>()).add(reason);
    }

    private static boolean isValue(double result, Object value) {
        return ValueView.brief(value) instanceof Shown.Real real && real.value() == result;
    }

    /** The page's methods that formulas call, and those that these call. */
    private List<Formula> methods(List<Term> terms) {
        Map<String, Formula> known = new HashMap<>();
        formulas.values().stream()
                .filter(Formula::method)
                .forEach(method -> known.put(method.name(), method));
        Map<String, Formula> found = new LinkedHashMap<>();
        Deque<Term> open = new ArrayDeque<>(terms);
        while (!open.isEmpty()) {
            Terms.all(open.pop())
                    .filter(part -> part instanceof Term.Call call && call.subject() == null)
                    .map(call -> known.get(((Term.Call) call).name()))
                    .filter(method -> method != null)
                    .filter(method -> found.putIfAbsent(method.name(), method) == null)
                    .forEach(method -> open.add(method.term()));
        }
        return List.copyOf(found.values());
    }
}
