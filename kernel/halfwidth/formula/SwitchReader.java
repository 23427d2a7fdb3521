package halfwidth.formula;

import com.sun.source.tree.CaseTree;
import com.sun.source.tree.ExpressionTree;
import com.sun.source.tree.IdentifierTree;
import com.sun.source.tree.ParenthesizedTree;
import com.sun.source.tree.SwitchExpressionTree;
import com.sun.source.tree.Tree;
import java.util.ArrayList;
import java.util.List;

/**
 * Reads a {@code switch} that chooses one of several expressions by a variable, as a chain of
 * choices: {@code a if x = "A", else b if x = "B", else c}.
 */
final class SwitchReader {
    private final TermReader reader;

    SwitchReader(TermReader reader) {
        this.reader = reader;
    }

    /** The choices; the Java itself where a case does more than give an expression. */
    Term read(SwitchExpressionTree tree) {
        ExpressionTree on =
                tree.getExpression() instanceof ParenthesizedTree inner
                        ? inner.getExpression()
                        : tree.getExpression();
        List<? extends CaseTree> cases = tree.getCases();
        boolean plain =
                on instanceof IdentifierTree
                        && cases.stream().allMatch(one -> one.getBody() instanceof ExpressionTree)
                        && isDefault(cases.get(cases.size() - 1))
                        && cases.stream().filter(SwitchReader::isDefault).count() == 1;
        return plain ? chain((IdentifierTree) on, cases, new ArrayList<>()) : reader.code(tree);
    }

    private static boolean isDefault(CaseTree one) {
        return one.getExpressions().isEmpty();
    }

    /**
     * The choices from a case on.
     *
     * @param passed where it is noted that the cases before did not hold
     */
    private Term chain(IdentifierTree on, List<? extends CaseTree> cases, List<Integer> passed) {
        CaseTree first = cases.get(0);
        ExpressionTree gives = (ExpressionTree) first.getBody();
        StringBuilder notes = new StringBuilder();
        passed.forEach(place -> notes.append("%1$s.at(" + place + ", false);"));
        if (isDefault(first)) {
            reader.precede(gives, notes.toString());
            return reader.part(gives);
        }
        int place = reader.nextPlace();
        reader.precede(gives, notes + "%1$s.at(" + place + ", true);");
        Term then = reader.part(gives);
        passed.add(place);
        return new Term.Choice(
                place,
                condition(on, first.getExpressions()),
                then,
                chain(on, cases.subList(1, cases.size()), passed));
    }

    private Term condition(IdentifierTree on, List<? extends ExpressionTree> labels) {
        Term.Name name = new Term.Name(Term.NO_PLACE, on.getName().toString());
        return labels.stream()
                .<Term>map(label -> new Term.Binary(Operation.EQUAL, name, label(label)))
                .reduce((one, other) -> new Term.Binary(Operation.OR, one, other))
                .orElseThrow();
    }

    /** A constant has no value to note within a label. */
    private Term label(ExpressionTree label) {
        return label.getKind() == Tree.Kind.IDENTIFIER
                ? new Term.Name(Term.NO_PLACE, label.toString())
                : reader.subject(label);
    }
}
