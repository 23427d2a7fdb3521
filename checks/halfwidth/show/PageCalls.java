package halfwidth.show;

import halfwidth.engine.PageHere;
import halfwidth.formula.Term;
import halfwidth.localizer.uncertainty.Estimate;
import java.lang.reflect.Array;
import java.lang.reflect.Executable;
import java.lang.reflect.Method;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Supplier;
import java.util.stream.Stream;

/** Calls the method that a formula names, of the page, of an object or of the library. */
final class PageCalls {
    private final PageHere page;
    private final PageTypes types;
    private final Displayed shown;
    private final BiFunction<Term, Map<String, Object>, Object> evaluator;
    private final Set<String> handingOn = new LinkedHashSet<>();
    private final Set<Method> asTheyAre = new LinkedHashSet<>();

    /**
     * @param evaluator works out a formula, with what its names stand for
     */
    PageCalls(
            PageHere page,
            PageTypes types,
            Displayed shown,
            BiFunction<Term, Map<String, Object>, Object> evaluator) {
        this.page = page;
        this.types = types;
        this.shown = shown;
        this.evaluator = evaluator;
    }

    /** The page's methods that were gone through and only hand on to another. */
    Set<String> handingOn() {
        return handingOn;
    }

    /** The page's methods that were called as they are, since they have no formula. */
    Set<Method> asTheyAre() {
        return asTheyAre;
    }

    /** A method or a constructor that is called on nothing. */
    Object plain(String name, List<Object> arguments) {
        return own(name, arguments)
                .or(() -> elsewhere(name, arguments))
                .orElseThrow(() -> new NotSaid(name, arguments))
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
                    new Calls.Answer(
                            evaluator.apply(
                                    by.get().formula(),
                                    TermEvaluator.with(Map.of(), parameters, given))));
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

    /** A method of an object, under the name that is shown. */
    Object on(Object on, String written, List<Object> arguments) {
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
    static Object unwrapped(Object on) {
        if (on instanceof Estimate estimate) {
            return estimate.value();
        }
        return on instanceof Supplier<?> supplier ? supplier.get() : on;
    }

    /** A method that is handed on by its name: of the page, of its first argument, or imported. */
    Object handedOn(String name, List<Object> arguments) {
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
