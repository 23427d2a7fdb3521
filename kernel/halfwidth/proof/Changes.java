package halfwidth.proof;

import com.sun.source.tree.ArrayAccessTree;
import com.sun.source.tree.ExpressionTree;
import com.sun.source.tree.IdentifierTree;
import com.sun.source.tree.MemberSelectTree;
import com.sun.source.tree.MethodInvocationTree;
import com.sun.source.tree.ParenthesizedTree;
import com.sun.source.tree.Tree;
import com.sun.source.util.TreePath;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.lang.model.element.ElementKind;
import javax.lang.model.element.ExecutableElement;
import javax.lang.model.element.TypeElement;
import javax.lang.model.type.ArrayType;
import javax.lang.model.type.DeclaredType;
import javax.lang.model.type.TypeMirror;

/** What a library method does to the variables that it is called on and that it is given. */
final class Changes {
    private final Expressions expressions;

    Changes(Expressions expressions) {
        this.expressions = expressions;
    }

    /** Notes what a call changes; one of a method that is not known may change anything. */
    void of(
            TreePath path,
            ExecutableElement method,
            Value subject,
            List<Value> arguments,
            Scope scope) {
        MethodInvocationTree call = (MethodInvocationTree) path.getLeaf();
        Optional<Effect> effect = KnownMethods.effect(method);
        if (effect.isPresent()) {
            known(effect.get(), path, subject, arguments, scope);
            return;
        }
        Value.Unknown spoilt =
                new Value.Unknown(
                        "%s, whose effect is not known here, may have changed it"
                                .formatted(method.getSimpleName()));
        if (subject != null) {
            spoil(receiver(path), scope, spoilt);
        }
        for (ExpressionTree argument : call.getArguments()) {
            spoil(new TreePath(path, argument), scope, spoilt);
        }
    }

    private void known(
            Effect effect, TreePath path, Value subject, List<Value> arguments, Scope scope) {
        Value last = arguments.isEmpty() ? Value.NOTHING : arguments.get(arguments.size() - 1);
        switch (effect) {
            case ADDED -> add(receiver(path), subject, last, scope);
            case FITTED, COLUMNS_ADDED -> {
                if (receiver(path).getLeaf() instanceof IdentifierTree name) {
                    scope.assign(
                            name.getName().toString(),
                            Libraries.changed(effect, subject, arguments));
                }
            }
            case CELL_SET -> {
                if (subject instanceof Value.Columns row
                        && arguments.get(0) instanceof Value.Text column
                        && row.byName().containsKey(column.text())) {
                    row.byName().get(column.text()).or(last);
                }
            }
            case FILLED -> add(argument(path), arguments.get(0), last, scope);
            case SET_ALL ->
                    add(
                            argument(path),
                            arguments.get(0),
                            last instanceof Value.Rule rule
                                    ? rule.of().apply(List.of(Amount.ONE))
                                    : new Value.Unknown("what it is set to is not known"),
                            scope);
            default -> {}
        }
    }

    private static TreePath receiver(TreePath path) {
        Tree select = ((MethodInvocationTree) path.getLeaf()).getMethodSelect();
        TreePath at = new TreePath(path, select);
        return select instanceof MemberSelectTree member
                ? new TreePath(at, member.getExpression())
                : at;
    }

    private static TreePath argument(TreePath path) {
        return new TreePath(path, ((MethodInvocationTree) path.getLeaf()).getArguments().get(0));
    }

    private void add(TreePath to, Value before, Value more, Scope scope) {
        Value taken =
                before instanceof Value.Columns column
                                && column.byName().size() == 1
                                && !(more instanceof Value.Columns)
                        ? new Value.Columns(
                                Map.of(column.byName().keySet().iterator().next(), more))
                        : more;
        if (to.getLeaf() instanceof IdentifierTree name) {
            if (scope.find(name.getName().toString()) != null) {
                scope.assign(name.getName().toString(), taken);
            }
        } else if (before.or(taken) instanceof Value.Unknown unknown) {
            spoil(to, scope, unknown);
        }
    }

    /** Nothing is known any more of the variable that an expression begins with. */
    private void spoil(TreePath expression, Scope scope, Value.Unknown spoilt) {
        TypeMirror type = expressions.trees().getTypeMirror(expression);
        if (type == null || !isMutable(type)) {
            return;
        }
        Tree root = expression.getLeaf();
        while (!(root instanceof IdentifierTree)) {
            if (root instanceof MethodInvocationTree call
                    && call.getMethodSelect() instanceof MemberSelectTree method) {
                root = method.getExpression();
            } else if (root instanceof MemberSelectTree member) {
                root = member.getExpression();
            } else if (root instanceof ArrayAccessTree access) {
                root = access.getExpression();
            } else if (root instanceof ParenthesizedTree inner) {
                root = inner.getExpression();
            } else {
                return;
            }
        }
        String name = ((IdentifierTree) root).getName().toString();
        if (scope.find(name) != null) {
            scope.assign(name, spoilt);
        }
    }

    private static boolean isMutable(TypeMirror type) {
        if (type instanceof ArrayType) {
            return true;
        }
        if (!(type instanceof DeclaredType declared)
                || declared.asElement().getKind() == ElementKind.ENUM) {
            return false;
        }
        String name = ((TypeElement) declared.asElement()).getQualifiedName().toString();
        return !name.matches(
                "(java\\.(lang|time|util\\.(function|stream))|halfwidth)\\..*"
                        + "|java\\.util\\.(Optional.*|Random|Locale|Comparator)"
                        + "|org\\.hipparchus\\.complex\\.Complex"
                        + "|tech\\.tablesaw\\.selection\\..*");
    }
}
