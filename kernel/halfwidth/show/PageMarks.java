package halfwidth.show;

/**
 * What each printed page carries in its margins, so that a loose one still tells where it belongs
 * and that it is a worked example.
 */
record PageMarks(Sheet sheet) {

    String css() {
        String where = sheet.fileName() + "   " + Dates.words(sheet.stamp().ran());
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
