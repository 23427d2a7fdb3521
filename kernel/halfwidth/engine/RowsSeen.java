package halfwidth.engine;

import java.util.List;
import java.util.Map;

/** Of rows that were computed one after the other, those worth showing. */
final class RowsSeen {
    /**
     * A row that gave a number.
     *
     * @param number counted from 1
     * @param result its number, or the last of them
     * @param of what it is the row of, as its rule or loop names it
     * @param values what it used and gave, by place
     */
    record Seen(int number, double result, List<Object> of, Map<Integer, Object> values) {}

    private int count;
    private Seen first;
    private Seen last;
    private Seen least;
    private Seen greatest;

    void add(double result, List<Object> of, Map<Integer, Object> values) {
        count++;
        if (Double.isNaN(result)) {
            return;
        }
        Seen row = new Seen(count, result, of, values);
        first = first == null ? row : first;
        last = row;
        least = least == null || result < least.result ? row : least;
        greatest = greatest == null || result > greatest.result ? row : greatest;
    }

    /** How many there were, those without a number too. */
    int count() {
        return count;
    }

    /** Whether any gave a number; only then is there a first one. */
    boolean any() {
        return first != null;
    }

    Seen first() {
        return first;
    }

    Seen last() {
        return last;
    }

    Seen least() {
        return least;
    }

    Seen greatest() {
        return greatest;
    }
}
