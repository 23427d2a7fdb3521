package halfwidth.formula;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** The parts of terms. */
public final class Terms {
    private Terms() {}

    /** A term and all its parts, the outer before the inner. */
    public static Stream<Term> all(Term term) {
        return Stream.concat(Stream.of(term), parts(term).stream().flatMap(Terms::all));
    }

    /** What a term is made of, in its order. */
    public static List<Term> parts(Term term) {
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

    /** The same term made of other parts, as many as it has. */
    public static Term with(Term term, List<Term> parts) {
        if (term instanceof Term.Element element) {
            return new Term.Element(element.place(), parts.get(0), parts.get(1));
        }
        if (term instanceof Term.Call call) {
            int subject = call.on().isPresent() ? 1 : 0;
            return new Term.Call(
                    call.place(),
                    call.name(),
                    subject == 0 ? null : parts.get(0),
                    parts.subList(subject, parts.size()));
        }
        if (term instanceof Term.Known known) {
            return new Term.Known(known.function(), parts);
        }
        if (term instanceof Term.Binary binary) {
            return new Term.Binary(binary.operation(), parts.get(0), parts.get(1));
        }
        if (term instanceof Term.Negative) {
            return new Term.Negative(parts.get(0));
        }
        if (term instanceof Term.Not) {
            return new Term.Not(parts.get(0));
        }
        if (term instanceof Term.Choice choice) {
            return new Term.Choice(choice.place(), parts.get(0), parts.get(1), parts.get(2));
        }
        return term instanceof Term.Rule rule ? new Term.Rule(rule.of(), parts.get(0)) : term;
    }

    /** The same term with what names stand for in their place. */
    static Term inFull(Term term, Map<String, Term> names) {
        if (term instanceof Term.Name name && names.containsKey(name.name())) {
            return names.get(name.name());
        }
        return with(term, parts(term).stream().map(part -> inFull(part, names)).toList());
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
