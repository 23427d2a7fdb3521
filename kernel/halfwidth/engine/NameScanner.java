package halfwidth.engine;

import com.sun.source.tree.ArrayAccessTree;
import com.sun.source.tree.AssignmentTree;
import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.CompoundAssignmentTree;
import com.sun.source.tree.ErroneousTree;
import com.sun.source.tree.ExpressionStatementTree;
import com.sun.source.tree.ExpressionTree;
import com.sun.source.tree.IdentifierTree;
import com.sun.source.tree.MemberSelectTree;
import com.sun.source.tree.MethodInvocationTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.ParenthesizedTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.UnaryTree;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.TreeScanner;
import halfwidth.source.JavaText;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Finds which names a statement uses, and which it may change. */
final class NameScanner extends TreeScanner<Void, Void> {
    /**
     * The names in a statement. Local names are among them; only those that the page declares
     * matter to the caller.
     *
     * @param used every identifier
     * @param changed {@code assigned}, and those on which a call stands as a statement of its own
     *     (such a call is made for its effect, as in {@code table.addColumns(c)}), with the
     *     arguments of such a call
     * @param assigned those that it assigns
     * @param declared the variables, methods and types that it declares, at any depth
     */
    record Names(Set<String> used, Set<String> changed, Set<String> assigned, Set<String> declared)
            implements Serializable {}

    private final Set<String> used = new LinkedHashSet<>();
    private final Set<String> changed = new LinkedHashSet<>();
    private final Set<String> assigned = new LinkedHashSet<>();
    private final Set<String> declared = new LinkedHashSet<>();

    private NameScanner() {}

    /**
     * A statement to read.
     *
     * @param member whether it declares a method or type, rather than running
     */
    record Source(String text, boolean member) {
        /** A class around it, so that the parser takes it. */
        private String wrapped(int number) {
            return member
                    ? "class page$%s {\n%s\n}\n".formatted(number, text)
                    : "class page$%s { {\n%s\n;}}\n".formatted(number, text);
        }
    }

    /**
     * Reads the names of statements that are valid Java, all in one go, since most of the time goes
     * into setting up the parser.
     *
     * @return the names of each, in order
     */
    static List<Names> namesOfEach(List<Source> statements) {
        StringBuilder source = new StringBuilder();
        for (int i = 0; i < statements.size(); i++) {
            source.append(statements.get(i).wrapped(i));
        }
        List<Names> names = new ArrayList<>();
        for (Tree wrapper : parse(source.toString()).getTypeDecls()) {
            NameScanner scanner = new NameScanner();
            ((ClassTree) wrapper).getMembers().forEach(member -> scanner.scan(member, null));
            names.add(scanner.names());
        }
        return names;
    }

    /** Reads the names of a statement that may not be valid Java, as far as the parser gets. */
    static Names names(Source statement) {
        NameScanner scanner = new NameScanner();
        scanner.scan(parse(statement), null);
        scanner.declared.remove("page$0");
        return scanner.names();
    }

    private Names names() {
        return new Names(used, changed, assigned, declared);
    }

    /** The tree of a statement, as far as the parser gets. */
    static CompilationUnitTree parse(Source statement) {
        return parse(statement.wrapped(0));
    }

    private static CompilationUnitTree parse(String source) {
        return JavaText.parse(source).tree();
    }

    @Override
    public Void visitIdentifier(IdentifierTree tree, Void none) {
        used.add(tree.getName().toString());
        return null;
    }

    /** An expression that stands alone, as in {@code x + 1}, is no statement to the parser. */
    @Override
    public Void visitErroneous(ErroneousTree tree, Void none) {
        return scan(tree.getErrorTrees(), none);
    }

    @Override
    public Void visitVariable(VariableTree tree, Void none) {
        declared.add(tree.getName().toString());
        return super.visitVariable(tree, none);
    }

    @Override
    public Void visitMethod(MethodTree tree, Void none) {
        declared.add(tree.getName().toString());
        return super.visitMethod(tree, none);
    }

    @Override
    public Void visitClass(ClassTree tree, Void none) {
        declared.add(tree.getSimpleName().toString());
        return super.visitClass(tree, none);
    }

    @Override
    public Void visitAssignment(AssignmentTree tree, Void none) {
        assign(tree.getVariable());
        return super.visitAssignment(tree, none);
    }

    @Override
    public Void visitCompoundAssignment(CompoundAssignmentTree tree, Void none) {
        assign(tree.getVariable());
        return super.visitCompoundAssignment(tree, none);
    }

    @Override
    public Void visitUnary(UnaryTree tree, Void none) {
        switch (tree.getKind()) {
            case PREFIX_INCREMENT, PREFIX_DECREMENT, POSTFIX_INCREMENT, POSTFIX_DECREMENT ->
                    assign(tree.getExpression());
            default -> {}
        }
        return super.visitUnary(tree, none);
    }

    @Override
    public Void visitExpressionStatement(ExpressionStatementTree tree, Void none) {
        if (tree.getExpression() instanceof MethodInvocationTree call) {
            changeReceiver(call);
            call.getArguments().forEach(this::change);
        }
        return super.visitExpressionStatement(tree, none);
    }

    private void assign(ExpressionTree target) {
        change(target);
        if (target instanceof IdentifierTree name) {
            assigned.add(name.getName().toString());
        }
    }

    /** Takes note of the variable at the root of a target: t of {@code t.rows()[3].x}. */
    private void change(ExpressionTree target) {
        if (target instanceof IdentifierTree name) {
            changed.add(name.getName().toString());
        } else if (target instanceof MemberSelectTree select) {
            change(select.getExpression());
        } else if (target instanceof ArrayAccessTree access) {
            change(access.getExpression());
        } else if (target instanceof MethodInvocationTree call) {
            changeReceiver(call);
        } else if (target instanceof ParenthesizedTree inner) {
            change(inner.getExpression());
        }
    }

    private void changeReceiver(MethodInvocationTree call) {
        if (call.getMethodSelect() instanceof MemberSelectTree select) {
            change(select.getExpression());
        }
    }
}
