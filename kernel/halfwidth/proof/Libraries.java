package halfwidth.proof;

import halfwidth.value.Unit;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.lang.model.element.ElementKind;
import javax.lang.model.element.ExecutableElement;
import javax.lang.model.element.Modifier;
import javax.lang.model.element.TypeElement;
import javax.lang.model.type.TypeKind;

/** Works out calls of library methods by their known effects; all others stay open. */
final class Libraries {
    /** A column that was added under a name that is not known. */
    private static final String UNNAMED = "";

    private static final String X = "x";
    private static final String Y = "y";

    private Libraries() {}

    /** What a method gives; its subject is null where it is static or makes something. */
    static Value called(ExecutableElement method, Value subject, List<Value> arguments) {
        String name = method.getSimpleName().toString();
        if (method.getModifiers().contains(Modifier.ABSTRACT)
                && (subject instanceof Value.Rule || isFunction(method))) {
            return applied(subject, name, arguments);
        }
        Optional<Effect> effect = KnownMethods.effect(method);
        if (effect.isEmpty()) {
            ran(arguments);
        }
        Value value =
                effect.map(known -> value(method, known, subject, arguments))
                        .orElseGet(
                                () ->
                                        new Value.Unknown(
                                                "what %s does to units is not known here"
                                                        .formatted(name)));
        return isWordless(method) ? Value.THING : value;
    }

    /** What a table, or a regression, is after more was put in. */
    static Value changed(Effect effect, Value subject, List<Value> arguments) {
        return effect == Effect.FITTED
                ? fit(effect, "addData", subject, arguments)
                : table(subject, arguments);
    }

    private static boolean isFunction(ExecutableElement method) {
        String owner = ((TypeElement) method.getEnclosingElement()).getQualifiedName().toString();
        return owner.startsWith("java.util.function.");
    }

    /** Whether what a method gives is certainly no number. */
    private static boolean isWordless(ExecutableElement method) {
        TypeKind kind = method.getReturnType().getKind();
        return method.getKind() != ElementKind.CONSTRUCTOR
                && (kind == TypeKind.VOID
                        || kind == TypeKind.BOOLEAN
                        || method.getReturnType().toString().equals("java.lang.String"));
    }

    /** Rules that may be run by a method that is not known, with what nobody knows. */
    private static void ran(List<Value> arguments) {
        for (Value argument : arguments) {
            if (argument instanceof Value.Rule rule) {
                rule.of().apply(List.of(new Value.Unknown("what it is given is not known")));
            }
        }
    }

    private static Value value(
            ExecutableElement method, Effect effect, Value subject, List<Value> arguments) {
        String name = method.getSimpleName().toString();
        boolean column = isOfColumn(method) && effect != Effect.ADDED && effect != Effect.CREATED;
        List<Value> all =
                Stream.concat(Stream.ofNullable(subject), arguments.stream())
                        .map(one -> column ? cells(one) : one)
                        .toList();
        Value it = all.isEmpty() ? Value.NOTHING : all.get(0);
        Value last = all.isEmpty() ? Value.NOTHING : all.get(all.size() - 1);
        return switch (effect) {
            case SAME -> it;
            case ONE -> Amount.ONE;
            case DAYS -> Amount.of(Unit.of("d"));
            case PERCENT -> Amount.of(Unit.of("%"));
            case NOTHING -> Value.NOTHING;
            case JOINED -> Expressions.joined(all.stream().map(Libraries::supplied).toList());
            case JOINED_VALUES ->
                    Expressions.joined(
                            IntStream.range(0, all.size())
                                    .filter(i -> i % 2 == 1)
                                    .mapToObj(all::get)
                                    .toList());
            case FALLBACK, ADDED -> it.or(last);
            case REPEATED -> last;
            case NUMBERED ->
                    Expressions.joined(all) instanceof Amount amount && !amount.free()
                            ? amount.plainly()
                            : Amount.ONE;
            case COLUMN -> named(it, arguments);
            case TABLE -> table(new Value.Columns(Map.of()), arguments);
            case COLUMNS_ADDED -> table(it, arguments);
            case CREATED -> column(arguments);
            case BLANK_COLUMN -> column(arguments.subList(0, 1));
            case NAMED -> it;
            case CELL_SET, SET_ALL, FILLED -> Value.THING;
            case OPEN -> new Value.Unknown("what %s gives is not known here".formatted(name));
            case FIT, FITTED, SECOND, SLOPE, FIRST_SQUARE, SECOND_SQUARE, BOTH ->
                    fit(effect, name, it, arguments);
            case MAPPED,
                    EACH,
                    WATCHED,
                    FOLDED,
                    COLLECTED,
                    ITERATED,
                    MADE,
                    ITSELF,
                    COUNTED,
                    TOLD,
                    RULE,
                    THEN ->
                    byRule(effect, name, it, arguments);
            default -> Functions.of(effect, name, all);
        };
    }

    private static boolean isOfColumn(ExecutableElement method) {
        String owner = ((TypeElement) method.getEnclosingElement()).getQualifiedName().toString();
        return owner.matches(
                "tech\\.tablesaw\\..*\\.(\\w*Column|NumberMapFunctions|NumberFilters)");
    }

    /** What a column that stands on its own has in it. */
    private static Value cells(Value value) {
        return value instanceof Value.Columns column && column.byName().size() == 1
                ? column.byName().values().iterator().next()
                : value;
    }

    /** What is given in place of something missing, be it by a rule. */
    private static Value supplied(Value value) {
        return value instanceof Value.Rule rule ? rule.of().apply(List.of()) : value;
    }

    /** What a function gives; one of the physics gives what its Javadoc states. */
    private static Value applied(Value function, String name, List<Value> arguments) {
        if (function instanceof Value.Rule rule) {
            return rule.of().apply(arguments);
        }
        if (function instanceof Value.Thing thing && thing.about() != null) {
            return thing.about();
        }
        return function instanceof Value.Unknown
                ? function
                : new Value.Unknown("the function that %s runs is not known".formatted(name));
    }

    private static Value byRule(Effect effect, String name, Value it, List<Value> arguments) {
        Value last = arguments.isEmpty() ? Value.THING : arguments.get(arguments.size() - 1);
        return switch (effect) {
            case MAPPED, COLLECTED -> applied(arguments.get(0), name, List.of(it));
            case EACH, WATCHED -> {
                applied(last, name, List.of(it));
                yield it;
            }
            case FOLDED -> {
                Value start = arguments.size() > 1 ? arguments.get(0).or(it) : it;
                yield again(applied(last, name, List.of(start, it)), start, name);
            }
            case ITERATED -> again(applied(last, name, List.of(it)), it, name);
            case MADE -> applied(last, name, List.of());
            case ITSELF -> rule(values -> values.get(0));
            case COUNTED -> rule(values -> Amount.ONE);
            case TOLD -> rule(values -> Value.THING);
            case RULE -> arguments.get(0);
            case THEN -> rule(values -> applied(last, name, List.of(applied(it, name, values))));
            default -> throw new IllegalArgumentException(effect + " has no rule");
        };
    }

    private static Value rule(java.util.function.Function<List<Value>, Value> of) {
        return new Value.Rule(of, null);
    }

    /** The value of a rule that is fed with its own value, which must not change the unit. */
    private static Value again(Value after, Value before, String name) {
        boolean stays =
                after instanceof Amount one && before instanceof Amount other
                        ? one.settled().unit().equals(other.settled().unit())
                        : !(before instanceof Amount) && !(after instanceof Amount);
        return !stays
                ? new Value.Unknown("each turn of %s gives another unit".formatted(name))
                : after instanceof Amount amount ? amount.plainly() : after;
    }

    private static Value named(Value table, List<Value> arguments) {
        if (!(table instanceof Value.Columns columns)) {
            return table instanceof Value.Unknown
                    ? table
                    : new Value.Unknown("the columns of a table are not known");
        }
        return arguments.get(0) instanceof Value.Text text
                ? columns.byName()
                        .getOrDefault(
                                text.text(),
                                new Value.Unknown("column " + text.text() + " has no unit"))
                : any(columns);
    }

    private static Value any(Value.Columns table) {
        Value all = Value.NOTHING;
        try {
            for (Value one : table.byName().values()) {
                all = one instanceof Value.Thing ? all : all.or(one);
            }
        } catch (Refuted several) {
            return new Value.Unknown("which column is read is known only at run time");
        }
        return all;
    }

    private static Value table(Value before, List<Value> arguments) {
        if (!(before instanceof Value.Columns table)) {
            return before;
        }
        Map<String, Value> all = new HashMap<>(table.byName());
        for (Value argument : arguments) {
            if (argument instanceof Value.Columns more) {
                all.putAll(more.byName());
            } else if (!(argument instanceof Value.Text)) {
                all.put(UNNAMED, new Value.Unknown("the name of a column is not known"));
            }
        }
        return new Value.Columns(all);
    }

    private static Value column(List<Value> arguments) {
        Value cells = Expressions.joined(arguments.subList(1, arguments.size()));
        return arguments.get(0) instanceof Value.Text title
                ? new Value.Columns(Map.of(title.text(), cells))
                : cells;
    }

    private static Value fit(Effect effect, String name, Value it, List<Value> arguments) {
        if (effect == Effect.FIT) {
            return new Value.Columns(Map.of(X, Value.NOTHING, Y, Value.NOTHING));
        }
        if (!(it instanceof Value.Columns points)) {
            return new Value.Unknown("the points of %s are not known".formatted(name));
        }
        Value x = points.byName().get(X);
        Value y = points.byName().get(Y);
        return switch (effect) {
            case FITTED ->
                    it.or(new Value.Columns(Map.of(X, arguments.get(0), Y, arguments.get(1))));
            case SLOPE -> Functions.of(Effect.QUOTIENT, name, List.of(y, x));
            case FIRST_SQUARE -> Functions.of(Effect.SQUARE, name, List.of(x));
            case SECOND_SQUARE -> Functions.of(Effect.SQUARE, name, List.of(y));
            case BOTH -> Functions.of(Effect.PRODUCT, name, List.of(x, y));
            default -> y;
        };
    }
}
