package halfwidth.proof;

import com.sun.source.tree.ExpressionTree;
import com.sun.source.tree.IdentifierTree;
import com.sun.source.tree.MemberReferenceTree;
import com.sun.source.tree.MemberSelectTree;
import com.sun.source.tree.MethodInvocationTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.NewClassTree;
import com.sun.source.util.TreePath;
import halfwidth.value.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Pattern;
import javax.lang.model.element.Element;
import javax.lang.model.element.ElementKind;
import javax.lang.model.element.ExecutableElement;
import javax.lang.model.element.Modifier;
import javax.lang.model.element.TypeElement;
import javax.lang.model.type.TypeMirror;

/**
 * Works out calls: of the page's methods, of the physics by its Javadoc, of the JDK by its ways.
 */
final class Calls {
    private static final Pattern NUMBER =
            Pattern.compile(
                    "\\b(double|int|long|float|Double|Integer|Long|Float|OptionalDouble|OptionalInt|Estimate|DoubleStream|DoubleColumn|IntStream)\\b");
    private static final int DEEPEST = 12;

    private final Expressions expressions;
    private final Map<String, TreePath> methods;
    private final StatedUnits stated;
    private final Libraries libraries = new Libraries();
    private int depth;

    Calls(Expressions expressions, Map<String, TreePath> methods, StatedUnits stated) {
        this.expressions = expressions;
        this.methods = methods;
        this.stated = stated;
    }

    /** Whether a type is that of a number, or of several. */
    static boolean isNumber(TypeMirror type) {
        return NUMBER.matcher(type.toString()).find();
    }

    /** The unit that a bracket in the Javadoc names; empty if it names none. */
    static Optional<Unit> unit(String bracket) {
        return Unit.find(bracket)
                .or(() -> Unit.find(bracket.split("[,;]| of | above ")[0].strip()))
                .or(() -> bracket.startsWith("ratio") ? Optional.of(Unit.ONE) : Optional.empty());
    }

    Value of(TreePath path, Scope scope) {
        if (path.getLeaf() instanceof NewClassTree made) {
            List<Value> arguments = expressions.all(made.getArguments(), path, scope);
            return expressions.element(path) instanceof ExecutableElement method
                    ? made(method, arguments)
                    : Value.THING;
        }
        MethodInvocationTree call = (MethodInvocationTree) path.getLeaf();
        List<Value> arguments = expressions.all(call.getArguments(), path, scope);
        TreePath select = new TreePath(path, call.getMethodSelect());
        Element element = expressions.element(path);
        if (!(element instanceof ExecutableElement method)) {
            return new Value.Unknown("the compiler does not know " + call.getMethodSelect());
        }
        String name = method.getSimpleName().toString();
        if (name.equals("between") && call.getMethodSelect().toString().endsWith("DAYS.between")) {
            return Amount.of(Unit.of("d"));
        }
        if (call.getMethodSelect() instanceof MemberSelectTree member
                && !method.getModifiers().contains(Modifier.STATIC)) {
            Value subject = expressions.of(member.getExpression(), select, scope);
            Value result = called(method, subject, arguments);
            effect(member.getExpression(), name, arguments, scope);
            return result;
        }
        if (name.equals("setAll")
                && call.getArguments().get(0) instanceof IdentifierTree array
                && arguments.get(1) instanceof Value.Rule rule) {
            scope.assign(array.getName().toString(), rule.of().apply(List.of(Amount.ONE)));
            return Value.THING;
        }
        TreePath own = methods.get(key(name, arguments.size()));
        return own != null && isPage(method)
                ? inlined(own, arguments)
                : called(method, null, arguments);
    }

    static String key(String name, int parameters) {
        return name + "/" + parameters;
    }

    private static boolean isPage(ExecutableElement method) {
        return method.getEnclosingElement().getSimpleName().contentEquals(PageSource.CLASS);
    }

    private Value inlined(TreePath own, List<Value> arguments) {
        MethodTree method = (MethodTree) own.getLeaf();
        if (depth >= DEEPEST) {
            return Value.NOTHING; // calls itself: what it gives is told by its other returns
        }
        depth++;
        try {
            Scope scope = new Scope(expressions.globals());
            for (int i = 0; i < arguments.size(); i++) {
                scope.declare(method.getParameters().get(i).getName().toString(), arguments.get(i));
            }
            return expressions.statements().returned(new TreePath(own, method.getBody()), scope);
        } finally {
            depth--;
        }
    }

    /** What {@code list.add(x)} does to the list. */
    private static void effect(ExpressionTree on, String name, List<Value> arguments, Scope scope) {
        boolean adds = name.equals("add") || name.equals("append") || name.equals("set");
        if (adds && !arguments.isEmpty() && on instanceof IdentifierTree list) {
            Value last = arguments.get(arguments.size() - 1);
            Value before = scope.find(list.getName().toString());
            boolean number = last instanceof Amount || last instanceof Value.Unknown;
            if (before instanceof Value.Columns column && column.byName().size() == 1) {
                String title = column.byName().keySet().iterator().next();
                scope.assign(list.getName().toString(), new Value.Columns(Map.of(title, last)));
            } else if (before != null && number) {
                scope.assign(list.getName().toString(), last);
            }
        }
    }

    /** What {@code Type::method} gives for these. */
    Value referred(TreePath path, List<Value> values, Scope scope) {
        MemberReferenceTree reference = (MemberReferenceTree) path.getLeaf();
        if (!(expressions.element(path) instanceof ExecutableElement method)) {
            return new Value.Unknown("the compiler does not know " + reference);
        }
        if (method.getKind() == ElementKind.CONSTRUCTOR) {
            return made(method, values);
        }
        boolean still = method.getModifiers().contains(Modifier.STATIC);
        if (still) {
            return called(method, null, values);
        }
        Element named =
                expressions
                        .trees()
                        .getElement(new TreePath(path, reference.getQualifierExpression()));
        boolean bound = !(named instanceof TypeElement);
        Value subject =
                bound
                        ? expressions.of(reference.getQualifierExpression(), path, scope)
                        : values.isEmpty() ? Value.THING : values.get(0);
        List<Value> rest = bound || values.isEmpty() ? values : values.subList(1, values.size());
        return called(method, subject, rest);
    }

    private Value called(ExecutableElement method, Value subject, List<Value> arguments) {
        TypeElement owner = (TypeElement) method.getEnclosingElement();
        String type = owner.getQualifiedName().toString();
        String name = method.getSimpleName().toString();
        if (type.equals("java.lang.Math") || type.equals("java.lang.StrictMath")) {
            return Functions.of(name, arguments);
        }
        if (subject instanceof Value.Unknown) {
            return isNumber(method.getReturnType()) || isOpen(method) ? subject : Value.THING;
        }
        boolean estimate = type.endsWith(".Estimate") || type.endsWith(".Measurement");
        if (type.startsWith("halfwidth.") && !(estimate && subject instanceof Amount)) {
            return stated(method, subject, arguments);
        }
        return libraries.called(method, subject, arguments);
    }

    private static boolean isOpen(ExecutableElement method) {
        return method.getReturnType().getKind() == javax.lang.model.type.TypeKind.TYPEVAR
                || method.getReturnType().toString().contains("Stream")
                || method.getReturnType().toString().contains("Optional");
    }

    private Value made(ExecutableElement method, List<Value> arguments) {
        String type = ((TypeElement) method.getEnclosingElement()).getQualifiedName().toString();
        if (type.endsWith(".Estimate")) {
            return Expressions.joined(arguments);
        }
        if (!type.startsWith("halfwidth.")) {
            Value all =
                    Expressions.joined(
                            arguments.stream().filter(Amount.class::isInstance).toList());
            return type.startsWith("java.util.") ? Value.NOTHING.or(all) : Value.THING;
        }
        check(method, arguments);
        return new Value.Thing(about(arguments));
    }

    /** What these are about: the amounts among them, or what the others were made of. */
    private static Amount about(List<Value> arguments) {
        boolean amounts = arguments.stream().anyMatch(Amount.class::isInstance);
        return amounts
                ? common(arguments)
                : common(
                        arguments.stream()
                                .filter(Value.Thing.class::isInstance)
                                .map(thing -> (Value) ((Value.Thing) thing).about())
                                .filter(Objects::nonNull)
                                .toList());
    }

    private static Amount common(List<Value> arguments) {
        Value all = Value.NOTHING;
        for (Value argument : arguments) {
            if (argument instanceof Amount amount) {
                try {
                    all = all.or(amount);
                } catch (Refuted differ) {
                    return null; // made of several units: it stands for none of them
                }
            }
        }
        return all instanceof Amount amount ? amount : null;
    }

    private Value stated(ExecutableElement method, Value subject, List<Value> arguments) {
        if (!method.getSimpleName().toString().endsWith("Microamps")) {
            check(method, arguments);
        }
        Amount carried = carried(subject, arguments);
        Optional<String> bracket = stated.given(method);
        if (!isNumber(method.getReturnType())) {
            Optional<Unit> unit = bracket.flatMap(Calls::unit);
            return new Value.Thing(unit.map(Amount::of).orElse(handedOn(bracket, carried)));
        }
        if (bracket.isEmpty()) {
            String returned = method.getReturnType().toString();
            boolean count = returned.matches("int|long|java.util.OptionalInt");
            return count
                    ? Amount.ONE
                    : new Value.Unknown(
                            "the Javadoc of %s states no unit".formatted(method.getSimpleName()));
        }
        Optional<Unit> unit = unit(bracket.get());
        if (unit.isPresent()) {
            return linear(method, unit.get(), arguments);
        }
        for (Value argument : arguments) {
            if (argument instanceof Value.Unknown) {
                return argument;
            }
        }
        if (carried != null && !carried.free()) {
            return handedOn(bracket, carried);
        }
        for (Value argument : arguments) {
            if (argument instanceof Value.Text text && Unit.find(text.text()).isPresent()) {
                return Amount.of(Unit.of(text.text()));
            }
        }
        return carried != null
                ? carried
                : new Value.Unknown(
                        "the Javadoc of %s states its unit as %s only"
                                .formatted(method.getSimpleName(), bracket.get()));
    }

    /** What a method gives that names no unit, but how its unit follows. */
    private static Amount handedOn(Optional<String> bracket, Amount carried) {
        boolean yearly = carried != null && bracket.filter(b -> b.endsWith("per year")).isPresent();
        return yearly ? carried.over(Amount.of(Unit.of("a"))) : carried;
    }

    private static Amount carried(Value subject, List<Value> arguments) {
        if (subject instanceof Value.Thing thing) {
            return thing.about();
        }
        return subject instanceof Amount amount ? amount : about(arguments);
    }

    /** A method that multiplies by a constant does so to an amount for each metre, too. */
    private static Value linear(ExecutableElement method, Unit unit, List<Value> arguments) {
        boolean converts = method.getSimpleName().toString().matches("toMicroamps|fromMicroamps");
        if (converts && !(arguments.get(0) instanceof Amount)) {
            return arguments.get(0);
        }
        return converts && arguments.get(0) instanceof Amount amount
                ? Amount.of(
                        amount.free()
                                ? unit
                                : amount.unit()
                                        .times(unit)
                                        .over(
                                                Unit.of(
                                                        "toMicroamps"
                                                                        .contentEquals(
                                                                                method
                                                                                        .getSimpleName())
                                                                ? "1"
                                                                : "µA")))
                : Amount.of(unit);
    }

    private void check(ExecutableElement method, List<Value> arguments) {
        List<Value> all = new ArrayList<>(arguments);
        for (int i = 0; i < Math.min(all.size(), method.getParameters().size()); i++) {
            if (all.get(i) instanceof Amount amount) {
                Optional<Unit> wanted = stated.taken(method, i).flatMap(Calls::unit);
                if (wanted.isPresent() && !amount.is(wanted.get())) {
                    throw new Refuted(
                            "%s takes its %s in %s, and is given one in %s"
                                    .formatted(
                                            method.getSimpleName(),
                                            method.getParameters().get(i).getSimpleName(),
                                            wanted.get(),
                                            amount.label()));
                }
            }
        }
    }
}
