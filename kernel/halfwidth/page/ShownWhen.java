package halfwidth.page;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * When a result is shown that is not always.
 *
 * @param name of the result that holds an action, or of the page variable that holds a truth value
 */
public record ShownWhen(String name, Condition condition) {
    /** What has to hold. */
    public enum Condition {
        /** The action has an amount, of which the result is a figure. */
        WITH_ACTION("with (\\w+)"),
        /** The action is not held. */
        UNLESS_HELD("unless (\\w+) is held"),
        /** The truth value is true: else the result rests on something optional left blank. */
        IF_TRUE("if (\\w+)");

        private final Pattern pattern;

        Condition(String pattern) {
            this.pattern = Pattern.compile(pattern);
        }
    }

    static final String EXPECTED =
            "with NAME, or unless NAME is held, NAME a result; or if NAME, NAME a truth value";

    /** Reads {@code with NAME}, {@code unless NAME is held} or {@code if NAME}. */
    static Optional<ShownWhen> read(String cell) {
        for (Condition condition : Condition.values()) {
            Matcher matcher = condition.pattern.matcher(cell);
            if (matcher.matches()) {
                return Optional.of(new ShownWhen(matcher.group(1), condition));
            }
        }
        return Optional.empty();
    }

    /** The page variable that has to be true; empty if it goes with an action. */
    public Optional<String> variable() {
        return condition == Condition.IF_TRUE ? Optional.of(name) : Optional.empty();
    }
}
