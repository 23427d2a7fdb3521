package halfwidth.engine;

import java.io.Serializable;
import java.util.Optional;
import java.util.Set;

/**
 * A statement that JShell accepted.
 *
 * @param entryPoint the method that runs it; none for imports, methods and types
 * @param name the variable, method or type it declares, or the variable it assigns; "" if none
 * @param type the type of its value as written in source; "" if none
 * @param declaresType whether it declares a class, interface, enum or record
 */
record CompiledStatement(
        Optional<EntryPoints.EntryPoint> entryPoint, String name, String type, boolean declaresType)
        implements Serializable {

    /** An {@code Optional} cannot be stored. */
    private record Stored(
            EntryPoints.EntryPoint entryPoint, String name, String type, boolean declaresType)
            implements Serializable {
        private Object readResolve() {
            return new CompiledStatement(Optional.ofNullable(entryPoint), name, type, declaresType);
        }
    }

    private Object writeReplace() {
        return new Stored(entryPoint.orElse(null), name, type, declaresType);
    }

    private static final Set<String> NUMBERS =
            Set.of(
                    "double",
                    "float",
                    "long",
                    "int",
                    "short",
                    "byte",
                    "Double",
                    "Float",
                    "Long",
                    "Integer",
                    "OptionalDouble",
                    "Estimate",
                    "Optional<Estimate>");
    private static final Set<String> UNCHANGING =
            Set.of(
                    "double",
                    "float",
                    "long",
                    "int",
                    "short",
                    "byte",
                    "char",
                    "boolean",
                    "Double",
                    "Float",
                    "Long",
                    "Integer",
                    "Boolean",
                    "String",
                    "OptionalDouble",
                    "LocalDate");

    /** Whether its value is a number, so that its trailing comment names a unit. */
    boolean number() {
        return NUMBERS.contains(type);
    }

    /** Whether its value can be changed in place by a statement that holds it. */
    boolean changeable() {
        return !UNCHANGING.contains(type);
    }
}
