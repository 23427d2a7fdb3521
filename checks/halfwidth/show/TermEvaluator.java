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
import java.util.stream.Stream;

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
    private final Set<String> handingOn = new LinkedHashSet<>();
    private final Set<Method> asTheyAre = new LinkedHashSet<>();

    /**
     * @param moved the printed number to move by half a unit of its last digit; null for none
     * @param way 1 to move it up, -1 down
     */
    TermEvaluator(PageHere page, Displayed shown, Printed.Place moved, int way) {
        this.page = page;
        this.types = new PageTypes(page);
        this.shown = shown;
        this.moved = moved;
        this.way = way;
    }

    /** What is shown does not say what this is. */
    static final class NotSaid extends IllegalArgumentException {
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

    /** The page's methods that were gone through and only hand on to another. */
    Set<String> handingOn() {
        return handingOn;
    }

    /** The page's methods that were called as they are, since they have no formula. */
    Set<Method> asTheyAre() {
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
            return (Fit.Callable) arguments -> on(on, text.substring(dot + 1), arguments);
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
                .orElseThrow(() -> new NotSaid(call.name(), arguments))
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
        } else {
            choice =
                    types.named(name)
                            .<List<? extends Executable>>map(
                                    type -> List.of(type.getDeclaredConstructors()))
                            .orElseGet(() -> types.importedMethods(name));
        }
        return Calls.call(choice, null, arguments);
    }

    /** A method of the page, by the formula that is shown for it if there is one. */
    private Optional<Calls.Answer> own(String name, List<Object> arguments) {
        List<Method> methods = page.methods(name);
        Optional<NumbersPut.Defined> computes = defined(shown.methods(), name, arguments);
        Optional<NumbersPut.Defined> handsOn = defined(shown.handingOn(), name, arguments);
        Optional<NumbersPut.Defined> by = computes.or(() -> handsOn);
        if (by.isPresent()) {
            handsOn.ifPresent(one -> handingOn.add(name));
            List<String> parameters =
                    ((Term.Call) by.get().head())
                            .arguments().stream().map(term -> ((Term.Name) term).name()).toList();
            List<Object> given = asAskedFor(methods, arguments);
            return Optional.of(
                    new Calls.Answer(of(by.get().formula(), with(Map.of(), parameters, given))));
        }
        Optional<Calls.Answer> answer = Calls.call(methods, null, arguments);
        answer.ifPresent(given -> asTheyAre.addAll(methods));
        return answer;
    }

    private static Optional<NumbersPut.Defined> defined(
            List<NumbersPut.Defined> methods, String name, List<Object> arguments) {
        return methods.stream()
                .filter(
                        one ->
                                one.head() instanceof Term.Call head
                                        && head.name().equals(name)
                                        && head.arguments().size() == arguments.size())
                .findFirst();
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

    private Object on(Object on, String written, List<Object> arguments) {
        if (on instanceof Fit.Callable rule) {
            return rule.call(arguments);
        }
        String name = written.equals("u") && arguments.isEmpty() ? "standardUncertainty" : written;
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
                .orElseThrow(
                        () -> new NotSaid(name + " of " + on.getClass().getSimpleName(), arguments))
                .value();
    }

    private static Optional<Calls.Answer> onItself(Object on, String name, List<Object> arguments) {
        Class<?> many = on instanceof Stream ? Stream.class : Optional.class;
        List<Object> given =
                name.equals("flatMap")
                        ? arguments.stream().map(one -> giving(many, one)).toList()
                        : arguments;
        return Calls.call(Calls.methodsOf(on, name), on, given);
    }

    /** A rule whose value is made what is asked of it, since its type does not say so. */
    private static Object giving(Class<?> type, Object rule) {
        return rule instanceof Fit.Callable callable
                ? (Fit.Callable)
                        arguments ->
                                Fit.of(callable.call(arguments), type)
                                        .orElseThrow(() -> new NotSaid("a rule as " + type))
                                        .value()
                : rule;
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
                .orElseThrow(() -> new NotSaid(name, arguments))
                .value();
    }
}
