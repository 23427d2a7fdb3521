package halfwidth.job;

/**
 * Where on a page a value stands.
 *
 * @param name the input's name, or the table's
 * @param row the row of a table, from 1; 0 for an input
 * @param column the column of a table; "" for an input
 */
public record Place(String name, int row, String column) {
    /**
     * @throws JobRefused if it is neither an input nor a cell
     */
    public Place {
        if (name.isEmpty() || row < 0 || row > LAST_KNOWN_ROW || (row == 0) != column.isEmpty()) {
            throw new JobRefused(
                    String.format(
                            "place \"%s\" row %s \"%s\" must be an input, or a cell with a row from"
                                    + " 1 to %s and a column",
                            name, row, column, LAST_KNOWN_ROW));
        }
    }

    /** A table holds no more rows; what an older program entered below them is left out. */
    public static final int MOST_ROWS = 5_000;

    /** The last row that an older program entered anything into. */
    private static final int LAST_KNOWN_ROW = 1_000_000;

    /** An input. */
    public static Place input(String name) {
        return new Place(name, 0, "");
    }

    /** A cell of a table of readings; rows count from 1. */
    public static Place cell(String table, int row, String column) {
        return new Place(table, row, column);
    }

    boolean isCell() {
        return row > 0;
    }

    /** As a person reads it: {@code cuts, row 3, near}. */
    @Override
    public String toString() {
        return isCell() ? name + ", row " + row + ", " + column : name;
    }
}
