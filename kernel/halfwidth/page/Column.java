package halfwidth.page;

import halfwidth.value.Kind;

/**
 * One column of a table of readings, declared as {@code name [unit]}: {@code [DDM]} is a DDM entry,
 * {@code [text]} or no bracket is text, {@code [date]} a date, any other unit a number.
 *
 * @param name the column's name in the Tablesaw table
 * @param unit the unit of its numbers; "" for text and dates
 */
public record Column(String name, Kind kind, String unit) {}
