package halfwidth.show;

import halfwidth.engine.PageHere;
import halfwidth.formula.Function;
import halfwidth.formula.Operation;
import halfwidth.formula.Term;
import halfwidth.localizer.uncertainty.Estimate;
import java.lang.reflect.Array;
import java.lang.reflect.Executable;
import java.lang.reflect.Method;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;

/**
 * Works out a formula as it is shown, from its terms alone: a number that is printed is read from
 * its digits, a name is the page's variable, a call goes to the method that has that name where it
 * is shown to be called, and a method of the page goes by the formula that is shown for it. None of
 * the page's compiled steps is used, nor the notes that the step took as it ran.
 */
final class TermEvaluator {
    private final PageHere page;
    private final PageTypes types;
    private final List<NumbersPut.Defined> defined;
    private final Printed.Place moved;
    private final int way;
    private final Set<String> asTheyAre = new LinkedHashSet<>();

    /**
     * @param defined the page's methods whose formula is shown
     * @param moved the printed number to move by half a unit of its last digit; null for none
     * @param way 1 to move it up, -1 down
     */
    TermEvaluator(PageHere page, List<NumbersPut.Defined> defined, Printed.Place moved, int way) {
        this.page = page;
        this.types = new PageTypes(page);
        this.defined = defined;
        this.moved = moved;
        this.way = way;
    }

    /** What is shown does not say what this is. */
    static final class NotSaid extends IllegalArgumentException {
        private static final long serialVersionUID = 1;

        NotSaid(String what) {
            super(what);
        }
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

    /** The page's methods that were called as they are, since no formula is shown for them. */
    Set<String> asTheyAre() {
        return asTheyAre;
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
            int index =
                    Fit.of(of(element.index(), bound), int.class)
                            .map(f -> (int) f.value())
                            .orElseThrow(() -> new NotSaid("which element"));
            return Array.get(of(element.array(), bound), index);
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
        return text(((Term.Code) term).text());
    }

    private Object text(String text) {
        if (text.startsWith("\"")) {
            return text.substring(1, text.length() - 1).translateEscapes();
        }
        return text.equals("null") ? null : (Fit.Callable) arguments -> handedOn(text, arguments);
    }

    private static Map<String, Object> with(
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
        return page.values().containsKey(name) ? page.values().get(name) : new Fit.Unknown(name);
    }

    private double number(Term term, Map<String, Object> bound) {
        Object value = of(term, bound);
        Object meant =
                value instanceof Fit.Unknown unknown
                        ? types.constant(unknown.name()).orElse(value)
                        : value;
        return Fit.number(meant).orElseThrow(() -> new NotSaid(meant + " as a number"));
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
            default -> joined(binary.operation(), number(left, bound), number(right, bound));
        };
    }

    private static double joined(Operation operation, double left, double right) {
        return switch (operation) {
            case PLUS -> left + right;
            case MINUS -> left - right;
            case TIMES -> left * right;
            case OVER -> left / right;
            default -> left % right;
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

    private Object known(Term.Known known, Map<String, Object> bound) {
        double first = number(known.arguments().get(0), bound);
        double second =
                known.arguments().size() > 1 ? number(known.arguments().get(1), bound) : Double.NaN;
        Function function = known.function();
        return switch (function) {
            case SQRT -> Math.sqrt(first);
            case CBRT -> Math.cbrt(first);
            case POW -> Math.pow(first, second);
            case HYPOT -> Math.hypot(first, second);
            case EXP -> Math.exp(first);
            case LOG -> Math.log(first);
            case LOG10 -> Math.log10(first);
            case SIN -> Math.sin(first);
            case COS -> Math.cos(first);
            case TAN -> Math.tan(first);
            case ASIN -> Math.asin(first);
            case ACOS -> Math.acos(first);
            case ATAN -> Math.atan(first);
            case ATAN2 -> Math.atan2(first, second);
            case TO_RADIANS -> Math.toRadians(first);
            case TO_DEGREES -> Math.toDegrees(first);
            case ABS -> Math.abs(first);
            case SIGNUM -> Math.signum(first);
            case MIN -> Math.min(first, second);
            case MAX -> Math.max(first, second);
            case ROUND, RINT -> Math.rint(first);
            case FLOOR -> Math.floor(first);
            case CEIL -> Math.ceil(first);
            case WHOLE -> (double) (long) first;
        };
    }

    private Object called(Term.Call call, Map<String, Object> bound) {
        List<Object> arguments = new ArrayList<>();
        call.arguments().forEach(one -> arguments.add(of(one, bound)));
        if (call.subject() != null) {
            Object on = of(call.subject(), bound);
            return call.name().isEmpty() ? unwrapped(on) : on(on, call.name(), arguments);
        }
        return own(call.name(), arguments)
                .or(() -> elsewhere(call.name(), arguments))
                .orElseThrow(() -> new NotSaid(call.name() + arguments))
                .value();
    }

    /** Methods and constructors that are called on nothing, and are not the page's own. */
    private Optional<Calls.Answer> elsewhere(String name, List<Object> arguments) {
        int dot = name.lastIndexOf('.');
        List<? extends Executable> choice;
        if (dot >= 0) {
            choice =
                    types.named(name.substring(0, dot))
                            .map(type -> PageTypes.staticMethods(type, name.substring(dot + 1)))
                            .orElse(List.of());
        } else if (Character.isUpperCase(name.charAt(0))) {
            choice =
                    types.named(name)
                            .map(type -> List.of(type.getDeclaredConstructors()))
                            .orElse(List.of());
        } else {
            choice = types.importedMethods(name);
        }
        return Calls.call(choice, null, arguments);
    }

    /** A method of the page, by the formula that is shown for it if there is one. */
    private Optional<Calls.Answer> own(String name, List<Object> arguments) {
        List<Method> methods = page.methods(name);
        for (NumbersPut.Defined one : defined) {
            Term.Call head = (Term.Call) one.head();
            if (head.name().equals(name) && head.arguments().size() == arguments.size()) {
                List<String> parameters =
                        head.arguments().stream().map(term -> ((Term.Name) term).name()).toList();
                List<Object> given = asAskedFor(methods, arguments);
                return Optional.of(
                        new Calls.Answer(of(one.formula(), with(Map.of(), parameters, given))));
            }
        }
        Optional<Calls.Answer> answer = Calls.call(methods, null, arguments);
        answer.ifPresent(given -> asTheyAre.add(name));
        return answer;
    }

    private static List<Object> asAskedFor(List<Method> methods, List<Object> arguments) {
        for (Method method : methods) {
            if (method.getParameterCount() == arguments.size()) {
                List<Object> fitted = new ArrayList<>();
                for (int i = 0; i < arguments.size(); i++) {
                    Object argument = arguments.get(i);
                    boolean rule = argument instanceof Fit.Callable;
                    fitted.add(
                            rule
                                    ? argument
                                    : Fit.of(argument, method.getParameterTypes()[i])
                                            .map(Fit::value)
                                            .orElse(argument));
                }
                return fitted;
            }
        }
        return arguments;
    }

    private Object on(Object on, String shown, List<Object> arguments) {
        if (on instanceof Fit.Callable rule) {
            return rule.call(arguments);
        }
        String name = shown.equals("u") && arguments.isEmpty() ? "standardUncertainty" : shown;
        if (on instanceof Fit.Unknown constant) {
            Object value =
                    types.constant(constant.name())
                            .orElseThrow(() -> new NotSaid("what " + constant.name() + " is"));
            return on(value, name, arguments);
        }
        if (name.equals("length") && on.getClass().isArray()) {
            return (double) Array.getLength(on);
        }
        // One after the other, since asking a stream for another form of it uses it up.
        return onItself(on, name, arguments)
                .or(
                        () ->
                                Fit.others(on)
                                        .map(one -> onItself(one, name, arguments))
                                        .flatMap(Optional::stream)
                                        .findFirst())
                .orElseThrow(() -> new NotSaid(name + " of " + on.getClass() + arguments))
                .value();
    }

    private static Optional<Calls.Answer> onItself(Object on, String name, List<Object> arguments) {
        return Calls.call(Calls.methodsOf(on, name), on, arguments);
    }

    /** What a call that only unwraps gives: a formula leaves its name out. */
    private static Object unwrapped(Object on) {
        if (on instanceof Estimate estimate) {
            return estimate.value();
        }
        return on instanceof Supplier<?> supplier ? supplier.get() : on;
    }

    /** A method that is handed on by its name: of the page, of its first argument, or imported. */
    private Object handedOn(String name, List<Object> arguments) {
        Optional<Calls.Answer> answer = own(name, arguments);
        if (answer.isEmpty() && !arguments.isEmpty() && arguments.get(0) != null) {
            Object on = arguments.get(0);
            List<Object> rest = arguments.subList(1, arguments.size());
            answer = Calls.call(Calls.methodsOf(on, name), on, rest);
        }
        return answer.or(() -> Calls.call(types.importedMethods(name), null, arguments))
                .or(() -> Calls.call(types.handedOn(name), null, arguments))
                .orElseThrow(() -> new NotSaid(name + " of " + arguments))
                .value();
    }
}
