package halfwidth.search;

/**
 * Something that was found.
 *
 * @param page the name of the page it is on
 * @param title that page's title
 * @param kind what it is
 * @param name the variable it is, "" for a title or a heading
 * @param text what a reader sees of it
 * @param line the line of the page's file it stands at, 1-based
 */
public record Hit(String page, String title, Kind kind, String name, String text, int line) {

    /** What can be found, the most telling first. */
    public enum Kind {
        PAGE,
        HEADING,
        RESULT,
        FIELD,
        READINGS
    }
}
