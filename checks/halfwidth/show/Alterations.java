package halfwidth.show;

import halfwidth.formula.Function;
import halfwidth.formula.Operation;
import halfwidth.formula.Term;
import halfwidth.formula.Terms;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Formulas that are wrong in one place, as a display might be. */
final class Alterations {
    /** What was done to a formula. */
    enum Kind {
        SIGN("another sign between two terms"),
        UPSIDE_DOWN("numerator and denominator, or minuend and subtrahend, swapped"),
        TIMES_FOR_OVER("a product for a quotient, or the reverse"),
        NEGATIVE("a sign left out"),
        FUNCTION("another function, or one left out"),
        NUMBER("another number, by a hundredth"),
        TEXT("another key or column that the page has in that place"),
        NAME("another variable of the page of the same type"),
        ARGUMENTS("two arguments swapped"),
        METHOD("least for most, or the reverse");

        final String words;

        Kind(String words) {
            this.words = words;
        }
    }

    record Altered(Kind kind, Term term) {}

    private static final Map<Function, Function> OTHER = new EnumMap<>(Function.class);

    static {
        pair(Function.SIN, Function.COS);
        pair(Function.MIN, Function.MAX);
        pair(Function.EXP, Function.CBRT);
        OTHER.put(Function.TAN, Function.COS);
        OTHER.put(Function.ATAN, Function.COS);
        OTHER.put(Function.LOG10, Function.LOG);
        OTHER.put(Function.LOG, Function.LOG10);
    }

    private static void pair(Function one, Function other) {
        OTHER.put(one, other);
        OTHER.put(other, one);
    }

    private static final Map<String, String> METHODS =
            Map.of("least", "most", "most", "least", "min", "max", "max", "min");

    /** What else could stand in the place of a name or a text. */
    interface Others {
        List<String> names(String name);

        List<String> texts(Term.Call call, int argument);
    }

    private final Others others;

    Alterations(Others others) {
        this.others = others;
    }

    /** A formula with each thing in turn that can be wrong in it. */
    List<Altered> of(Term term) {
        List<Altered> altered = new ArrayList<>(here(term));
        List<Term> parts = Terms.parts(term);
        for (int i = 0; i < parts.size(); i++) {
            for (Altered part : of(parts.get(i))) {
                List<Term> changed = new ArrayList<>(parts);
                changed.set(i, part.term());
                altered.add(new Altered(part.kind(), Terms.with(term, changed)));
            }
        }
        return altered;
    }

    private List<Altered> here(Term term) {
        if (term instanceof Term.Binary binary) {
            return binary(binary);
        }
        if (term instanceof Term.Negative negative) {
            return List.of(new Altered(Kind.NEGATIVE, negative.of()));
        }
        if (term instanceof Term.Known known) {
            return List.of(new Altered(Kind.FUNCTION, other(known)));
        }
        if (term instanceof Term.Literal literal) {
            return number(literal);
        }
        if (term instanceof Term.Name name) {
            return others.names(name.name()).stream()
                    .map(other -> new Altered(Kind.NAME, new Term.Name(name.place(), other)))
                    .toList();
        }
        return term instanceof Term.Call call ? call(call) : List.of();
    }

    private static List<Altered> binary(Term.Binary binary) {
        Term left = binary.left();
        Term right = binary.right();
        return switch (binary.operation()) {
            case PLUS -> List.of(altered(Kind.SIGN, Operation.MINUS, left, right));
            case MINUS ->
                    List.of(
                            altered(Kind.SIGN, Operation.PLUS, left, right),
                            altered(Kind.UPSIDE_DOWN, Operation.MINUS, right, left));
            case TIMES -> List.of(altered(Kind.TIMES_FOR_OVER, Operation.OVER, left, right));
            case OVER ->
                    List.of(
                            altered(Kind.TIMES_FOR_OVER, Operation.TIMES, left, right),
                            altered(Kind.UPSIDE_DOWN, Operation.OVER, right, left));
            default -> List.of();
        };
    }

    private static Altered altered(Kind kind, Operation operation, Term left, Term right) {
        return new Altered(kind, new Term.Binary(operation, left, right));
    }

    private static Term other(Term.Known known) {
        Function other = OTHER.get(known.function());
        return other == null ? known.arguments().get(0) : new Term.Known(other, known.arguments());
    }

    private static List<Altered> number(Term.Literal literal) {
        if (!(Printed.value(literal) instanceof Double value)) {
            return List.of();
        }
        double other = value == 0 ? 0.01 : 1.01 * value;
        String digits = BigDecimal.valueOf(other).round(new MathContext(6)).toString();
        return List.of(new Altered(Kind.NUMBER, new Term.Literal(digits)));
    }

    private List<Altered> call(Term.Call call) {
        List<Altered> altered = new ArrayList<>();
        for (int i = 0; i < call.arguments().size(); i++) {
            for (String other : others.texts(call, i)) {
                List<Term> changed = new ArrayList<>(call.arguments());
                changed.set(i, new Term.Code(other));
                altered.add(new Altered(Kind.TEXT, with(call, call.name(), changed)));
            }
            if (i > 0 && !call.arguments().get(i).equals(call.arguments().get(i - 1))) {
                List<Term> changed = new ArrayList<>(call.arguments());
                Collections.swap(changed, i - 1, i);
                altered.add(new Altered(Kind.ARGUMENTS, with(call, call.name(), changed)));
            }
        }
        if (METHODS.containsKey(call.name())) {
            altered.add(
                    new Altered(
                            Kind.METHOD, with(call, METHODS.get(call.name()), call.arguments())));
        }
        return altered;
    }

    private static Term.Call with(Term.Call call, String name, List<Term> arguments) {
        return new Term.Call(call.place(), name, call.subject(), arguments);
    }
}
