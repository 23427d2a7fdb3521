package halfwidth.engine;

import java.lang.reflect.Field;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** A program's entry points as loaded classes, ready to be invoked. */
final class Linked {
    private final ClassLoader loader;
    private final List<Method> methods;

    private Linked(ClassLoader loader, List<Method> methods) {
        this.loader = loader;
        this.methods = methods;
    }

    /** Loads a program's classes afresh, so that their static state is as never run. */
    static Linked of(Program program) {
        ClassLoader loader = loader(program.classes());
        List<Method> methods = new ArrayList<>();
        for (Program.Line line : program.lines()) {
            methods.add(
                    line.compiled()
                            .filter(compiled -> line.problem().isEmpty())
                            .flatMap(CompiledStatement::entryPoint)
                            .map(entry -> method(loader, entry))
                            .orElse(null));
        }
        return new Linked(loader, methods);
    }

    private static ClassLoader loader(Map<String, byte[]> classes) {
        ClassLoader loader =
                new ClassLoader(Linked.class.getClassLoader()) {
                    @Override
                    protected Class<?> findClass(String name) throws ClassNotFoundException {
                        byte[] found = classes.get(name);
                        if (found == null) {
                            throw new ClassNotFoundException(name);
                        }
                        return defineClass(name, found, 0, found.length);
                    }
                };
        // Else an assert on a page would be a check that cannot fail.
        loader.setDefaultAssertionStatus(true);
        return loader;
    }

    private static Method method(ClassLoader loader, EntryPoints.EntryPoint entry) {
        try {
            Method method =
                    loader.loadClass(entry.className()).getDeclaredMethod(entry.methodName());
            method.setAccessible(true);
            return method;
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("no entry point " + entry, e);
        }
    }

    /**
     * Runs the statement at an index and returns its value; null for one without.
     *
     * @throws Throwable whatever the statement throws
     */
    Object invoke(int index) throws Throwable {
        Method method = methods.get(index);
        if (method == null) {
            return null;
        }
        try {
            return method.invoke(null);
        } catch (InvocationTargetException e) {
            throw e.getCause();
        }
    }

    /** Reads the variable that a statement declares. */
    Object variable(CompiledStatement statement) {
        try {
            Field field =
                    loader.loadClass(statement.entryPoint().orElseThrow().className())
                            .getDeclaredField(statement.name());
            field.setAccessible(true);
            return field.get(null);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("no variable " + statement.name(), e);
        }
    }
}
