package halfwidth.web;

import halfwidth.show.Html;
import java.util.stream.Stream;

/** Small pieces of markup that several views need. */
final class Marks {
    private Marks() {}

    /** The line of the page's file, in the margin. */
    static void line(Html html, int line) {
        html.open("span", "class", "line").element("span", "line ", "class", "unseen");
        html.text(Integer.toString(line)).close();
    }

    /** How a visit stands, in words that are marked where somebody should look. */
    static void standing(Html html, String words) {
        String kind =
                switch (words) {
                    case "met" -> "verdict met";
                    case "not met", "failed", "refused", "held" -> "verdict not-met";
                    case "out of date", "not judged", "not run", "to do" -> "verdict not-judged";
                    default -> "standing";
                };
        html.element("span", words, "class", kind);
    }

    /** A unit as written beside a number: that of a plain number is not. */
    static String unit(String unit) {
        return unit.equals("1") ? "" : unit;
    }

    /** Attributes and more of them. */
    static String[] with(String[] attributes, String... more) {
        return Stream.of(attributes, more).flatMap(Stream::of).toArray(String[]::new);
    }
}
