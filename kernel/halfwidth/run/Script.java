package halfwidth.run;

import java.io.Serializable;
import java.util.List;

/**
 * What the worker needs of a page: its inputs, its code and the names of the variables whose final
 * values are wanted.
 *
 * @param pieces in the order of the page
 * @param wanted variables to report at the end
 */
public record Script(List<Piece> pieces, List<String> wanted) implements Serializable {

    public Script {
        pieces = List.copyOf(pieces);
        wanted = List.copyOf(wanted);
    }

    /** A part of the page that becomes snippets. */
    public sealed interface Piece extends Serializable {}

    /**
     * An input or a table of readings, declared as a variable of this name.
     *
     * @param line where the page declares it, 1-based
     * @param type its Java type as written in source: double, int, String, java.time.LocalDate or
     *     tech.tablesaw.api.Table
     */
    public record Variable(int line, String name, String type) implements Piece {}

    /**
     * A block of top-level statements.
     *
     * @param line the line in the page's file of its first line, 1-based
     * @param checks whether its statements are checks
     */
    public record Code(int line, String text, boolean checks) implements Piece {}
}
