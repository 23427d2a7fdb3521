package halfwidth.localizer;

import halfwidth.value.Unit;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/**
 * The unit that a Javadoc tag states in parentheses, as in {@code the length (m), above 0}: the
 * spellings of the package's description, and no others.
 */
final class UnitTag {
    private static final Pattern PARENTHESES = Pattern.compile("\\(([^()]*)\\)");
    private static final Pattern CALLERS_CHOICE = Pattern.compile("unit|unit of [a-z][a-z' ]*");

    private UnitTag() {}

    /** What is wrong with the tag's text; "" if it states one unit. */
    static String problem(String text) {
        List<String> stated =
                PARENTHESES
                        .matcher(text)
                        .results()
                        .map((MatchResult found) -> found.group(1))
                        .filter(UnitTag::isUnit)
                        .toList();
        return switch (stated.size()) {
            case 0 -> "states no unit";
            case 1 -> "";
            default -> "states more than one unit, " + stated;
        };
    }

    private static boolean isUnit(String words) {
        String joined = words.replaceAll("\\s+", " ");
        return Unit.find(joined).isPresent() || CALLERS_CHOICE.matcher(joined).matches();
    }
}
