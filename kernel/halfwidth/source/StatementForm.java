package halfwidth.source;

import com.sun.source.tree.AssignmentTree;
import com.sun.source.tree.BlockTree;
import com.sun.source.tree.ClassTree;
import com.sun.source.tree.EmptyStatementTree;
import com.sun.source.tree.ExpressionStatementTree;
import com.sun.source.tree.ExpressionTree;
import com.sun.source.tree.IdentifierTree;
import com.sun.source.tree.ImportTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.ModifiersTree;
import com.sun.source.tree.StatementTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.VariableTree;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What a statement is to Java.
 *
 * @param name what it declares or imports, or the variable that it assigns or consists of; "" if
 *     none
 * @param type of the variable it declares, as written, {@code var} included; {@code class} if it
 *     declares a type itself; else ""
 * @param start where its expression begins in the statement's text: that of the value it gives, or
 *     a variable's first one; where it declares none, or is a statement, 0
 * @param end where that ends, exclusive; {@code start} for a variable without a first value
 * @param needs the names that it takes from elsewhere
 * @param plain whether it may stand among others in a class as it is: without modifiers and
 *     annotations, and without a {@code return} that would end the method around it
 */
public record StatementForm(
        Kind kind, String name, String type, int start, int end, NeededNames needs, boolean plain) {
    /** The kinds of statements. */
    public enum Kind {
        IMPORT,
        MEMBER,
        VARIABLE,
        /** An expression that may stand by itself, as a call. */
        EXPRESSION,
        /** Any other expression. */
        VALUE,
        STATEMENT
    }

    private static final String DECLARES_TYPE = "class";

    private static final String IMPORT = "%s\nclass Text {}";
    private static final String MEMBER = "class Text {\n%s\n}";
    private static final String STATEMENT = "class Text {{\n%s\n;}}";
    private static final String EXPRESSION = "class Text { Object value =\n%s\n;}";
    private static final List<String> AROUND = List.of(IMPORT, MEMBER, STATEMENT, EXPRESSION);

    public boolean declaresType() {
        return type.equals(DECLARES_TYPE);
    }

    /** Whether the compiler has to find out of which type it is. */
    public boolean findsType() {
        return kind == Kind.EXPRESSION || kind == Kind.VALUE || type.equals("var");
    }

    /**
     * Reads what statements are.
     *
     * @return the form of each, in order; none for one that is none of the kinds, or several
     */
    public static List<Optional<StatementForm>> of(List<String> texts) {
        List<JavaText.Parsed> parsed =
                JavaText.parse(
                        texts.stream()
                                .flatMap(text -> AROUND.stream().map(a -> around(a, text)))
                                .toList());
        List<Optional<StatementForm>> forms = new ArrayList<>();
        for (int i = 0; i < texts.size(); i++) {
            List<JavaText.Parsed> own = parsed.subList(4 * i, 4 * i + 4);
            String text = texts.get(i);
            forms.add(
                    Stream.of(
                                    imported(own.get(0)),
                                    member(own.get(1)),
                                    statement(own.get(2), text),
                                    expression(own.get(3)))
                            .flatMap(Optional::stream)
                            .findFirst());
        }
        return forms;
    }

    private static String around(String wrapping, String text) {
        String bare = text.strip();
        boolean semicolon = wrapping.equals(EXPRESSION) && bare.endsWith(";");
        return wrapping.formatted(semicolon ? bare.substring(0, bare.length() - 1) : bare);
    }

    private static Optional<StatementForm> imported(JavaText.Parsed parsed) {
        List<? extends ImportTree> imports = parsed.tree().getImports();
        if (!parsed.valid() || imports.size() != 1 || parsed.tree().getTypeDecls().size() != 1) {
            return Optional.empty();
        }
        String name = imports.get(0).getQualifiedIdentifier().toString();
        String known = name.substring(name.lastIndexOf('.') + 1);
        return Optional.of(new StatementForm(Kind.IMPORT, known, "", 0, 0, NeededNames.NONE, true));
    }

    private static List<? extends Tree> body(JavaText.Parsed parsed) {
        List<? extends Tree> types =
                parsed.tree().getTypeDecls().stream()
                        .filter(type -> !(type instanceof EmptyStatementTree))
                        .toList();
        return parsed.valid() && types.size() == 1
                ? ((ClassTree) types.get(0)).getMembers()
                : List.of();
    }

    private static Optional<StatementForm> member(JavaText.Parsed parsed) {
        List<? extends Tree> members = body(parsed);
        if (members.size() != 1) {
            return Optional.empty();
        }
        if (members.get(0) instanceof MethodTree method
                && method.getReturnType() != null /* else it is a call */) {
            return Optional.of(
                    new StatementForm(
                            Kind.MEMBER,
                            method.getName().toString(),
                            "",
                            0,
                            0,
                            NeededNames.of(method),
                            plain(method.getModifiers())));
        }
        if (members.get(0) instanceof ClassTree type) {
            return Optional.of(
                    new StatementForm(
                            Kind.MEMBER,
                            type.getSimpleName().toString(),
                            DECLARES_TYPE,
                            0,
                            0,
                            NeededNames.of(type),
                            type.getModifiers().getFlags().isEmpty()));
        }
        return Optional.empty();
    }

    private static boolean plain(ModifiersTree modifiers) {
        return modifiers.getFlags().isEmpty() && modifiers.getAnnotations().isEmpty();
    }

    private static Optional<StatementForm> statement(JavaText.Parsed parsed, String text) {
        List<? extends Tree> members = body(parsed);
        if (members.size() != 1 || !(members.get(0) instanceof BlockTree block)) {
            return Optional.empty();
        }
        List<? extends StatementTree> statements =
                block.getStatements().stream()
                        .filter(one -> !(one instanceof EmptyStatementTree))
                        .toList();
        if (statements.size() != 1) {
            return Optional.empty();
        }
        int before = STATEMENT.indexOf('%');
        StatementTree statement = statements.get(0);
        if (statement instanceof VariableTree variable) {
            return variable(parsed, variable, before);
        }
        if (statement instanceof ExpressionStatementTree expression) {
            return Optional.of(
                    expression(parsed, Kind.EXPRESSION, expression.getExpression(), before));
        }
        boolean plain = !text.contains("return");
        return Optional.of(
                new StatementForm(Kind.STATEMENT, "", "", 0, 0, NeededNames.of(statement), plain));
    }

    private static Optional<StatementForm> variable(
            JavaText.Parsed parsed, VariableTree variable, int before) {
        String type = variable.getType() == null ? "var" : variable.getType().toString();
        Tree value = variable.getInitializer();
        int start = value == null ? 0 : start(parsed, value) - before;
        int end = value == null ? 0 : end(parsed, value) - before;
        return Optional.of(
                new StatementForm(
                        Kind.VARIABLE,
                        variable.getName().toString(),
                        type,
                        start,
                        end,
                        needs(variable),
                        plain(variable.getModifiers())));
    }

    /** Its own name among them, where its first value is worked out with it. */
    private static NeededNames needs(VariableTree variable) {
        NeededNames value = NeededNames.of(variable.getInitializer());
        Set<String> names = new HashSet<>(value.names());
        names.addAll(NeededNames.of(variable.getType()).names());
        return new NeededNames(names, value.calls());
    }

    private static Optional<StatementForm> expression(JavaText.Parsed parsed) {
        List<? extends Tree> members = body(parsed);
        if (members.size() != 1
                || !(members.get(0) instanceof VariableTree value)
                || value.getInitializer() == null) {
            return Optional.empty();
        }
        int before = EXPRESSION.indexOf('%');
        return Optional.of(expression(parsed, Kind.VALUE, value.getInitializer(), before));
    }

    private static StatementForm expression(
            JavaText.Parsed parsed, Kind kind, ExpressionTree expression, int before) {
        return new StatementForm(
                kind,
                name(expression),
                "",
                start(parsed, expression) - before,
                end(parsed, expression) - before,
                NeededNames.of(expression),
                true);
    }

    /** As JShell names it: by the variable that it assigns, or is. */
    private static String name(ExpressionTree expression) {
        ExpressionTree named =
                expression instanceof AssignmentTree assignment
                        ? assignment.getVariable()
                        : expression;
        return named instanceof IdentifierTree identifier ? identifier.getName().toString() : "";
    }

    private static int start(JavaText.Parsed parsed, Tree tree) {
        return (int) parsed.positions().getStartPosition(parsed.tree(), tree);
    }

    private static int end(JavaText.Parsed parsed, Tree tree) {
        return (int) parsed.positions().getEndPosition(parsed.tree(), tree);
    }
}
