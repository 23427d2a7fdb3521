package halfwidth.run;

import halfwidth.vocabulary.Action;
import java.io.Serializable;
import java.util.List;

/** A value as a step left it, in a form that can be shown without the class it had in the page. */
public sealed interface Shown extends Serializable {
    /** A finite floating-point number. */
    record Real(double value) implements Shown {}

    /** A finite number with its standard uncertainty, in the same unit. */
    record Measured(double value, double standardUncertainty) implements Shown {}

    /** A whole number. */
    record Whole(long value) implements Shown {}

    /** True or false. */
    record Flag(boolean value) implements Shown {}

    /** What to do next, or why nothing. */
    record Advice(Action action) implements Shown {}

    /** Text, or anything else by its {@code toString()}. */
    record Words(String text) implements Shown {}

    /**
     * A table, or an array or list of numbers as a table of one column.
     *
     * @param columns the columns' names
     * @param rows the first rows' cells, numbers as {@code Double}, other values as {@code String},
     *     a missing one, as a number that is none, as null
     * @param left how many rows are not in {@code rows}
     * @param made whether it was made as a table, and is no array or list
     */
    record Grid(List<String> columns, List<List<Serializable>> rows, int left, boolean made)
            implements Shown {}

    /**
     * A plot.
     *
     * @param description what the plot shows, for those who cannot see it
     * @param digest tells the plot from any that looks otherwise
     * @param png the picture, empty until it is asked for
     */
    record Picture(String title, String description, String digest, byte[] png) implements Shown {
        /** The same plot with its picture. */
        public Picture drawn(byte[] picture) {
            return new Picture(title, description, digest, picture);
        }
    }

    /** Nothing: an empty optional, or a statement without a value. */
    record Nothing() implements Shown {}
}
