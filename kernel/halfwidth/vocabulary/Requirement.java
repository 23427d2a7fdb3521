package halfwidth.vocabulary;

import java.util.function.DoublePredicate;
import tech.tablesaw.api.NumericColumn;
import tech.tablesaw.api.Table;

/** How a page refuses what was entered: at its field or cell, in the crew's words. */
public final class Requirement {
    private Requirement() {}

    /**
     * Refuses an input unless a condition holds. The step fails, what rests on it is not computed,
     * and the message stands at the field.
     *
     * @param holds the condition
     * @param input the input's name
     * @param message what is wrong and what to type, in one line
     * @return true, so that a requirement can be a step of its own
     * @throws EntryFault if it does not hold
     */
    public static boolean require(boolean holds, String input, String message) {
        return require(holds, new EntryPlace(input, 0, ""), message);
    }

    /**
     * Refuses a cell of a table of readings unless a condition holds.
     *
     * @param holds the condition
     * @param table the table's name
     * @param row the row as filled in, from 1
     * @param column the column's name
     * @param message what is wrong and what to type, in one line
     * @return true
     * @throws EntryFault if it does not hold
     */
    public static boolean require(
            boolean holds, String table, int row, String column, String message) {
        return require(holds, new EntryPlace(table, row, column), message);
    }

    /**
     * Refuses columns of a table that should be running totals, at the first cell that is blank or
     * below the one above it.
     *
     * @param table the table as filled in
     * @param columns the names of number columns that hold all that was done up to each row
     * @return the table, so that what uses it rests on the requirement
     * @throws EntryFault if a cell is blank or a total shrinks
     */
    public static Table runningTotals(Table table, String... columns) {
        for (int row = 0; row < table.rowCount(); row++) {
            for (String name : columns) {
                NumericColumn<?> column = table.numberColumn(name);
                require(
                        !column.isMissing(row),
                        table.name(),
                        row + 1,
                        name,
                        "is blank; type all that was done up to here, 0 for nothing");
                require(
                        row == 0 || column.getDouble(row) >= column.getDouble(row - 1),
                        table.name(),
                        row + 1,
                        name,
                        "is less than in the row above; type all that was done up to here, not the"
                                + " last step alone");
            }
        }
        return table;
    }

    /**
     * Refuses a number column of a table at the first cell for which a condition does not hold; a
     * blank cell is passed over.
     *
     * @param table the table as filled in
     * @param column the column's name
     * @param holds the condition, on the cell in the column's unit
     * @param message what is wrong and what to type, in one line
     * @return the table, so that what uses it rests on the requirement
     * @throws EntryFault if it does not hold for a cell
     */
    public static Table requireEach(
            Table table, String column, DoublePredicate holds, String message) {
        NumericColumn<?> cells = table.numberColumn(column);
        for (int row = 0; row < table.rowCount(); row++) {
            boolean kept = cells.isMissing(row) || holds.test(cells.getDouble(row));
            require(kept, table.name(), row + 1, column, message);
        }
        return table;
    }

    private static boolean require(boolean holds, EntryPlace place, String message) {
        if (!holds) {
            throw new EntryFault(place, message);
        }
        return true;
    }
}
