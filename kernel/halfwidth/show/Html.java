package halfwidth.show;

import java.util.ArrayDeque;
import java.util.Deque;

/** Writes HTML so that nothing gets in unescaped but markup that is ours. */
public final class Html {
    private static final int REPLACEMENT = 0xFFFD;

    private final StringBuilder out = new StringBuilder();
    private final Deque<String> open = new ArrayDeque<>();

    /**
     * Opens an element.
     *
     * @param attributes names and values in turn; a value is escaped
     */
    public Html open(String tag, String... attributes) {
        tag(tag, attributes);
        out.append('>');
        open.push(tag);
        return this;
    }

    /** Closes the element that was opened last. */
    public Html close() {
        out.append("</").append(open.pop()).append(">");
        return this;
    }

    /** Writes an element that holds only text. */
    public Html element(String tag, String text, String... attributes) {
        return open(tag, attributes).text(text).close();
    }

    /** Writes an element that has no content, as {@code img}. */
    public Html single(String tag, String... attributes) {
        tag(tag, attributes);
        out.append(" />");
        return this;
    }

    /** Writes text, escaped. */
    public Html text(String text) {
        out.append(escaped(text));
        return this;
    }

    /**
     * Writes a variable's name, which may break in two before a capital letter and nowhere else.
     */
    Html name(String name) {
        out.append(escaped(name).replaceAll("(?<=[a-z0-9])(?=[A-Z])", "<wbr />"));
        return this;
    }

    /** Writes markup that is known to be harmless: ours, or sanitised prose. */
    public Html trusted(String markup) {
        out.append(markup);
        return this;
    }

    /** Ends a line, for whoever reads the markup. */
    public Html line() {
        out.append('\n');
        return this;
    }

    private void tag(String tag, String... attributes) {
        out.append('<').append(tag);
        for (int i = 0; i < attributes.length; i += 2) {
            out.append(' ').append(attributes[i]).append("=\"");
            out.append(escaped(attributes[i + 1])).append('"');
        }
    }

    private static String escaped(String text) {
        return readable(text)
                .replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;")
                .replace("'", "&#39;");
    }

    /** Replaces the control characters that HTML forbids. */
    static String readable(String text) {
        return text.codePoints()
                .map(letter -> isAllowed(letter) ? letter : REPLACEMENT)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
    }

    private static boolean isAllowed(int letter) {
        boolean space = letter == '\n' || letter == '\t' || letter == '\r';
        boolean surrogate = letter >= 0xD800 && letter <= 0xDFFF;
        return space || !Character.isISOControl(letter) && !surrogate;
    }

    @Override
    public String toString() {
        if (!open.isEmpty()) {
            throw new IllegalStateException("still open: " + open);
        }
        return out.toString();
    }
}
