package halfwidth.formula;

import java.io.Serializable;
import java.util.List;

/**
 * What is computed anew for each row: by a rule that is handed to a method, as in {@code row ->
 * row.getDouble("x") / 2}, or by the body of a loop.
 *
 * @param place the number under which its rows are noted
 * @param of the names that stand for the row or its number; empty for a loop without any
 * @param parts what is computed, in order; of a rule one, whose value is noted under {@code place}
 */
public record EachRow(int place, List<String> of, List<Part> parts) implements Serializable {
    public EachRow {
        of = List.copyOf(of);
        parts = List.copyOf(parts);
    }

    /**
     * One number of a row.
     *
     * @param name what it is kept in; "" for what a rule gives
     * @param term how it is computed
     * @param place where its value is noted
     */
    public record Part(String name, Term term, int place) implements Serializable {
        /** Whether the formula says more than the Java does. */
        public boolean complete() {
            return Terms.complete(term);
        }

        /** Whether it only asks a rule, whose rows are shown by themselves. */
        boolean handsOn() {
            return !Terms.computes(term)
                    && Terms.all(term)
                            .anyMatch(
                                    part ->
                                            part instanceof Term.Call call
                                                    && call.name().startsWith("apply"));
        }
    }

    /** Whether it computes anything itself. */
    public boolean computes() {
        return !parts.stream().allMatch(Part::handsOn);
    }
}
