package halfwidth.page;

import halfwidth.value.Entry;
import halfwidth.value.Kind;
import java.util.Optional;

/**
 * One column of a table of readings, declared as {@code name [unit]}: {@code [DDM]} is a DDM entry,
 * {@code [DDM size]} a size in DDM, {@code [text]} or no bracket is text, {@code [date]} a date,
 * {@code [count]} a whole number, {@code [choice A|B]} one of these words, any other unit a number.
 *
 * @param name the column's name in the Tablesaw table
 * @param unit the unit of its numbers, "1" for plain ones; "" for words and dates
 */
public record Column(String name, Kind kind, String unit) {

    /**
     * Reads what a person typed into a cell; a blank one is a missing reading.
     *
     * @throws halfwidth.value.EntryRefused if it is not understood
     */
    public Optional<Entry> read(String typed) {
        return typed.isBlank() ? Optional.empty() : Optional.of(Entry.read(kind, unit, typed));
    }
}
