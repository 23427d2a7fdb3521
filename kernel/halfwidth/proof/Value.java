package halfwidth.proof;

import com.sun.source.util.TreePath;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * What stands for a value while units are worked out. A list, an array or an optional of numbers is
 * like one of its numbers, and a row of a table is like the table.
 */
sealed interface Value
        permits Amount,
                Value.Thing,
                Value.Columns,
                Value.Text,
                Value.Rule,
                Value.Nothing,
                Value.Unknown {
    Value THING = new Thing(null);
    Value NOTHING = new Nothing();

    /**
     * Anything that is no number.
     *
     * @param about the amount it was made of, for what takes and gives back any unit; may be null
     */
    record Thing(Amount about) implements Value {}

    /** A table, or a row of it. */
    record Columns(Map<String, Value> byName) implements Value {}

    /** A text that is known. */
    record Text(String text) implements Value {}

    /** A lambda or a method's name. */
    record Rule(Function<List<Value>, Value> of, TreePath where) implements Value {}

    /** What is empty or not a number, which fits any unit. */
    record Nothing() implements Value {}

    record Unknown(String why) implements Value {}

    /** A value that is one or the other. */
    default Value or(Value other) {
        if (this instanceof Nothing || other instanceof Unknown) {
            return other;
        }
        if (other instanceof Nothing || this instanceof Unknown) {
            return this;
        }
        if (this instanceof Amount one && other instanceof Amount two) {
            if (one.free() && two.free() && !one.factors().equals(two.factors())) {
                return one.plainly(); // which number it is, is known only at run time
            }
            return one.free() ? two : two.free() ? one : one.plus(two, "stands beside");
        }
        if (this instanceof Columns one && other instanceof Columns two) {
            Map<String, Value> both = new HashMap<>(one.byName());
            two.byName().forEach((name, value) -> both.merge(name, value, Value::or));
            return new Columns(both);
        }
        return this instanceof Amount || other instanceof Amount
                ? new Unknown("one of its values is no number that is known here")
                : this;
    }
}
