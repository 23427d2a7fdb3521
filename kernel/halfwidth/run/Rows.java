package halfwidth.run;

import halfwidth.formula.EachRow;
import halfwidth.formula.Formula;
import java.io.Serializable;
import java.util.List;
import java.util.Map;

/**
 * How a step came to its rows, by a few of them.
 *
 * @param each what is computed for each
 * @param count how many rows there were
 * @param rows the first, the last and the worst that gave a number, in their order
 * @param methods the page's own methods that they rest on
 */
public record Rows(EachRow each, int count, List<Row> rows, List<Formula> methods)
        implements Serializable {
    public Rows {
        rows = List.copyOf(rows);
        methods = List.copyOf(methods);
    }

    /** Why a row is shown. */
    public enum Why {
        FIRST,
        /** The step's own value is the number of this row, as with a greatest or a least one. */
        TAKEN,
        /** Its number, or the last of its numbers, is the one farthest from zero. */
        FARTHEST,
        LAST
    }

    /**
     * A row.
     *
     * @param number counted from 1
     * @param of what it is the row of, in words, in the order of the names in {@link EachRow#of()}
     * @param used the values that it used and gave, by place
     */
    public record Row(int number, List<Why> why, List<String> of, Map<Integer, Shown> used)
            implements Serializable {
        public Row {
            why = List.copyOf(why);
            of = List.copyOf(of);
            used = Map.copyOf(used);
        }
    }
}
