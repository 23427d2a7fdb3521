package halfwidth.record;

import java.util.stream.Collectors;

/**
 * Words out of a record, which somebody else wrote, on one line: else they could print lines that
 * look like the program's own, or move the cursor over them.
 */
public final class OneLine {
    private OneLine() {}

    /** The words with each character that is not seen written as its number. */
    public static String of(String words) {
        return words.codePoints().mapToObj(OneLine::visible).collect(Collectors.joining());
    }

    private static String visible(int letter) {
        return switch (Character.getType(letter)) {
            case Character.CONTROL,
                    Character.FORMAT,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR,
                    Character.SURROGATE ->
                    letter == '\n' ? "\\n" : "\\u%04x".formatted(letter);
            default -> Character.toString(letter);
        };
    }
}
