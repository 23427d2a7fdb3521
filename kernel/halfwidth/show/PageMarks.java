package halfwidth.show;

import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What each printed page carries in its margins, so that a loose one still tells where it belongs
 * and that it is a worked example.
 */
record PageMarks(Sheet sheet) {

    String css() {
        String where =
                Stream.of(sheet.fileName(), whose(), Dates.words(sheet.stamp().ran()))
                        .filter(words -> !words.isEmpty())
                        .collect(Collectors.joining("   "));
        String example = sheet.example() ? "WORKED EXAMPLE – invented values" : "";
        return """
                @page { size: A4; margin: 11mm 10mm 10mm; font: 7pt sans-serif;
                  @top-center { content: %s; font-weight: bold; }
                  @bottom-left { content: %s; }
                  @bottom-right { content: counter(page) " / " counter(pages); }
                }
                """
                .formatted(quoted(example), quoted(where));
    }

    /** Station, runway and visit, as far as they are known. */
    private String whose() {
        String runway = heading("Runway");
        return Stream.of(
                        heading("Station"),
                        runway.isEmpty() ? "" : "runway " + runway,
                        heading("Visit"))
                .filter(words -> !words.isEmpty())
                .collect(Collectors.joining(", "));
    }

    private String heading(String name) {
        return sheet.heading().entrySet().stream()
                .filter(entry -> entry.getKey().equalsIgnoreCase(name))
                .map(entry -> entry.getValue().strip())
                .findFirst()
                .orElse("");
    }

    /** A CSS string in which every character that could end it is spelled out. */
    private static String quoted(String text) {
        StringBuilder css = new StringBuilder("\"");
        text.codePoints()
                .forEach(
                        letter -> {
                            if (Character.isLetterOrDigit(letter) || letter == ' ') {
                                css.appendCodePoint(letter);
                            } else {
                                css.append("\\%06x ".formatted(letter));
                            }
                        });
        return css.append('"').toString();
    }
}
