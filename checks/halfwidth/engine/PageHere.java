package halfwidth.engine;

import halfwidth.run.Message;
import halfwidth.run.Outcome;
import halfwidth.run.Prelude;
import halfwidth.run.Run;
import halfwidth.run.Script;
import halfwidth.run.Values;
import java.lang.reflect.Field;
import java.lang.reflect.Method;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * A page that ran in the JVM of the test, so that its values are at hand as the objects that they
 * are. The numbers on a sheet come from a worker; these only stand behind the names in a formula.
 */
public final class PageHere {
    private final Map<String, Object> values = new HashMap<>();
    private final List<Method> methods = new ArrayList<>();
    private final List<Class<?>> types = new ArrayList<>();
    private final List<String> imports = new ArrayList<>(Prelude.IMPORTS);

    private PageHere(Program program, Linked linked) throws ReflectiveOperationException {
        ClassLoader loader = loader(linked);
        for (Program.Line line : program.lines()) {
            Optional<CompiledStatement> compiled = line.compiled();
            compiled.filter(one -> one.entryPoint().isPresent() && !one.name().isEmpty())
                    .ifPresent(one -> take(linked, one));
            Stream.of(line.statement().text().split("\n"))
                    .map(String::strip)
                    .filter(text -> text.startsWith("import "))
                    .forEach(imports::add);
        }
        for (String name : program.classes().keySet()) {
            Class<?> type = loader.loadClass(name);
            boolean steps = type.getSimpleName().equals(StepClass.NAME);
            if (type.getEnclosingClass() != null && !steps) {
                types.add(type);
            } else {
                Stream.of(type.getDeclaredMethods())
                        .filter(Predicate.not(method -> method.getName().contains("$")))
                        .forEach(methods::add);
            }
        }
    }

    /** The program has no use for it beyond that class, and so does not hand it out. */
    private static ClassLoader loader(Linked linked) throws ReflectiveOperationException {
        Field loader = Linked.class.getDeclaredField("loader");
        loader.setAccessible(true);
        return (ClassLoader) loader.get(linked);
    }

    /** An assignment's entry point stands in another class than the variable. */
    private void take(Linked linked, CompiledStatement statement) {
        try {
            values.put(statement.name(), linked.variable(statement));
        } catch (IllegalStateException assigned) {
            if (!(assigned.getCause() instanceof NoSuchFieldException)) {
                throw assigned;
            }
        }
    }

    /**
     * Runs a page from top to bottom.
     *
     * @throws IllegalStateException if a step fails
     */
    public static PageHere of(Script script, Values given) throws Exception {
        Program program =
                CompiledPages.besideProgram().find(script).orElseGet(() -> compiled(script));
        Linked linked = Linked.of(program);
        PageHere[] page = new PageHere[1];
        Exception[] failed = new Exception[1];
        Thread thread =
                new Thread(
                        new ThreadGroup("page"),
                        () -> {
                            try {
                                ran(program, linked, given);
                                page[0] = new PageHere(program, linked);
                            } catch (Exception e) {
                                failed[0] = e;
                            }
                        });
        thread.start();
        thread.join();
        if (failed[0] != null) {
            throw failed[0];
        }
        return page[0];
    }

    private static Program compiled(Script script) {
        try (Compiler compiler = new Compiler()) {
            return compiler.compile(script);
        }
    }

    private static void ran(Program program, Linked linked, Values given) {
        Capture capture = new Capture();
        capture.reset(Integer.MAX_VALUE);
        Message.Go go = new Message.Go(given, Map.of(), false);
        Run run = new PageRun(program, new Effects(program), linked).run(go, capture, at -> {});
        run.steps().stream()
                .filter(ran -> ran.outcome() instanceof Outcome.Failed)
                .forEach(
                        ran -> {
                            throw new IllegalStateException(ran.toString());
                        });
    }

    /** The page's variables at the end of the run, by name. */
    public Map<String, Object> values() {
        return values;
    }

    /** The page's own methods of a name. */
    public List<Method> methods(String name) {
        return methods.stream().filter(method -> method.getName().equals(name)).toList();
    }

    /** The types that the page declares. */
    public List<Class<?>> types() {
        return types;
    }

    /** The imports that the page's code can use, as they stand in Java. */
    public List<String> imports() {
        return imports;
    }
}
