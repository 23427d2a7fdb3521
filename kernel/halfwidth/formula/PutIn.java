package halfwidth.formula;

import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;

/** Puts numbers into a formula. */
public final class PutIn {
    private final IntFunction<Optional<String>> noted;

    private PutIn(IntFunction<Optional<String>> noted) {
        this.noted = noted;
    }

    /**
     * The same formula with each value that was noted in place of its name, and of a choice the
     * term that was taken.
     *
     * @param noted what was noted for a place, as it is to be written; {@code true} or {@code
     *     false} for a condition
     */
    public static Term numbers(Term term, IntFunction<Optional<String>> noted) {
        return new PutIn(noted).into(term);
    }

    private Term into(Term term) {
        if (term instanceof Term.Choice choice) {
            return noted.apply(choice.place())
                    .map(held -> into(held.equals("true") ? choice.then() : choice.otherwise()))
                    .orElseGet(
                            () ->
                                    new Term.Choice(
                                            Term.NO_PLACE,
                                            into(choice.condition()),
                                            into(choice.then()),
                                            into(choice.otherwise())));
        }
        int place = Terms.place(term);
        Optional<String> number = place == Term.NO_PLACE ? Optional.empty() : noted.apply(place);
        return number.isPresent() ? new Term.Literal(number.get()) : parts(term);
    }

    private Term parts(Term term) {
        if (term instanceof Term.Element element) {
            return new Term.Element(Term.NO_PLACE, into(element.array()), into(element.index()));
        }
        if (term instanceof Term.Call call) {
            Term subject = call.on().map(this::into).orElse(null);
            return new Term.Call(Term.NO_PLACE, call.name(), subject, all(call.arguments()));
        }
        if (term instanceof Term.Known known) {
            return new Term.Known(known.function(), all(known.arguments()));
        }
        if (term instanceof Term.Binary binary) {
            return new Term.Binary(binary.operation(), into(binary.left()), into(binary.right()));
        }
        if (term instanceof Term.Negative negative) {
            return new Term.Negative(into(negative.of()));
        }
        if (term instanceof Term.Not not) {
            return new Term.Not(into(not.of()));
        }
        return term;
    }

    private List<Term> all(List<Term> terms) {
        return terms.stream().map(this::into).toList();
    }
}
