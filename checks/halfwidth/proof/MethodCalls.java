package halfwidth.proof;

import it.unimi.dsi.fastutil.doubles.DoubleComparator;
import java.lang.reflect.Constructor;
import java.lang.reflect.Executable;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.lang.reflect.TypeVariable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import tech.tablesaw.api.DoubleColumn;
import tech.tablesaw.api.IntColumn;
import tech.tablesaw.api.NumericColumn;
import tech.tablesaw.api.Table;
import tech.tablesaw.columns.Column;
import tech.tablesaw.selection.Selection;

/**
 * A call of each public method of a class, written in Java as a page would write it, and turned
 * into a {@code double}. They are found by reflection, so that a method added later is called too.
 */
final class MethodCalls {
    /**
     * One call.
     *
     * @param method its name and the types of its parameters
     * @param object what it is called on
     * @param java an expression that gives a {@code double}
     */
    record Call(String owner, String name, String method, String object, String java) {
        /**
         * The call as the body of a method. What it is called on and given are variables of the
         * method, so that what a method does to them spoils no other call.
         */
        String body() {
            return "var it = %s; var column = t.doubleColumn(\"x\"); var counts =".formatted(object)
                    + " t.intColumn(\"x\"); var values = array; var all = list; return "
                    + java
                    + ";";
        }
    }

    /** Those whose number is an amount like the one it is called on, not a number of its own. */
    private static final Set<String> TAKE_AMOUNTS =
            Set.of("add", "subtract", "remainder", "orElse", "reduce", "append", "set", "predict");

    private static final String ANY_DOUBLE = "(DoublePredicate) p -> true";

    private static final Map<Class<?>, String> ARGUMENTS =
            Map.ofEntries(
                    Map.entry(int.class, "1"),
                    Map.entry(long.class, "1"),
                    Map.entry(float.class, "(float) metres"),
                    Map.entry(boolean.class, "true"),
                    Map.entry(String.class, "\"x\""),
                    Map.entry(double[].class, "values"),
                    Map.entry(int[].class, "new int[] {1}"),
                    Map.entry(Double.class, "boxed"),
                    Map.entry(Integer.class, "(int) metres"),
                    Map.entry(Selection.class, "column.isNotMissing()"),
                    Map.entry(Collection.class, "all"),
                    Map.entry(java.util.function.DoubleSupplier.class, "() -> metres"),
                    Map.entry(java.util.function.Supplier.class, "() -> metres"),
                    Map.entry(java.util.function.IntSupplier.class, "() -> 1"),
                    Map.entry(java.util.stream.Collector.class, "Collectors.toList()"),
                    Map.entry(DoubleComparator.class, "(DoubleComparator) (p, q) -> 0"),
                    Map.entry(java.util.Comparator.class, "Comparator.naturalOrder()"));

    /** Arguments that follow from the whole signature only. */
    private static final Map<String, String> BY_SIGNATURE =
            Map.ofEntries(
                    Map.entry("DoubleStream.flatMap(DoubleFunction)", "p -> DoubleStream.of(p)"),
                    Map.entry("DoubleStream.mapToInt(DoubleToIntFunction)", "p -> (int) p"),
                    Map.entry("DoubleStream.mapToLong(DoubleToLongFunction)", "p -> (long) p"),
                    Map.entry("DoubleStream.mapMulti(DoubleMapMultiConsumer)", "(p, q) -> {}"),
                    Map.entry("IntStream.mapMulti(IntMapMultiConsumer)", "(p, q) -> {}"),
                    Map.entry("IntStream.flatMap(IntFunction)", "p -> IntStream.of(p)"),
                    Map.entry("IntStream.mapToLong(IntToLongFunction)", "p -> (long) p"),
                    Map.entry("Stream.flatMapToDouble(Function)", "p -> DoubleStream.of(p)"),
                    Map.entry("Stream.flatMapToInt(Function)", "p -> IntStream.of(p.intValue())"),
                    Map.entry(
                            "Stream.flatMapToLong(Function)", "p -> LongStream.of(p.longValue())"),
                    Map.entry("Stream.reduce(Object,BinaryOperator)", "metres, (p, q) -> p"),
                    Map.entry("Optional.or(Supplier)", "() -> Optional.of(metres)"),
                    Map.entry("Optional.orElse(Object)", "metres"),
                    Map.entry("Optional.orElseThrow(Supplier)", "IllegalStateException::new"),
                    Map.entry("OptionalDouble.orElseThrow(Supplier)", "IllegalStateException::new"),
                    Map.entry("OptionalInt.orElseThrow(Supplier)", "IllegalStateException::new"),
                    Map.entry("List.set(int,Object)", "1, metres"),
                    Map.entry("NumericColumn.compare(Object,Object)", "boxed, boxed"),
                    Map.entry("IntColumn.set(DoublePredicate,Number)", ANY_DOUBLE + ", 1"),
                    Map.entry(
                            "IntColumn.set(DoublePredicate,NumberColumn)", ANY_DOUBLE + ", counts"),
                    Map.entry("Table.sortOn(Comparator)", "(p, q) -> 0"),
                    Map.entry("Table.where(Function)", "p -> p.doubleColumn(\"x\").isNotMissing()"),
                    Map.entry(
                            "Table.dropWhere(Function)",
                            "p -> p.doubleColumn(\"x\").isNotMissing()"));

    private MethodCalls() {}

    /** The methods of an object that the expression gives. */
    static List<Call> of(String object, Class<?> type) {
        return calls(object, "it", type, false);
    }

    /** The static methods of a class. */
    static List<Call> ofStatic(Class<?> type) {
        return calls("metres", type.getName(), type, true);
    }

    /**
     * A method's name and the erased types of its parameters, as the table of the proof has them.
     */
    static String signature(Executable method) {
        String name = method instanceof Constructor<?> ? "<init>" : method.getName();
        return Arrays.stream(method.getParameterTypes())
                .map(Class::getSimpleName)
                .collect(Collectors.joining(",", name + "(", ")"));
    }

    private static List<Call> calls(String object, String subject, Class<?> type, boolean still) {
        Map<String, Call> found = new TreeMap<>();
        for (Method method : type.getMethods()) {
            boolean wanted =
                    Modifier.isStatic(method.getModifiers()) == still
                            && !method.isBridge()
                            && method.getDeclaringClass() != Object.class;
            String signature = signature(method);
            if (wanted) {
                number(
                                call(subject, type, method, signature, still),
                                method.getGenericReturnType(),
                                type)
                        .ifPresent(
                                java ->
                                        found.putIfAbsent(
                                                signature,
                                                new Call(
                                                        type.getSimpleName(),
                                                        method.getName(),
                                                        signature,
                                                        object,
                                                        java)));
            }
        }
        return List.copyOf(found.values());
    }

    private static String call(
            String subject, Class<?> owner, Method method, String signature, boolean still) {
        List<String> arguments = new ArrayList<>();
        for (Class<?> type : method.getParameterTypes()) {
            arguments.add(argument(type, owner, method, still));
        }
        String written =
                BY_SIGNATURE.getOrDefault(
                        owner.getSimpleName() + "." + signature, String.join(", ", arguments));
        return subject + "." + method.getName() + "(" + written + ")";
    }

    private static String argument(Class<?> type, Class<?> owner, Method method, boolean still) {
        boolean amount = TAKE_AMOUNTS.contains(method.getName());
        if (type == double.class) {
            boolean share = method.getName().equals("percentile");
            return amount || still && !share ? "metres" : "2";
        }
        if (type == Number.class) {
            return amount ? "boxed" : "2";
        }
        if (still && (type == int.class || type == long.class) && method.getParameterCount() < 3) {
            return "(" + type + ") metres";
        }
        if (NumericColumn.class.isAssignableFrom(type) || type == Column.class) {
            boolean wide = type == NumericColumn.class || type == DoubleColumn.class;
            return owner != IntColumn.class || wide ? "column" : "counts";
        }
        if (ARGUMENTS.containsKey(type)) {
            return ARGUMENTS.get(type);
        }
        return type.isAnnotationPresent(FunctionalInterface.class)
                ? function(type, owner == IntColumn.class ? "Integer" : "Double")
                : "(" + type.getCanonicalName() + ") null";
    }

    private static String function(Class<?> type, String element) {
        String name = type.getSimpleName();
        if (name.equals("BinaryOperator") || name.equals("Predicate")) {
            String rule = name.equals("Predicate") ? "p -> true" : "(p, q) -> p";
            return "(%s<%s>) %s".formatted(name, element, rule);
        }
        if (name.endsWith("BinaryOperator")
                || name.endsWith("Predicate") && !name.startsWith("Bi")) {
            return "(%s) %s"
                    .formatted(name, name.endsWith("Predicate") ? "p -> true" : "(p, q) -> p");
        }
        return switch (name) {
            case "BiPredicate" -> "(p, q) -> true";
            case "BiConsumer", "ObjDoubleConsumer", "ObjIntConsumer" -> "(p, q) -> {}";
            case "ToIntFunction" -> "p -> (int) p.doubleValue()";
            case "ToLongFunction" -> "p -> p.longValue()";
            default ->
                    name.endsWith("Consumer")
                            ? "p -> {}"
                            : name.startsWith("Bi") ? "(p, q) -> p" : "p -> p";
        };
    }

    /** Makes a number of what a call gives; empty if it has none in it. */
    private static Optional<String> number(String call, Type given, Class<?> of) {
        Class<?> type = raw(given);
        String generic = given.getTypeName();
        boolean ofDoubles = generic.matches(".*<(T|E|java.lang.Double|Double|java.lang.Number)>");
        if (type == double.class
                || type == int.class
                || type == long.class
                || type == float.class
                || type == short.class) {
            return Optional.of(call);
        }
        if (Number.class.isAssignableFrom(type)) {
            return Optional.of(call + ".doubleValue()");
        }
        if (given instanceof TypeVariable<?> one && !NumericColumn.class.isAssignableFrom(of)) {
            return one.getGenericDeclaration() == of ? Optional.of(call) : Optional.empty();
        }
        if (NumericColumn.class.isAssignableFrom(type)) {
            return Optional.of(call + ".getDouble(0)");
        }
        if (type == Table.class) {
            return Optional.of(call + ".doubleColumn(\"x\").getDouble(0)");
        }
        return switch (type.getSimpleName()) {
            case "OptionalDouble" -> Optional.of(call + ".getAsDouble()");
            case "OptionalInt" -> Optional.of(call + ".getAsInt()");
            case "DoubleStream", "IntStream", "LongStream" -> Optional.of(call + ".sum()");
            case "double[]", "int[]" -> Optional.of(call + "[0]");
            case "DoubleSummaryStatistics", "IntSummaryStatistics" ->
                    Optional.of(call + ".getMax()");
            case "Estimate" -> Optional.of(call + ".value()");
            case "Range" -> Optional.of(call + ".most()");
            case "Optional" -> when(ofDoubles, call + ".get()");
            case "Stream" -> when(ofDoubles, call + ".findFirst().get()");
            case "List" -> when(ofDoubles, call + ".get(0)");
            case "Iterator" -> when(ofDoubles, call + ".next()");
            default -> Optional.empty();
        };
    }

    private static Optional<String> when(boolean so, String java) {
        return so ? Optional.of(java) : Optional.empty();
    }

    private static Class<?> raw(Type type) {
        if (type instanceof Class<?> one) {
            return one;
        }
        return type instanceof ParameterizedType with ? raw(with.getRawType()) : Object.class;
    }
}
