package halfwidth.formula;

import com.sun.source.tree.BlockTree;
import com.sun.source.tree.ExpressionTree;
import com.sun.source.tree.IfTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.ReturnTree;
import com.sun.source.tree.StatementTree;
import com.sun.source.tree.ThrowTree;
import com.sun.source.tree.VariableTree;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Reads a method that returns one expression, if need be by way of variables of its own, which its
 * formula has in full. What it refuses is no part of its value.
 */
final class MethodReader {
    /** A formula with its variables in full is no easier to read than the Java if it is longer. */
    private static final int LONGEST = 200;

    private final TermReader reader;

    MethodReader(TermReader reader) {
        this.reader = reader;
    }

    /** Whether a method is of that form, so that reading it takes note of all that is in it. */
    static boolean reads(MethodTree method) {
        List<? extends StatementTree> body = statements(method);
        int last = body.size() - 1;
        return last >= 0
                && body.get(last) instanceof ReturnTree returned
                && returned.getExpression() != null
                && body.subList(0, last).stream().allMatch(MethodReader::reads);
    }

    private static boolean reads(StatementTree statement) {
        return refuses(statement)
                || statement instanceof VariableTree variable && variable.getInitializer() != null;
    }

    private static boolean refuses(StatementTree statement) {
        return statement instanceof IfTree guard
                && guard.getElseStatement() == null
                && (guard.getThenStatement() instanceof ThrowTree
                        || guard.getThenStatement() instanceof BlockTree block
                                && block.getStatements().size() == 1
                                && block.getStatements().get(0) instanceof ThrowTree);
    }

    private static List<? extends StatementTree> statements(MethodTree method) {
        return method.getBody() == null ? List.of() : method.getBody().getStatements();
    }

    /** What it returns; empty if that is better read in Java. */
    Optional<Term> term(MethodTree method) {
        List<? extends StatementTree> body = statements(method);
        Map<String, Term> variables = new HashMap<>();
        for (StatementTree statement : body) {
            if (statement instanceof VariableTree variable) {
                Term term = reader.whole(variable.getInitializer());
                variables.put(variable.getName().toString(), Terms.inFull(term, variables));
            }
        }
        ExpressionTree returned = ((ReturnTree) body.get(body.size() - 1)).getExpression();
        Term term = Terms.inFull(reader.whole(returned), variables);
        boolean readable =
                body.size() == 1
                        || Terms.complete(term) && PlainFormula.of(term).length() <= LONGEST;
        return readable ? Optional.of(term) : Optional.empty();
    }
}
