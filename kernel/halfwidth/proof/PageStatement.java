package halfwidth.proof;

import java.util.Map;

/**
 * A statement of a page, as compiled.
 *
 * @param text its Java; "" for an input
 * @param name what it declares or assigns, "" if nothing
 * @param type of its value, as written in Java
 * @param number whether its value is a number that has to have a unit
 * @param unit the unit that it states, "" if none
 * @param units of a table's columns, by name; an input's own stands under ""
 */
public record PageStatement(
        Kind kind,
        String text,
        String name,
        String type,
        boolean number,
        String unit,
        Map<String, String> units) {
    /** What a statement is to the compiler. */
    public enum Kind {
        INPUT,
        IMPORT,
        VARIABLE,
        MEMBER,
        OTHER,
        /** It does not compile, or has no part in the page's values. */
        LEFT_OUT
    }

    public PageStatement {
        units = Map.copyOf(units);
    }
}
