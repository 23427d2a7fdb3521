package halfwidth.vocabulary;

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

    private static boolean require(boolean holds, EntryPlace place, String message) {
        if (!holds) {
            throw new EntryFault(place, message);
        }
        return true;
    }
}
