package halfwidth.show;

import java.lang.reflect.Constructor;
import java.lang.reflect.Executable;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Calls methods and constructors with what stands in a formula. */
final class Calls {
    private Calls() {}

    /** A call that is possible, with how far its arguments are from what is asked for. */
    private record Possible(Executable called, Object[] arguments, int steps) {}

    /**
     * Calls the one that the arguments fit best.
     *
     * @return empty if they fit none
     * @throws IllegalArgumentException if the call throws
     */
    static Optional<Answer> call(
            List<? extends Executable> choice, Object on, List<Object> arguments) {
        Possible best = null;
        for (Executable one : choice) {
            Possible possible = possible(one, arguments).orElse(null);
            if (possible != null && (best == null || possible.steps() < best.steps())) {
                best = possible;
            }
        }
        return best == null ? Optional.empty() : Optional.of(new Answer(made(best, on)));
    }

    /** What a call gave; may be null. */
    record Answer(Object value) {}

    private static Object made(Possible possible, Object on) {
        try {
            Executable called = possible.called();
            called.setAccessible(true);
            return called instanceof Method method
                    ? method.invoke(on, possible.arguments())
                    : ((Constructor<?>) called).newInstance(possible.arguments());
        } catch (InvocationTargetException thrown) {
            throw new IllegalArgumentException(
                    possible.called().getName() + " throws " + thrown.getCause(), thrown);
        } catch (ReflectiveOperationException impossible) {
            throw new IllegalArgumentException(impossible);
        }
    }

    private static Optional<Possible> possible(Executable called, List<Object> arguments) {
        Class<?>[] types = called.getParameterTypes();
        if (types.length == arguments.size()) {
            Optional<Possible> plain = fitting(called, arguments, types);
            if (plain.isPresent()) {
                return plain;
            }
        }
        return called.isVarArgs() && arguments.size() >= types.length - 1
                ? several(called, arguments, types)
                : Optional.empty();
    }

    private static Optional<Possible> fitting(
            Executable called, List<Object> arguments, Class<?>[] types) {
        Object[] given = new Object[types.length];
        int steps = 0;
        for (int i = 0; i < types.length; i++) {
            Optional<Fit> fit = Fit.of(arguments.get(i), types[i]);
            if (fit.isEmpty()) {
                return Optional.empty();
            }
            given[i] = fit.get().value();
            steps += fit.get().steps();
        }
        return Optional.of(new Possible(called, given, steps));
    }

    private static Optional<Possible> several(
            Executable called, List<Object> arguments, Class<?>[] types) {
        Class<?> of = types[types.length - 1].getComponentType();
        Class<?>[] spread = Arrays.copyOf(types, arguments.size());
        Arrays.fill(spread, types.length - 1, spread.length, of);
        return fitting(called, arguments, spread)
                .map(
                        all -> {
                            Object rest =
                                    java.lang.reflect.Array.newInstance(
                                            of, spread.length - types.length + 1);
                            for (int i = types.length - 1; i < spread.length; i++) {
                                java.lang.reflect.Array.set(
                                        rest, i - types.length + 1, all.arguments()[i]);
                            }
                            Object[] given = Arrays.copyOf(all.arguments(), types.length);
                            given[types.length - 1] = rest;
                            return new Possible(called, given, all.steps() + 1);
                        });
    }

    /** The methods that an object has under a name and that may be called from here. */
    static List<Method> methodsOf(Object object, String name) {
        List<Method> methods = new ArrayList<>();
        supertypes(object.getClass())
                .distinct()
                .flatMap(type -> Stream.of(type.getDeclaredMethods()))
                .filter(method -> method.getName().equals(name))
                .filter(method -> !method.isBridge() && !Modifier.isStatic(method.getModifiers()))
                .filter(method -> !Modifier.isPrivate(method.getModifiers()))
                .filter(Method::trySetAccessible)
                .forEach(methods::add);
        return methods;
    }

    private static Stream<Class<?>> supertypes(Class<?> type) {
        Stream<Class<?>> above =
                Stream.concat(
                        Stream.ofNullable(type.getSuperclass()), Stream.of(type.getInterfaces()));
        return Stream.concat(Stream.of(type), above.flatMap(Calls::supertypes));
    }
}
