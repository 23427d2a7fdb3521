package halfwidth.proof;

import com.sun.source.tree.*;
import com.sun.source.util.TreePath;
import com.sun.source.util.Trees;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.lang.model.element.Element;
import javax.lang.model.element.ElementKind;
import javax.lang.model.element.TypeElement;
import javax.lang.model.element.VariableElement;

/** Works out expressions with amounts in place of numbers. */
final class Expressions {
    private final Trees trees;
    private final StatedUnits stated;
    private final Calls calls;
    private final Statements statements;
    private final Scope globals;

    Expressions(Trees trees, StatedUnits stated, Map<Element, TreePath> methods, Scope globals) {
        this.trees = trees;
        this.globals = globals;
        this.stated = stated;
        this.statements = new Statements(this);
        this.calls = new Calls(this, methods, stated);
    }

    Statements statements() {
        return statements;
    }

    /** The page's variables as known so far. */
    Scope globals() {
        return globals;
    }

    Element element(TreePath path) {
        return trees.getElement(path);
    }

    Trees trees() {
        return trees;
    }

    Value of(Tree tree, TreePath around, Scope scope) {
        return of(new TreePath(around, tree), scope);
    }

    Value of(TreePath path, Scope scope) {
        Tree tree = path.getLeaf();
        if (tree instanceof ParenthesizedTree inner) {
            return of(inner.getExpression(), path, scope);
        }
        if (tree instanceof LiteralTree literal) {
            return literal(literal);
        }
        if (tree instanceof IdentifierTree || tree instanceof MemberSelectTree) {
            return named(path, scope);
        }
        if (tree instanceof BinaryTree binary) {
            return binary(binary, path, scope);
        }
        if (tree instanceof UnaryTree unary) {
            return unary(unary, path, scope);
        }
        if (tree instanceof ConditionalExpressionTree choice) {
            of(choice.getCondition(), path, scope);
            return branch(choice.getTrueExpression(), choice, path, scope)
                    .or(branch(choice.getFalseExpression(), choice, path, scope));
        }
        if (tree instanceof TypeCastTree cast) {
            return of(cast.getExpression(), path, scope);
        }
        if (tree instanceof ArrayAccessTree access) {
            return of(access.getExpression(), path, scope);
        }
        return larger(path, scope);
    }

    /** A branch's value; none where it is the very optional that the condition found empty. */
    private Value branch(
            ExpressionTree branch, ConditionalExpressionTree choice, TreePath path, Scope scope) {
        boolean tested =
                branch instanceof IdentifierTree
                        && choice.getCondition().toString().contains(branch + ".is");
        return tested ? Value.NOTHING : of(branch, path, scope);
    }

    private Value larger(TreePath path, Scope scope) {
        Tree tree = path.getLeaf();
        if (tree instanceof MethodInvocationTree || tree instanceof NewClassTree) {
            return calls.of(path, scope);
        }
        if (tree instanceof NewArrayTree array) {
            return array.getInitializers() == null
                    ? Value.NOTHING
                    : joined(all(array.getInitializers(), path, scope));
        }
        if (tree instanceof LambdaExpressionTree lambda) {
            return new Value.Rule(values -> applied(lambda, path, scope, values), path);
        }
        if (tree instanceof MemberReferenceTree) {
            return new Value.Rule(values -> calls.referred(path, values, scope), path);
        }
        if (tree instanceof AssignmentTree assignment) {
            Value value = of(assignment.getExpression(), path, scope);
            assign(assignment.getVariable(), value, scope);
            return value;
        }
        if (tree instanceof CompoundAssignmentTree assignment) {
            return compound(assignment, path, scope);
        }
        return tree instanceof SwitchExpressionTree choice
                ? cases(choice, path, scope)
                : Value.THING;
    }

    private static Value literal(LiteralTree literal) {
        Object value = literal.getValue();
        if (value instanceof Number number) {
            return Amount.plain(number.doubleValue());
        }
        return value instanceof String text
                ? new Value.Text(text)
                : value == null ? Value.NOTHING : Value.THING;
    }

    private Value named(TreePath path, Scope scope) {
        if (path.getLeaf() instanceof IdentifierTree name) {
            Value local = scope.find(name.getName().toString());
            if (local != null) {
                return local;
            }
        }
        if (path.getLeaf() instanceof MemberSelectTree select
                && select.getIdentifier().contentEquals("length")) {
            return Amount.ONE;
        }
        return constant(element(path));
    }

    private Value constant(Element element) {
        if (!(element instanceof VariableElement variable)
                || element.getKind() == ElementKind.ENUM_CONSTANT) {
            return Value.THING;
        }
        String name = variable.getSimpleName().toString();
        if (name.equals("NaN") || name.endsWith("_INFINITY")) {
            return Value.NOTHING;
        }
        String owner = ((TypeElement) variable.getEnclosingElement()).getQualifiedName().toString();
        if (owner.startsWith("java.") && variable.getConstantValue() instanceof Number number) {
            return Amount.plain(number.doubleValue());
        }
        if (!Calls.isNumber(variable.asType())) {
            return Value.THING;
        }
        Optional<Value> unit =
                stated.constant((TypeElement) variable.getEnclosingElement(), name)
                        .flatMap(Calls::unit)
                        .map(Amount::of);
        return unit.orElseGet(
                () -> new Value.Unknown("the Javadoc of " + name + " states no unit"));
    }

    private Value unary(UnaryTree unary, TreePath path, Scope scope) {
        Value of = of(unary.getExpression(), path, scope);
        return unary.getKind() == Tree.Kind.UNARY_MINUS && of instanceof Amount amount
                ? Amount.plain(-1).times(amount)
                : of;
    }

    private Value binary(BinaryTree tree, TreePath path, Scope scope) {
        Value left = of(tree.getLeftOperand(), path, scope);
        Value right = of(tree.getRightOperand(), path, scope);
        if (left instanceof Value.Text || right instanceof Value.Text) {
            return Value.THING;
        }
        if (!(left instanceof Amount one) || !(right instanceof Amount two)) {
            return either(tree.getKind(), left, right);
        }
        return switch (tree.getKind()) {
            case PLUS -> one.plus(two, "is added to");
            case MINUS -> one.plus(two, "has taken from it");
            case REMAINDER -> one.plus(two, "is divided, for the remainder, by");
            case MULTIPLY -> one.times(two);
            case DIVIDE -> one.over(two);
            case LESS_THAN,
                    LESS_THAN_EQUAL,
                    GREATER_THAN,
                    GREATER_THAN_EQUAL,
                    EQUAL_TO,
                    NOT_EQUAL_TO -> {
                one.plus(two, "is compared with");
                yield Value.THING;
            }
            default -> Value.THING;
        };
    }

    private static Value either(Tree.Kind kind, Value left, Value right) {
        boolean number =
                switch (kind) {
                    case PLUS, MINUS, MULTIPLY, DIVIDE, REMAINDER -> true;
                    default -> false;
                };
        if (!number) {
            return Value.THING;
        }
        for (Value one : List.of(left, right)) {
            if (one instanceof Value.Unknown) {
                return one;
            }
        }
        return left instanceof Value.Nothing || right instanceof Value.Nothing
                ? Value.NOTHING
                : left instanceof Amount && right instanceof Value.Thing
                        ? Value.THING
                        : new Value.Unknown("a part of it is no number that is known here");
    }

    private Value compound(CompoundAssignmentTree tree, TreePath path, Scope scope) {
        Value before = of(tree.getVariable(), path, scope);
        Value by = of(tree.getExpression(), path, scope);
        if (!(before instanceof Amount one) || !(by instanceof Amount two)) {
            Value value = before.or(by);
            assign(tree.getVariable(), value, scope);
            return value;
        }
        Value value =
                switch (tree.getKind()) {
                    case PLUS_ASSIGNMENT, MINUS_ASSIGNMENT -> one.plus(two, "is added to");
                    case MULTIPLY_ASSIGNMENT -> one.times(two);
                    case DIVIDE_ASSIGNMENT -> one.over(two);
                    default -> before;
                };
        assign(tree.getVariable(), value, scope);
        return value;
    }

    private void assign(ExpressionTree target, Value value, Scope scope) {
        if (target instanceof IdentifierTree name) {
            scope.assign(name.getName().toString(), value);
        } else if (target instanceof ArrayAccessTree access) {
            assign(access.getExpression(), value, scope);
        }
    }

    private Value applied(
            LambdaExpressionTree lambda, TreePath path, Scope scope, List<Value> values) {
        Scope inner = new Scope(scope);
        for (int i = 0; i < lambda.getParameters().size(); i++) {
            String name = lambda.getParameters().get(i).getName().toString();
            inner.declare(
                    name,
                    i < values.size()
                            ? values.get(i)
                            : values.isEmpty() ? Value.THING : values.get(values.size() - 1));
        }
        TreePath body = new TreePath(path, lambda.getBody());
        return lambda.getBodyKind() == LambdaExpressionTree.BodyKind.EXPRESSION
                ? of(body, inner)
                : statements.returned(body, inner);
    }

    private Value cases(SwitchExpressionTree choice, TreePath path, Scope scope) {
        List<Value> values = new ArrayList<>();
        for (CaseTree one : choice.getCases()) {
            TreePath at = new TreePath(path, one);
            if (one.getBody() instanceof ExpressionTree body) {
                values.add(of(body, at, scope));
            } else if (one.getBody() instanceof BlockTree body) {
                values.add(statements.returned(new TreePath(at, body), new Scope(scope)));
            }
        }
        return joined(values);
    }

    List<Value> all(List<? extends ExpressionTree> trees, TreePath around, Scope scope) {
        List<Value> values = new ArrayList<>();
        trees.forEach(tree -> values.add(of(tree, around, scope)));
        return values;
    }

    static Value joined(List<Value> values) {
        return values.stream().reduce(Value.NOTHING, Value::or);
    }
}
