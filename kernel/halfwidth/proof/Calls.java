package halfwidth.proof;

import com.sun.source.tree.IdentifierTree;
import com.sun.source.tree.MemberReferenceTree;
import com.sun.source.tree.MemberSelectTree;
import com.sun.source.tree.MethodInvocationTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.NewClassTree;
import com.sun.source.tree.PrimitiveTypeTree;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.TreePath;
import halfwidth.value.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import javax.lang.model.element.Element;
import javax.lang.model.element.ElementKind;
import javax.lang.model.element.ExecutableElement;
import javax.lang.model.element.Modifier;
import javax.lang.model.element.TypeElement;
import javax.lang.model.element.VariableElement;
import javax.lang.model.type.TypeMirror;

/**
 * Works out calls: of the page's methods by what they do, of the physics by its Javadoc, of
 * libraries by the effects that are known.
 */
final class Calls {
    private static final Pattern NUMBER =
            Pattern.compile(
                    "\\b(double|int|long|float|Double|Integer|Long|Float|OptionalDouble|OptionalInt|Estimate|DoubleStream|DoubleColumn|IntStream)\\b");
    private static final int DEEPEST = 12;

    private final Expressions expressions;
    private final Map<Element, TreePath> methods;
    private final StatedUnits stated;
    private final Changes changes;
    private int depth;

    Calls(Expressions expressions, Map<Element, TreePath> methods, StatedUnits stated) {
        this.expressions = expressions;
        this.methods = methods;
        this.stated = stated;
        this.changes = new Changes(expressions);
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
        Value subject =
                call.getMethodSelect() instanceof MemberSelectTree member
                                && !method.getModifiers().contains(Modifier.STATIC)
                        ? expressions.of(member.getExpression(), select, scope)
                        : null;
        if (isDays(method, call, select)) {
            return Amount.of(Unit.of("d"));
        }
        TreePath own = subject == null ? methods.get(method) : null;
        if (own != null) {
            return inlined(own, call, arguments, scope);
        }
        Value result = called(method, subject, arguments);
        if (isOfLibrary(method)) {
            changes.of(path, method, subject, arguments, scope);
        }
        return result;
    }

    /** Whether this is {@code ChronoUnit.DAYS.between}. */
    private boolean isDays(ExecutableElement method, MethodInvocationTree call, TreePath select) {
        return owner(method).equals("java.time.temporal.ChronoUnit")
                && method.getSimpleName().contentEquals("between")
                && call.getMethodSelect() instanceof MemberSelectTree member
                && expressions.element(new TreePath(select, member.getExpression()))
                        instanceof VariableElement constant
                && constant.getKind() == ElementKind.ENUM_CONSTANT
                && constant.getSimpleName().contentEquals("DAYS");
    }

    private static String owner(ExecutableElement method) {
        return ((TypeElement) method.getEnclosingElement()).getQualifiedName().toString();
    }

    /** Whether a method is neither the page's, in whatever class, nor the physics'. */
    private static boolean isOfLibrary(ExecutableElement method) {
        String type = owner(method);
        return !type.startsWith("halfwidth.")
                && !type.equals(PageSource.CLASS)
                && !type.startsWith(PageSource.CLASS + ".");
    }

    private Value inlined(
            TreePath own, MethodInvocationTree call, List<Value> arguments, Scope scope) {
        Scope inner = parameters(own, arguments);
        Value value = run(own, inner);
        List<? extends VariableTree> parameters = ((MethodTree) own.getLeaf()).getParameters();
        for (int i = 0; i < Math.min(parameters.size(), arguments.size()); i++) {
            Value after = inner.find(parameters.get(i).getName().toString());
            boolean handed = parameters.get(i).getType() instanceof PrimitiveTypeTree;
            if (!handed
                    && !after.equals(arguments.get(i))
                    && call.getArguments().get(i) instanceof IdentifierTree name) {
                scope.assign(name.getName().toString(), after);
            }
        }
        return value;
    }

    private Scope parameters(TreePath own, List<Value> arguments) {
        Scope scope = new Scope(expressions.globals());
        List<? extends VariableTree> parameters = ((MethodTree) own.getLeaf()).getParameters();
        for (int i = 0; i < parameters.size(); i++) {
            boolean rest = i == parameters.size() - 1 && arguments.size() > parameters.size();
            scope.declare(
                    parameters.get(i).getName().toString(),
                    rest
                            ? Expressions.joined(arguments.subList(i, arguments.size()))
                            : i < arguments.size() ? arguments.get(i) : Value.NOTHING);
        }
        return scope;
    }

    private Value run(TreePath own, Scope scope) {
        if (depth >= DEEPEST) {
            return Value.NOTHING; // calls itself: what it gives is told by its other returns
        }
        depth++;
        try {
            MethodTree method = (MethodTree) own.getLeaf();
            return expressions.statements().returned(new TreePath(own, method.getBody()), scope);
        } finally {
            depth--;
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
            TreePath own = methods.get(method);
            return own != null ? run(own, parameters(own, values)) : called(method, null, values);
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
        boolean ours = owner(method).startsWith("halfwidth.");
        if (ours && !(subject instanceof Value.Rule) && KnownMethods.effect(method).isEmpty()) {
            return stated(method, subject, arguments);
        }
        boolean known = ours || isOfLibrary(method) || subject instanceof Value.Rule;
        return known
                ? Libraries.called(method, subject, arguments)
                : new Value.Unknown(
                        "what %s gives is not followed, since it is a method of a class of the page"
                                .formatted(method.getSimpleName()));
    }

    private Value made(ExecutableElement method, List<Value> arguments) {
        String type = owner(method);
        if (type.equals("halfwidth.localizer.uncertainty.Estimate")) {
            return Expressions.joined(arguments);
        }
        if (!type.startsWith("halfwidth.")) {
            return called(method, null, arguments);
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
        Amount carried = throughRules(carried(subject, ofNoUnit(method, arguments)), arguments);
        Optional<String> bracket = stated.given(method);
        if (!isNumber(method.getReturnType())) {
            Optional<Unit> unit = bracket.flatMap(Calls::unit);
            return new Value.Thing(unit.map(Amount::of).orElse(handedOn(bracket, carried)));
        }
        if (bracket.isEmpty()) {
            return new Value.Unknown(
                    "the Javadoc of %s states no unit".formatted(method.getSimpleName()));
        }
        Optional<Unit> unit = unit(bracket.get());
        if (unit.isPresent()) {
            return linear(method, unit.get(), arguments);
        }
        if (subject instanceof Value.Unknown) {
            return subject;
        }
        for (Value argument : arguments) {
            if (argument instanceof Value.Unknown) {
                return argument;
            }
        }
        Amount follows = handedOn(bracket, carried);
        if (follows != null && !carried.free()) {
            return follows;
        }
        for (Value argument : arguments) {
            if (argument instanceof Value.Text text && Unit.find(text.text()).isPresent()) {
                return Amount.of(Unit.of(text.text()));
            }
        }
        return follows != null
                ? follows
                : new Value.Unknown(
                        "the Javadoc of %s states its unit as %s only"
                                .formatted(method.getSimpleName(), bracket.get()));
    }

    /** The arguments whose tags name no unit, of which another may be made. */
    private List<Value> ofNoUnit(ExecutableElement method, List<Value> arguments) {
        return IntStream.range(0, arguments.size())
                .filter(
                        i ->
                                i >= method.getParameters().size()
                                        || stated.taken(method, i).flatMap(Calls::unit).isEmpty())
                .mapToObj(arguments::get)
                .toList();
    }

    /** What rules among the arguments make of it, if there are any; null if that is not known. */
    private static Amount throughRules(Amount carried, List<Value> arguments) {
        Amount made = carried;
        for (Value argument : arguments) {
            if (argument instanceof Value.Rule rule) {
                Value taken =
                        carried != null
                                ? carried
                                : new Value.Unknown("what the rule is given is not known");
                Value value = rule.of().apply(List.of(taken));
                made =
                        value instanceof Value.Thing thing
                                ? thing.about()
                                : value instanceof Amount amount ? amount : null;
            }
        }
        return made;
    }

    /** What a method gives that names no unit, but how its unit follows; null if it does not. */
    private static Amount handedOn(Optional<String> bracket, Amount carried) {
        if (carried == null || bracket.filter(b -> b.matches(".* (over|times) .*")).isPresent()) {
            return null;
        }
        boolean yearly = bracket.filter(b -> b.endsWith("per year")).isPresent();
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
