package halfwidth.vocabulary;

import java.io.Serializable;

/**
 * Where on a sheet something is entered.
 *
 * @param name the input's name, or the table's
 * @param row the cell's row in the table as filled in, from 1; 0 for an input
 * @param column the cell's column; "" for an input
 */
public record EntryPlace(String name, int row, String column) implements Serializable {
    /**
     * @throws IllegalArgumentException if it is neither an input nor a cell
     */
    public EntryPlace {
        if (name.isEmpty() || row < 0 || (row == 0) != column.isEmpty()) {
            throw new IllegalArgumentException(
                    "an entry is an input, or a cell with a row from 1 and a column, not "
                            + name
                            + " "
                            + row
                            + " "
                            + column);
        }
    }
}
