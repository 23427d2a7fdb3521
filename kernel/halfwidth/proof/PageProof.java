package halfwidth.proof;

import com.sun.source.tree.AssignmentTree;
import com.sun.source.tree.BlockTree;
import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.ExpressionStatementTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.StatementTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.SourcePositions;
import com.sun.source.util.TreePath;
import com.sun.source.util.Trees;
import halfwidth.source.JavaText;
import halfwidth.value.Unit;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.lang.model.element.Element;

/** Proves the units of one page's statements, in their order. */
public final class PageProof {
    private final List<PageStatement> statements;
    private final Map<Integer, Finding> findings = new LinkedHashMap<>();
    private final Scope globals = new Scope(null);
    private Expressions expressions;

    private PageProof(List<PageStatement> statements) {
        this.statements = statements;
    }

    /**
     * Works out the unit of each statement that has to have one.
     *
     * @param imports the imports that every page starts with
     * @return what was found, by the index of the statement
     */
    public static Map<Integer, Finding> of(List<String> imports, List<PageStatement> statements) {
        PageProof proof = new PageProof(statements);
        PageSource source = new PageSource(imports, statements);
        JavacTask task = JavaText.lookUp(PageSource.CLASS + ".java", source.text());
        try {
            CompilationUnitTree unit = task.parse().iterator().next();
            task.analyze();
            proof.prove(unit, Trees.instance(task), source);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return proof.findings;
    }

    private void prove(CompilationUnitTree unit, Trees trees, PageSource source) {
        TreePath page = new TreePath(new TreePath(unit), unit.getTypeDecls().get(0));
        SourcePositions positions = trees.getSourcePositions();
        Map<Integer, TreePath> members = new HashMap<>();
        Map<Element, TreePath> methods = new HashMap<>();
        for (Tree member : ((ClassTree) page.getLeaf()).getMembers()) {
            TreePath path = new TreePath(page, member);
            if (member instanceof MethodTree) {
                methods.put(trees.getElement(path), path);
            }
            if (!(member instanceof MethodTree method && method.getReturnType() == null)) {
                members.put(source.statementAt(positions.getStartPosition(unit, member)), path);
            }
        }
        expressions = new Expressions(trees, new StatedUnits(), methods, globals);
        for (int i = 0; i < statements.size(); i++) {
            statement(i, statements.get(i), members.get(i));
        }
    }

    private void statement(int index, PageStatement statement, TreePath path) {
        if (statement.kind() == PageStatement.Kind.INPUT) {
            globals.declare(statement.name(), input(statement));
            return;
        }
        Value value;
        Optional<String> refused = Optional.empty();
        try {
            value = path == null ? Value.THING : value(path);
        } catch (Refuted refutation) {
            refused = Optional.of(refutation.getMessage());
            value = new Value.Unknown(refutation.getMessage());
        } catch (RuntimeException fault) {
            value = new Value.Unknown("it is too unusual to be worked out (" + fault + ")");
        }
        if (statement.number()) {
            findings.put(
                    index,
                    refused.map(why -> Finding.refused("Units do not fit: " + why + "."))
                            .orElse(finding(statement, value)));
        }
        if (!statement.name().isEmpty() && statement.kind() == PageStatement.Kind.VARIABLE) {
            globals.declare(statement.name(), known(statement, value));
        }
    }

    private static Value input(PageStatement statement) {
        Map<String, Value> columns = new HashMap<>();
        statement.units().forEach((name, unit) -> columns.put(name, amount(unit)));
        return columns.size() == 1 && columns.containsKey("")
                ? columns.get("")
                : new Value.Columns(columns);
    }

    private static Value amount(String unit) {
        return Unit.find(unit).map(known -> (Value) Amount.of(known)).orElse(Value.THING);
    }

    private Value value(TreePath path) {
        if (path.getLeaf() instanceof VariableTree variable && variable.getInitializer() != null) {
            return expressions.of(variable.getInitializer(), path, globals);
        }
        if (path.getLeaf() instanceof BlockTree block) {
            StatementTree first = block.getStatements().get(0);
            TreePath inner = new TreePath(path, first);
            if (first instanceof ExpressionStatementTree statement
                    && statement.getExpression() instanceof AssignmentTree assignment) {
                return expressions.of(
                        assignment.getExpression(), new TreePath(inner, assignment), globals);
            }
            expressions.statements().returned(path, globals);
        }
        return Value.THING;
    }

    /** What later statements take a variable for: for a number, what its comment states. */
    private static Value known(PageStatement statement, Value value) {
        if (!statement.number()) {
            return value;
        }
        Unit unit = Unit.find(unit(statement)).orElse(Unit.ONE);
        boolean plain = value instanceof Amount amount && amount.free() && unit.equals(Unit.ONE);
        return plain
                ? new Amount(unit, ((Amount) value).factors(), false, false, false)
                : Amount.of(unit);
    }

    private static String unit(PageStatement statement) {
        return statement.unit().isEmpty() ? "1" : statement.unit();
    }

    private static Finding finding(PageStatement statement, Value value) {
        Optional<Unit> wanted = Unit.find(unit(statement));
        if (wanted.isEmpty()) {
            return Finding.open("its unit is not known");
        }
        if (value instanceof Value.Nothing) {
            return Finding.open("it has no number in it to tell its unit");
        }
        if (!(value instanceof Amount amount)) {
            return Finding.open(
                    value instanceof Value.Unknown unknown
                            ? unknown.why()
                            : "what it is made of is no number that is known here");
        }
        if (!amount.is(wanted.get())) {
            return Finding.refused(
                    "The step states %s, and its formula gives %s."
                            .formatted(wanted.get(), amount.label()));
        }
        return constant(amount, wanted.get());
    }

    /** A number that converts one unit into another is exact and known. */
    private static Finding constant(Amount amount, Unit unit) {
        boolean conversion =
                amount.free()
                        && unit.label().contains("/")
                        && !unit.equals(Unit.ONE)
                        && unit.sameDimension(Unit.ONE)
                        && unit.sameQuantity(Unit.ONE);
        if (!conversion || amount.factors().isEmpty()) {
            return Finding.proved();
        }
        double number = amount.factors().stream().reduce(1.0, (a, b) -> a * b);
        double exact = unit.convert(1, Unit.ONE);
        double right = 1 / exact;
        return Math.abs(number / right - 1) < 1e-9
                ? Finding.proved()
                : Finding.refused(
                        "%s in %s cannot be right: it is %s exactly."
                                .formatted(number, unit, right));
    }
}
