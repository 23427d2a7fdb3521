package halfwidth.run;

import java.io.Serializable;

/**
 * One top-level statement of a page.
 *
 * @param index its place among all statements of the page, which the kernel counts from 0
 * @param line the line in the page's file where it starts, 1-based
 * @param code its text without the trailing comment
 * @param name the variable it declares or assigns, "" if none, as for a method or a type
 * @param unit the unit named by its trailing comment, "" if none
 * @param note the rest of the trailing comment; the source, for a check
 */
public record Step(int index, int line, String code, String name, String unit, String note)
        implements Serializable {}
