package halfwidth.show;

/** The sheet's margin, which carries the line that each block has in the page's file. */
final class Margin {
    private Margin() {}

    /** Opens an element with its line number in the margin. */
    static void open(Html html, String tag, String kind, int line) {
        html.open(tag, "class", kind + " numbered", "id", "line-" + line);
        html.open("span", "class", "line").element("span", "line ", "class", "unseen");
        html.text(Integer.toString(line)).close();
    }
}
