package halfwidth.show;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Text as a terminal lays it out, in character cells. */
final class Line {
    private Line() {}

    /** How many character cells a text takes: none for combining marks, two for wide letters. */
    static int width(String text) {
        return text.codePoints().map(Line::width).sum();
    }

    private static int width(int letter) {
        return switch (Character.getType(letter)) {
            case Character.NON_SPACING_MARK, Character.ENCLOSING_MARK, Character.FORMAT -> 0;
            default -> isWide(letter) ? 2 : 1;
        };
    }

    private static boolean isWide(int letter) {
        boolean fullForm = letter >= 0xFF01 && letter <= 0xFF60;
        return fullForm
                || letter >= 0x1F300
                || switch (Character.UnicodeScript.of(letter)) {
                    case HAN, HIRAGANA, KATAKANA, HANGUL -> true;
                    default -> false;
                };
    }

    static String padRight(String text, int room) {
        return text + " ".repeat(Math.max(0, room - width(text)));
    }

    static String padLeft(String text, int room) {
        return " ".repeat(Math.max(0, room - width(text))) + text;
    }

    /** Spells out control characters, which could move the cursor or recolour the terminal. */
    static String safe(String text) {
        return text.codePoints()
                .mapToObj(
                        letter ->
                                Character.isISOControl(letter)
                                        ? spelledOut(letter)
                                        : Character.toString(letter))
                .collect(Collectors.joining());
    }

    private static String spelledOut(int letter) {
        return letter == '\n' || letter == '\t' ? " " : "\\u%04x".formatted(letter);
    }

    /**
     * Breaks a text at its spaces into lines of at most so many cells, unless one word is longer.
     */
    static List<String> wrap(String text, int room) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : safe(text).strip().split(" +")) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (!line.isEmpty() && width(longer) > room) {
                lines.add(line);
                line = word;
            } else {
                line = longer;
            }
        }
        if (!line.isEmpty()) {
            lines.add(line);
        }
        return lines;
    }
}
