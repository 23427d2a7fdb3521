package halfwidth.page;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * When a result is shown that goes with an action.
 *
 * @param action the result that holds the action
 * @param amountOnly whether the result is a figure of the action, shown only while it has an
 *     amount; else it is shown unless the action is held
 */
public record ShownWhen(String action, boolean amountOnly) {
    static final String EXPECTED = "with NAME, or unless NAME is held, NAME a result";
    private static final Pattern WITH = Pattern.compile("with (\\w+)");
    private static final Pattern UNLESS = Pattern.compile("unless (\\w+) is held");

    /** Reads {@code with NAME} or {@code unless NAME is held}. */
    static Optional<ShownWhen> read(String cell) {
        Matcher with = WITH.matcher(cell);
        if (with.matches()) {
            return Optional.of(new ShownWhen(with.group(1), true));
        }
        Matcher unless = UNLESS.matcher(cell);
        return unless.matches()
                ? Optional.of(new ShownWhen(unless.group(1), false))
                : Optional.empty();
    }
}
