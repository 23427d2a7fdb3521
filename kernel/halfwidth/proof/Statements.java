package halfwidth.proof;

import com.sun.source.tree.*;
import com.sun.source.util.TreePath;
import java.util.ArrayList;
import java.util.List;

/** Works through the statements of a method's body, each loop twice, each branch once. */
final class Statements {
    private final Expressions expressions;

    Statements(Expressions expressions) {
        this.expressions = expressions;
    }

    /** What a body gives, by any of its returns. */
    Value returned(TreePath body, Scope scope) {
        List<Value> returns = new ArrayList<>();
        run(body, scope, returns);
        return returns.isEmpty() ? Value.THING : Expressions.joined(returns);
    }

    private void run(Tree tree, TreePath around, Scope scope, List<Value> returns) {
        if (tree != null) {
            run(new TreePath(around, tree), scope, returns);
        }
    }

    private void run(TreePath path, Scope scope, List<Value> returns) {
        Tree tree = path.getLeaf();
        if (tree instanceof BlockTree block) {
            Scope inner = new Scope(scope);
            block.getStatements().forEach(one -> run(one, path, inner, returns));
        } else if (tree instanceof VariableTree variable) {
            Value value =
                    variable.getInitializer() == null
                            ? Value.NOTHING
                            : expressions.of(variable.getInitializer(), path, scope);
            scope.declare(variable.getName().toString(), value);
        } else if (tree instanceof ExpressionStatementTree statement) {
            expressions.of(statement.getExpression(), path, scope);
        } else if (tree instanceof ReturnTree given && given.getExpression() != null) {
            returns.add(expressions.of(given.getExpression(), path, scope));
        } else if (tree instanceof YieldTree given) {
            returns.add(expressions.of(given.getValue(), path, scope));
        } else if (tree instanceof IfTree branch) {
            expressions.of(branch.getCondition(), path, scope);
            run(branch.getThenStatement(), path, new Scope(scope), returns);
            run(branch.getElseStatement(), path, new Scope(scope), returns);
        } else {
            loop(path, scope, returns);
        }
    }

    private void loop(TreePath path, Scope scope, List<Value> returns) {
        Tree tree = path.getLeaf();
        Scope inner = new Scope(scope);
        if (tree instanceof ForLoopTree loop) {
            loop.getInitializer().forEach(one -> run(one, path, inner, returns));
            for (int i = 0; i < 2; i++) {
                expressions.of(loop.getCondition(), path, inner);
                run(loop.getStatement(), path, inner, returns);
            }
        } else if (tree instanceof EnhancedForLoopTree loop) {
            Value each = expressions.of(loop.getExpression(), path, scope);
            inner.declare(loop.getVariable().getName().toString(), each);
            run(loop.getStatement(), path, inner, returns);
            run(loop.getStatement(), path, inner, returns);
        } else if (tree instanceof WhileLoopTree loop) {
            run(loop.getStatement(), path, inner, returns);
            run(loop.getStatement(), path, inner, returns);
        } else if (tree instanceof TryTree attempt) {
            run(attempt.getBlock(), path, inner, returns);
        }
    }
}
