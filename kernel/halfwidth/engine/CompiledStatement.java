package halfwidth.engine;

import halfwidth.formula.FormulaReader;
import java.io.Serializable;
import java.util.Optional;
import java.util.Set;

/**
 * A statement that JShell accepted.
 *
 * @param entryPoint the method that runs it; none for imports, methods and types
 * @param className the class that it was compiled to; "" for an import
 * @param name the variable, method or type it declares, or the variable it assigns; "" if none
 * @param type the type of its value as written in source; "" if none
 * @param declaresType whether it declares a class, interface, enum or record
 */
record CompiledStatement(
        Optional<EntryPoints.EntryPoint> entryPoint,
        String className,
        String name,
        String type,
        boolean declaresType)
        implements Serializable {

    /** An {@code Optional} cannot be stored. */
    private record Stored(
            EntryPoints.EntryPoint entryPoint,
            String className,
            String name,
            String type,
            boolean declaresType)
            implements Serializable {
        private Object readResolve() {
            return new CompiledStatement(
                    Optional.ofNullable(entryPoint), className, name, type, declaresType);
        }
    }

    private Object writeReplace() {
        return new Stored(entryPoint.orElse(null), className, name, type, declaresType);
    }

    /** Values that no statement can change in place, besides numbers. */
    private static final Set<String> UNCHANGING =
            Set.of("char", "boolean", "Boolean", "String", "LocalDate", "Action");

    /** Whether its value is a number, so that its trailing comment names a unit. */
    boolean number() {
        return FormulaReader.isNumber(type);
    }

    /** Whether its value can be changed in place by a statement that holds it. */
    boolean changeable() {
        return !number() && !UNCHANGING.contains(type);
    }
}
