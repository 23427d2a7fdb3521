package halfwidth.page;

import halfwidth.value.Entry;
import halfwidth.value.Kind;
import java.util.Optional;

/**
 * One column of a table of readings, declared as {@code name [unit]}: {@code [DDM]} is a DDM entry,
 * {@code [DDM size]} a size in DDM, {@code [text]} or no bracket is text, {@code [date]} a date,
 * {@code [count]} a whole number, {@code [choice A|B]} one of these words, any other unit a number.
 * Behind any of them {@code optional} may stand, as in {@code reference [DDM optional]}.
 *
 * @param name the column's name in the Tablesaw table
 * @param unit the unit of its numbers, "1" for plain ones; "" for words and dates
 * @param optional whether its cells may be left blank, so that a blank one is no missing reading
 */
public record Column(String name, Kind kind, String unit, boolean optional) {

    /** A column whose cells have to be filled in. */
    public Column(String name, Kind kind, String unit) {
        this(name, kind, unit, false);
    }

    /** Whether the same is typed into both, be they optional or not. */
    boolean takesTheSame(Column other) {
        return kind.equals(other.kind) && unit.equals(other.unit);
    }

    /**
     * Reads what a person typed into a cell; a blank one has none.
     *
     * @throws halfwidth.value.EntryRefused if it is not understood
     */
    public Optional<Entry> read(String typed) {
        return typed.isBlank() ? Optional.empty() : Optional.of(Entry.read(kind, unit, typed));
    }
}
