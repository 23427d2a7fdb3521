package halfwidth.show;

import java.util.List;

/** What is shown does not say what this is. */
final class NotSaid extends IllegalArgumentException {
    private static final long serialVersionUID = 1;

    NotSaid(String what) {
        super("not said: " + what);
    }

    NotSaid(String what, List<Object> of) {
        this(what + of.stream().map(NotSaid::kind).toList());
    }

    private static String kind(Object value) {
        if (value instanceof Fit.Unknown unknown) {
            return "what " + unknown.name() + " is";
        }
        return value instanceof Fit.Callable
                ? "a rule"
                : value == null ? "nothing" : value.getClass().getSimpleName();
    }
}
