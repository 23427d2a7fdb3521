package halfwidth.show;

import halfwidth.engine.PageHere;
import halfwidth.formula.Term;
import java.lang.reflect.Array;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * Works out a formula as it is shown, from its terms alone: a number that is printed is read from
 * its digits, a name is the page's variable, a call goes to the method that has that name where it
 * is shown to be called, and a method of the page goes by the formula that is shown for it. None of
 * the page's compiled steps is used, nor the notes that the step took as it ran.
 */
final class TermEvaluator {
    private final PageHere page;
    private final PageTypes types;
    private final Displayed shown;
    private final Printed.Place moved;
    private final int way;
    private final PageCalls calls;

    /**
     * @param moved the printed number to move by half a unit of its last digit; null for none
     * @param way 1 to move it up, -1 down
     */
    TermEvaluator(PageHere page, Displayed shown, Printed.Place moved, int way) {
        this.page = page;
        this.types = new PageTypes(page);
        this.calls = new PageCalls(page, types, shown, this::of);
        this.shown = shown;
        this.moved = moved;
        this.way = way;
    }

    /**
     * Works a formula out.
     *
     * @return a number, an object, or what {@link Fit} makes one of
     * @throws NotSaid if what is shown does not suffice
     * @throws IllegalArgumentException if a call refuses its arguments
     */
    Object of(Term term) {
        return of(term, Map.of());
    }

    /** How the page's methods were called. */
    PageCalls calls() {
        return calls;
    }

    private Object of(Term term, Map<String, Object> bound) {
        if (term instanceof Term.Literal literal) {
            boolean moves = moved != null && literal == moved.literal();
            return moves ? Printed.moved(literal, moved.number(), way) : Printed.value(literal);
        }
        if (term instanceof Term.Constant constant) {
            return constant.symbol().equals("π") ? Math.PI : Math.E;
        }
        if (term instanceof Term.Name name) {
            return named(name.name(), bound);
        }
        if (term instanceof Term.Element element) {
            Object array = of(element.array(), bound);
            if (array == null || !array.getClass().isArray()) {
                throw new NotSaid("an element of", List.of(array));
            }
            int index =
                    Fit.of(of(element.index(), bound), int.class)
                            .map(f -> (int) f.value())
                            .orElseThrow(() -> new NotSaid("which element"));
            return Array.get(array, index);
        }
        if (term instanceof Term.Call call) {
            return called(call, bound);
        }
        if (term instanceof Term.Known known) {
            return known(known, bound);
        }
        return composed(term, bound);
    }

    private Object composed(Term term, Map<String, Object> bound) {
        if (term instanceof Term.Binary binary) {
            return joined(binary, bound);
        }
        if (term instanceof Term.Negative negative) {
            return -number(negative.of(), bound);
        }
        if (term instanceof Term.Not not) {
            return !truth(not.of(), bound);
        }
        if (term instanceof Term.Choice choice) {
            return of(truth(choice.condition(), bound) ? choice.then() : choice.otherwise(), bound);
        }
        if (term instanceof Term.Rule rule) {
            return (Fit.Callable) arguments -> of(rule.gives(), with(bound, rule.of(), arguments));
        }
        return text(((Term.Code) term).text(), bound);
    }

    private Object text(String text, Map<String, Object> bound) {
        if (text.startsWith("\"")) {
            return text.substring(1, text.length() - 1).translateEscapes();
        }
        int dot = text.lastIndexOf('.');
        if (dot > 0) {
            Object on = named(text.substring(0, dot), bound);
            return (Fit.Callable) arguments -> calls.on(on, text.substring(dot + 1), arguments);
        }
        return text.equals("null")
                ? null
                : (Fit.Callable) arguments -> calls.handedOn(text, arguments);
    }

    static Map<String, Object> with(
            Map<String, Object> bound, List<String> names, List<Object> values) {
        Map<String, Object> all = new HashMap<>(bound);
        for (int i = 0; i < names.size(); i++) {
            all.put(names.get(i), values.get(i));
        }
        return all;
    }

    private Object named(String name, Map<String, Object> bound) {
        if (bound.containsKey(name)) {
            return bound.get(name);
        }
        boolean known = page.values().containsKey(name) && !shown.of().contains(name);
        return known
                ? page.values().get(name)
                : types.constant(name)
                        .filter(Number.class::isInstance)
                        .orElseGet(() -> new Fit.Unknown(name));
    }

    private double number(Term term, Map<String, Object> bound) {
        Object value = of(term, bound);
        return Fit.number(value).orElseThrow(() -> new NotSaid("a number", List.of(value)));
    }

    private boolean truth(Term term, Map<String, Object> bound) {
        return of(term, bound) instanceof Boolean truth
                ? truth
                : refused("whether " + term + " is so");
    }

    private static boolean refused(String what) {
        throw new NotSaid(what);
    }

    private Object joined(Term.Binary binary, Map<String, Object> bound) {
        Term left = binary.left();
        Term right = binary.right();
        return switch (binary.operation()) {
            case OR -> truth(left, bound) || truth(right, bound);
            case AND -> truth(left, bound) && truth(right, bound);
            case EQUAL -> same(left, right, bound);
            case UNEQUAL -> !same(left, right, bound);
            case LESS -> number(left, bound) < number(right, bound);
            case AT_MOST -> number(left, bound) <= number(right, bound);
            case MORE -> number(left, bound) > number(right, bound);
            case AT_LEAST -> number(left, bound) >= number(right, bound);
            default ->
                    Arithmetic.joined(
                            binary.operation(), number(left, bound), number(right, bound));
        };
    }

    private boolean same(Term left, Term right, Map<String, Object> bound) {
        Object one = of(left, bound);
        Object other = of(right, bound);
        if (one instanceof Number || other instanceof Number) {
            return number(left, bound) == number(right, bound);
        }
        return Objects.equals(meant(one, other), meant(other, one));
    }

    private static Object meant(Object value, Object beside) {
        return value instanceof Fit.Unknown unknown && beside != null
                ? PageTypes.constant(beside.getClass(), unknown.name()).orElse(value)
                : value;
    }

    private double known(Term.Known known, Map<String, Object> bound) {
        List<Double> arguments = new ArrayList<>();
        known.arguments().forEach(one -> arguments.add(number(one, bound)));
        return Arithmetic.value(known.function(), arguments);
    }

    private Object called(Term.Call call, Map<String, Object> bound) {
        List<Object> arguments = new ArrayList<>();
        call.arguments().forEach(one -> arguments.add(of(one, bound)));
        if (call.subject() != null) {
            Object on = of(call.subject(), bound);
            return call.name().isEmpty()
                    ? PageCalls.unwrapped(on)
                    : calls.on(on, call.name(), arguments);
        }
        return calls.plain(call.name(), arguments);
    }
}
