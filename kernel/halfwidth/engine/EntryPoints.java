package halfwidth.engine;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import jdk.jshell.execution.DirectExecutionControl;
import jdk.jshell.spi.ExecutionControl;
import jdk.jshell.spi.ExecutionControlProvider;
import jdk.jshell.spi.ExecutionEnv;

/**
 * JShell's execution side, which runs nothing: it keeps the classes that JShell compiled and, for
 * each evaluated snippet, which method would run it. The engine invokes those methods itself, as
 * often as values change.
 */
final class EntryPoints extends DirectExecutionControl {
    /** The method that runs a snippet. */
    record EntryPoint(String className, String methodName) implements Serializable {}

    private final Map<String, byte[]> classes = new LinkedHashMap<>();
    private final List<EntryPoint> recorded = new ArrayList<>();

    static ExecutionControlProvider providing(EntryPoints entryPoints) {
        return new ExecutionControlProvider() {
            @Override
            public String name() {
                return "entry-points";
            }

            @Override
            public ExecutionControl generate(ExecutionEnv env, Map<String, String> parameters) {
                return entryPoints;
            }
        };
    }

    @Override
    public void load(ClassBytecodes[] compiled) {
        for (ClassBytecodes one : compiled) {
            classes.put(one.name(), one.bytecodes());
        }
    }

    @Override
    public void redefine(ClassBytecodes[] compiled) throws NotImplementedException {
        // A step that declares a name again must leave the class of the first one as it is.
        throw new NotImplementedException("classes stay as first compiled");
    }

    @Override
    public String invoke(String className, String methodName) {
        recorded.add(new EntryPoint(className, methodName));
        return "";
    }

    @Override
    public String varValue(String className, String varName) {
        return "";
    }

    @Override
    public void addToClasspath(String path) {
        // The class path is the worker's own; only the compiler has to be told.
    }

    /** The entry points recorded since the last call, in order. */
    List<EntryPoint> taken() {
        List<EntryPoint> taken = List.copyOf(recorded);
        recorded.clear();
        return taken;
    }

    /** Everything compiled so far, by class name. */
    Map<String, byte[]> classes() {
        return Map.copyOf(classes);
    }
}
