package halfwidth.formula;

import java.io.Serializable;
import java.util.List;
import java.util.Optional;

/**
 * A formula, or a part of one. Where a part has a place, its value in a run is noted under that
 * number; {@link #NO_PLACE} means that it is not noted.
 */
public sealed interface Term extends Serializable {
    int NO_PLACE = -1;

    /** A number as written, as in {@code 0.0254}, or a truth value. */
    record Literal(String digits) implements Term {}

    /** π or e, which keep their letter when numbers are put in. */
    record Constant(String symbol) implements Term {}

    /** A variable or a named constant. */
    record Name(int place, String name) implements Term {}

    /** {@code array[index]}. */
    record Element(int place, Term array, Term index) implements Term {}

    /**
     * A method's value.
     *
     * @param subject what it was called on; null if nothing. Not optional, since it is stored
     */
    record Call(int place, String name, Term subject, List<Term> arguments) implements Term {
        public Call {
            arguments = List.copyOf(arguments);
        }

        /** The method's own name, without that of its type; "" where it only unwraps. */
        public String method() {
            return name.substring(name.lastIndexOf('.') + 1);
        }

        Optional<Term> on() {
            return Optional.ofNullable(subject);
        }
    }

    /** A function that every reader knows, as in {@code sqrt(x)}. */
    record Known(Function function, List<Term> arguments) implements Term {
        public Known {
            arguments = List.copyOf(arguments);
        }
    }

    record Binary(Operation operation, Term left, Term right) implements Term {}

    record Negative(Term of) implements Term {}

    record Not(Term of) implements Term {}

    /**
     * One of two terms.
     *
     * @param place where it is noted whether the condition held
     */
    record Choice(int place, Term condition, Term then, Term otherwise) implements Term {}

    /** A rule for each of several values, as in {@code x ↦ x + 1}. */
    record Rule(List<String> of, Term gives) implements Term {
        public Rule {
            of = List.copyOf(of);
        }
    }

    /** Text, or Java that has no form of its own here. */
    record Code(String text) implements Term {
        /** Whether it is a text in quotation marks, or a name. */
        boolean isText() {
            return text.startsWith("\"") || text.matches("[\\w.]+");
        }
    }
}
