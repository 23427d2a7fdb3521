package halfwidth.show;

import halfwidth.localizer.uncertainty.Estimate;
import java.lang.invoke.MethodType;
import java.lang.reflect.InvocationHandler;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.Proxy;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.BaseStream;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import tech.tablesaw.api.Table;

/**
 * Makes of what stands in a formula what a method asks for. A formula does not say whether a number
 * is wrapped in an optional, and writes a rule as {@code x ↦ x + 1} whatever the type that a method
 * knows it by.
 *
 * @param value as the method asks for it
 * @param steps how far that is from what stands in the formula; a method that needs least is meant
 */
record Fit(Object value, int steps) {
    /** A rule or a method's name, to be called with arguments. */
    interface Callable {
        Object call(List<Object> arguments);
    }

    /** A name that stands for nothing on the page, as that of a constant without its type. */
    record Unknown(String name) {}

    /** What a value is as a type; empty if it cannot be that. */
    static Optional<Fit> of(Object value, Class<?> type) {
        Class<?> to = MethodType.methodType(type).wrap().returnType();
        if (value == null) {
            return type.isPrimitive() ? Optional.empty() : Optional.of(new Fit(null, 0));
        }
        if (value instanceof Callable callable) {
            return rule(callable, to);
        }
        if (value instanceof Unknown unknown) {
            return PageTypes.constant(to, unknown.name()).map(constant -> new Fit(constant, 0));
        }
        if (value instanceof Number number && isNumber(to)) {
            return number(number, to, value.getClass() == to ? 0 : 1);
        }
        if (value == Printed.None.NONE) {
            return empty(to).map(none -> new Fit(none, 1));
        }
        if (to.isInstance(value)) {
            return Optional.of(new Fit(value, to == value.getClass() ? 0 : 2));
        }
        if (value instanceof BaseStream) {
            return Optional.empty(); // to ask it for another form would use it up
        }
        return others(value)
                .filter(other -> !(other instanceof Callable))
                .flatMap(other -> plain(other, to).stream())
                .findFirst();
    }

    private static Optional<Fit> plain(Object value, Class<?> to) {
        if (value instanceof Number number && isNumber(to)) {
            return number(number, to, 3);
        }
        return to.isInstance(value) ? Optional.of(new Fit(value, 3)) : Optional.empty();
    }

    private static boolean isNumber(Class<?> type) {
        return Number.class.isAssignableFrom(type);
    }

    private static Optional<Fit> number(Number number, Class<?> to, int steps) {
        double value = number.doubleValue();
        if (to == Double.class || to == Number.class) {
            return Optional.of(new Fit(value, steps));
        }
        if (to == Float.class) {
            return Optional.of(new Fit((float) value, steps + 1));
        }
        long whole = Math.round(value);
        if (Math.abs(whole - value) > 1e-4 * Math.max(1, Math.abs(value))) {
            return Optional.empty();
        }
        if (to == Integer.class) {
            return Optional.of(new Fit((int) whole, steps));
        }
        return to == Long.class ? Optional.of(new Fit(whole, steps)) : Optional.empty();
    }

    private static Optional<Object> empty(Class<?> to) {
        if (to == OptionalDouble.class) {
            return Optional.of(OptionalDouble.empty());
        }
        if (to == OptionalInt.class) {
            return Optional.of(OptionalInt.empty());
        }
        return to == Optional.class || to == Object.class
                ? Optional.of(Optional.empty())
                : Optional.empty();
    }

    /** What else a value may stand for, since a formula leaves wrapping and unwrapping out. */
    static Stream<Object> others(Object value) {
        if (value instanceof Optional<?> optional) {
            return Stream.concat(optional.stream(), Stream.of(optional.stream()));
        }
        if (value instanceof OptionalDouble optional) {
            return Stream.concat(optional.stream().boxed(), Stream.of(optional.stream()));
        }
        if (value instanceof OptionalInt optional) {
            return Stream.concat(optional.stream().boxed(), Stream.of(optional.stream()));
        }
        if (value instanceof Collection<?> items) {
            return Stream.of(items.stream());
        }
        if (value instanceof IntStream stream) {
            return Stream.of(stream.boxed());
        }
        if (value instanceof DoubleStream stream) {
            return Stream.of(stream.boxed());
        }
        if (value == Printed.None.NONE) {
            return Stream.of(OptionalDouble.empty(), Optional.empty());
        }
        if (value instanceof Estimate estimate) {
            return Stream.of(estimate.value(), Optional.of(estimate));
        }
        if (value instanceof Table table) {
            return Stream.of(table.stream());
        }
        return value instanceof Double number
                ? Stream.of(OptionalDouble.of(number), Optional.of(number))
                : Stream.of();
    }

    /** The number that a value is, or that is in it. */
    static Optional<Double> number(Object value) {
        return of(value, double.class).map(fit -> (Double) fit.value());
    }

    private static Optional<Fit> rule(Callable callable, Class<?> type) {
        boolean one =
                type.isInterface()
                        && Stream.of(type.getMethods())
                                        .filter(m -> Modifier.isAbstract(m.getModifiers()))
                                        .filter(m -> !isOfObject(m))
                                        .count()
                                == 1;
        if (!one) {
            return Optional.empty();
        }
        InvocationHandler handler =
                (proxy, method, arguments) -> {
                    List<Object> given = arguments == null ? List.of() : List.of(arguments);
                    if (method.isDefault()) {
                        return InvocationHandler.invokeDefault(proxy, method, arguments);
                    }
                    return Modifier.isAbstract(method.getModifiers()) && !isOfObject(method)
                            ? given(callable.call(given), method)
                            : method.invoke(callable, arguments);
                };
        return Optional.of(
                new Fit(
                        Proxy.newProxyInstance(
                                type.getClassLoader() == null
                                        ? Fit.class.getClassLoader()
                                        : type.getClassLoader(),
                                new Class<?>[] {type},
                                handler),
                        0));
    }

    private static boolean isOfObject(Method method) {
        return Stream.of(Object.class.getMethods())
                .anyMatch(
                        one ->
                                one.getName().equals(method.getName())
                                        && one.getParameterCount() == method.getParameterCount());
    }

    private static Object given(Object value, Method method) {
        return of(value, method.getReturnType())
                .orElseThrow(
                        () ->
                                new IllegalArgumentException(
                                        value + " is no " + method.getReturnType()))
                .value();
    }
}
