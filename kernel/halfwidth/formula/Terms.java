package halfwidth.formula;

import java.util.List;
import java.util.stream.Stream;

/** The parts of terms. */
public final class Terms {
    private Terms() {}

    /** A term and all its parts, the outer before the inner. */
    public static Stream<Term> all(Term term) {
        return Stream.concat(Stream.of(term), parts(term).stream().flatMap(Terms::all));
    }

    private static List<Term> parts(Term term) {
        if (term instanceof Term.Element element) {
            return List.of(element.array(), element.index());
        }
        if (term instanceof Term.Call call) {
            return Stream.concat(call.on().stream(), call.arguments().stream()).toList();
        }
        if (term instanceof Term.Known known) {
            return known.arguments();
        }
        if (term instanceof Term.Binary binary) {
            return List.of(binary.left(), binary.right());
        }
        if (term instanceof Term.Negative negative) {
            return List.of(negative.of());
        }
        if (term instanceof Term.Not not) {
            return List.of(not.of());
        }
        if (term instanceof Term.Choice choice) {
            return List.of(choice.condition(), choice.then(), choice.otherwise());
        }
        return term instanceof Term.Rule rule ? List.of(rule.gives()) : List.of();
    }

    /** Whether there is arithmetic or a known function in it, and not only calls. */
    public static boolean computes(Term term) {
        return all(term)
                .anyMatch(
                        part ->
                                part instanceof Term.Known
                                        || part instanceof Term.Negative
                                        || part instanceof Term.Binary binary
                                                && binary.operation().isArithmetic());
    }

    /** Whether every part has a form of its own, so that it says more than the Java does. */
    static boolean complete(Term term) {
        return all(term).noneMatch(part -> part instanceof Term.Code code && !code.isText());
    }

    /** The place under which a term's value is noted; {@link Term#NO_PLACE} if it has none. */
    public static int place(Term term) {
        if (term instanceof Term.Name name) {
            return name.place();
        }
        if (term instanceof Term.Element element) {
            return element.place();
        }
        if (term instanceof Term.Call call) {
            return call.place();
        }
        return term instanceof Term.Choice choice ? choice.place() : Term.NO_PLACE;
    }
}
