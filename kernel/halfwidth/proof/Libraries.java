package halfwidth.proof;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import javax.lang.model.element.ExecutableElement;
import javax.lang.model.element.TypeElement;

/** Works out calls of the JDK and of Tablesaw, whose methods pass units on as they are. */
final class Libraries {
    private static final Set<String> COUNTS =
            Set.of(
                    "count",
                    "size",
                    "length",
                    "rowCount",
                    "countMissing",
                    "ordinal",
                    "indexOf",
                    "between",
                    "getAsInt$",
                    "bitCount",
                    "countNonMissing",
                    "compare",
                    "compareTo",
                    "columnCount",
                    "indexOfMax");
    private static final Set<String> RULES =
            Set.of(
                    "map",
                    "mapToObj",
                    "mapToDouble",
                    "mapToInt",
                    "mapToLong",
                    "flatMap",
                    "flatMapToDouble",
                    "mapMulti",
                    "generate",
                    "iterate",
                    "reduce",
                    "collectingAndThen",
                    "averagingDouble");
    private static final Set<String> JOINS =
            Set.of(
                    "of",
                    "concat",
                    "asList",
                    "ofNullable",
                    "stream",
                    "copyOf",
                    "copyOfRange",
                    "toArray",
                    "valueOf",
                    "or",
                    "orElse",
                    "orElseGet",
                    "nCopies",
                    "create",
                    "clone",
                    "iterator",
                    "sort",
                    "empty",
                    "max",
                    "min",
                    "sum",
                    "emptyList",
                    "iterate");
    private static final Set<String> COLUMNS =
            Set.of(
                    "doubleColumn",
                    "intColumn",
                    "numberColumn",
                    "nCol",
                    "column",
                    "getDouble",
                    "getInt",
                    "dateColumn",
                    "stringColumn",
                    "getString");

    Value called(ExecutableElement method, Value subject, List<Value> arguments) {
        String name = method.getSimpleName().toString();
        String owner = ((TypeElement) method.getEnclosingElement()).getQualifiedName().toString();
        if (owner.equals("tech.tablesaw.api.Table") && name.equals("create")) {
            return table(arguments);
        }
        if (subject instanceof Value.Columns table) {
            boolean whole =
                    owner.matches(".*\\.(Table|Relation|Row|RowIterator|TableSliceGroup)")
                            || !owner.startsWith("tech.tablesaw.")
                            || table.byName().size() != 1;
            if (whole || name.equals("setName")) {
                return ofTable(name, table, arguments);
            }
            return called(method, table.byName().values().iterator().next(), arguments);
        }
        if (subject instanceof Value.Rule rule) {
            return rule.of().apply(arguments);
        }
        if (COUNTS.contains(name) || owner.endsWith("IntStream") && name.startsWith("range")) {
            return Amount.ONE;
        }
        if (subject instanceof Value.Nothing) {
            return name.startsWith("orElse")
                    ? arguments.isEmpty() ? subject : arguments.get(0)
                    : subject;
        }
        if (subject == null || subject instanceof Value.Text) {
            return still(method, name, arguments);
        }
        if (RULES.contains(name) && !arguments.isEmpty()) {
            return arguments.get(arguments.size() - 1) instanceof Value.Rule rule
                    ? rule.of().apply(List.of(subject))
                    : subject;
        }
        if (subject instanceof Amount amount) {
            return ofAmount(method, name, amount, arguments);
        }
        return ofThing(method, name, subject, arguments);
    }

    /** Gives the column its name as its unit's place. */
    private static Value table(List<Value> arguments) {
        Map<String, Value> columns = new HashMap<>();
        for (Value argument : arguments) {
            if (argument instanceof Value.Columns named) {
                columns.putAll(named.byName());
            }
        }
        return new Value.Columns(columns);
    }

    private static Value ofTable(String name, Value.Columns table, List<Value> arguments) {
        if (COLUMNS.contains(name)) {
            return arguments.get(0) instanceof Value.Text text
                    ? table.byName()
                            .getOrDefault(
                                    text.text(),
                                    new Value.Unknown("column " + text.text() + " has no unit"))
                    : any(table);
        }
        if (COUNTS.contains(name)) {
            return Amount.ONE;
        }
        if (name.equals("addColumns")) {
            Map<String, Value> all = new HashMap<>(table.byName());
            arguments.forEach(
                    one -> {
                        if (one instanceof Value.Columns more) {
                            all.putAll(more.byName());
                        }
                    });
            return new Value.Columns(all);
        }
        if (name.startsWith("isMissing") || name.equals("isEmpty")) {
            return Value.THING;
        }
        if (RULES.contains(name)
                && !arguments.isEmpty()
                && arguments.get(0) instanceof Value.Rule rule) {
            return rule.of().apply(List.of(table));
        }
        return table;
    }

    private static Value any(Value.Columns table) {
        Value all = Value.NOTHING;
        try {
            for (Value one : table.byName().values()) {
                all = one instanceof Amount ? all.or(one) : all;
            }
        } catch (Refuted several) {
            return new Value.Unknown("which column is read is known when it runs only");
        }
        return all;
    }

    private Value still(ExecutableElement method, String name, List<Value> arguments) {
        if (method.getEnclosingElement().getSimpleName().toString().endsWith("Column")
                && name.equals("create")
                && !arguments.isEmpty()
                && arguments.get(0) instanceof Value.Text title) {
            Value cells = Expressions.joined(arguments.subList(1, arguments.size()));
            return new Value.Columns(new HashMap<>(Map.of(title.text(), cells)));
        }
        if (JOINS.contains(name)) {
            return Expressions.joined(
                    arguments.stream()
                            .map(
                                    one ->
                                            one instanceof Value.Rule rule
                                                            && (name.equals("orElseGet")
                                                                    || name.equals("or"))
                                                    ? rule.of().apply(List.of())
                                                    : one)
                            .filter(
                                    one ->
                                            arguments.size() == 1
                                                    || !name.equals("nCopies")
                                                    || one != arguments.get(0))
                            .toList());
        }
        if (method.getEnclosingElement().getSimpleName().contentEquals("StatUtils")
                && name.matches("percentile|mean|min|max|sum")) {
            return arguments.get(0);
        }
        if (name.equals("parseDouble") || name.equals("nextDouble")) {
            return Amount.ONE;
        }
        return Calls.isNumber(method.getReturnType())
                ? new Value.Unknown("what %s does to units is not known here".formatted(name))
                : Expressions.joined(arguments.stream().filter(Amount.class::isInstance).toList())
                                        instanceof Amount amount
                                && !name.equals("format")
                        ? new Value.Thing(amount)
                        : Value.THING;
    }

    private Value ofAmount(
            ExecutableElement method, String name, Amount subject, List<Value> arguments) {
        String returned = method.getReturnType().toString();
        if (returned.equals("boolean") || returned.equals("java.lang.String")) {
            return Value.THING;
        }
        for (Value argument : arguments) {
            if (argument instanceof Amount other) {
                switch (name) {
                    case "multiply":
                        return subject.times(other);
                    case "divide":
                        return subject.over(other);
                    case "power":
                        return raised(subject, other);
                    case "add", "subtract", "orElse":
                        return subject.plus(other, "stands beside");
                    default:
                }
            }
        }
        if (name.equals("orElse") || name.equals("orElseGet")) {
            return subject;
        }
        return subject;
    }

    private static Value raised(Amount base, Amount exponent) {
        Double power = exponent.factors().size() == 1 ? exponent.factors().get(0) : null;
        return power == null || power != Math.rint(power)
                ? new Value.Unknown("the exponent is no whole number that is known here")
                : base.power(power.intValue());
    }

    private Value ofThing(
            ExecutableElement method, String name, Value subject, List<Value> arguments) {
        Value.Thing thing = (Value.Thing) (subject instanceof Value.Thing ? subject : Value.THING);
        String returned = method.getReturnType().toString();
        if (returned.matches("int|long")) {
            return Amount.ONE;
        }
        if (returned.equals("boolean") || returned.equals("java.lang.String")) {
            return Value.THING;
        }
        if (name.equals("orElse") || name.equals("getOrDefault")) {
            return subject.or(arguments.get(arguments.size() - 1));
        }
        if (Calls.isNumber(method.getReturnType())) {
            return thing.about() != null
                    ? thing.about()
                    : new Value.Unknown("what %s does to units is not known here".formatted(name));
        }
        return subject;
    }
}
