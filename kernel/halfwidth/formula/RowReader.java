package halfwidth.formula;

import com.sun.source.tree.ArrayAccessTree;
import com.sun.source.tree.AssignmentTree;
import com.sun.source.tree.BlockTree;
import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompoundAssignmentTree;
import com.sun.source.tree.EnhancedForLoopTree;
import com.sun.source.tree.ExpressionStatementTree;
import com.sun.source.tree.ExpressionTree;
import com.sun.source.tree.ForLoopTree;
import com.sun.source.tree.IfTree;
import com.sun.source.tree.LambdaExpressionTree;
import com.sun.source.tree.MemberSelectTree;
import com.sun.source.tree.MethodInvocationTree;
import com.sun.source.tree.StatementTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.VariableTree;
import com.sun.source.tree.WhileLoopTree;
import com.sun.source.util.TreeScanner;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Finds what a statement computes row by row, in its rules and in the loops of its body. */
final class RowReader extends TreeScanner<Void, Void> {
    private static final Set<String> APPENDING = Set.of("append", "add");

    private final TermReader reader;

    RowReader(TermReader reader) {
        this.reader = reader;
    }

    @Override
    public Void visitLambdaExpression(LambdaExpressionTree rule, Void none) {
        if (rule.getBody() instanceof ExpressionTree) {
            reader.part(rule);
            return null;
        }
        return super.visitLambdaExpression(rule, none);
    }

    /** A type of the page keeps its own counsel. */
    @Override
    public Void visitClass(ClassTree type, Void none) {
        return null;
    }

    @Override
    public Void visitForLoop(ForLoopTree loop, Void none) {
        List<String> of =
                loop.getInitializer().stream()
                        .filter(VariableTree.class::isInstance)
                        .map(one -> ((VariableTree) one).getName().toString())
                        .toList();
        reader.loop(loop, loop.getStatement(), of, this);
        return null;
    }

    @Override
    public Void visitEnhancedForLoop(EnhancedForLoopTree loop, Void none) {
        scan(loop.getExpression(), none);
        List<String> of = List.of(loop.getVariable().getName().toString());
        reader.loop(loop, loop.getStatement(), of, this);
        return null;
    }

    @Override
    public Void visitWhileLoop(WhileLoopTree loop, Void none) {
        reader.loop(loop, loop.getStatement(), List.of(), this);
        return null;
    }

    /** The numbers that a loop's body computes, those in loops within it left out. */
    List<EachRow.Part> parts(StatementTree body) {
        List<EachRow.Part> parts = new ArrayList<>();
        gather(body, parts);
        return parts;
    }

    private void gather(StatementTree statement, List<EachRow.Part> parts) {
        if (statement instanceof BlockTree block) {
            block.getStatements().forEach(one -> gather(one, parts));
        } else if (statement instanceof IfTree branch) {
            scan(branch.getCondition(), null);
            gather(branch.getThenStatement(), parts);
            gather(branch.getElseStatement(), parts);
        } else if (statement instanceof VariableTree variable
                && variable.getInitializer() != null
                && FormulaReader.isNumber(String.valueOf(variable.getType()))) {
            parts.add(reader.kept(variable.getName().toString(), variable.getInitializer()));
        } else if (statement instanceof ExpressionStatementTree expression) {
            gather(expression, parts);
        } else if (statement != null) {
            scan(statement, null);
        }
    }

    private void gather(ExpressionStatementTree statement, List<EachRow.Part> parts) {
        ExpressionTree does = statement.getExpression();
        if (does instanceof AssignmentTree assignment) {
            parts.add(reader.kept(base(assignment.getVariable()), assignment.getExpression()));
        } else if (does instanceof CompoundAssignmentTree sum
                && (does.getKind() == Tree.Kind.PLUS_ASSIGNMENT
                        || does.getKind() == Tree.Kind.MINUS_ASSIGNMENT)) {
            boolean added = does.getKind() == Tree.Kind.PLUS_ASSIGNMENT;
            String name = (added ? "added to " : "taken from ") + base(sum.getVariable());
            parts.add(reader.kept(name, sum.getExpression()));
        } else if (does instanceof MethodInvocationTree call
                && call.getArguments().size() == 1
                && call.getMethodSelect() instanceof MemberSelectTree select
                && APPENDING.contains(select.getIdentifier().toString())) {
            parts.add(reader.kept(select.getExpression().toString(), call.getArguments().get(0)));
        } else {
            scan(statement, null);
        }
    }

    private static String base(ExpressionTree target) {
        return target instanceof ArrayAccessTree element
                ? element.getExpression().toString()
                : target.toString();
    }
}
