package halfwidth.formula;

import com.sun.source.tree.AssignmentTree;
import com.sun.source.tree.BlockTree;
import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.ExpressionStatementTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.VariableTree;
import halfwidth.source.JavaText;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Reads the formulas of a page's statements. */
public final class FormulaReader {
    /** The types of value that have a unit and are shown with their formula. */
    private static final Set<String> NUMBERS =
            Set.of(
                    "double",
                    "float",
                    "long",
                    "int",
                    "short",
                    "byte",
                    "Double",
                    "Float",
                    "Integer",
                    "Long",
                    "OptionalDouble",
                    "OptionalInt",
                    "Estimate",
                    "Optional<Estimate>",
                    "Optional<Double>",
                    "Optional<Integer>",
                    "Optional<Long>",
                    "OptionalLong");

    private static final String MEMBER = "class Text {\n%s\n}";
    private static final String STATEMENT = "class Text {{\n%s\n;}}";

    /**
     * A statement as read.
     *
     * @param formula what it computes; empty where that is no number
     * @param rows what it computes row by row
     * @param noting its text with notes of the numbers it uses, that which notes most first; empty
     *     where there are none. Where the compiler refuses one, the next does
     */
    public record Reading(Optional<Formula> formula, List<EachRow> rows, List<String> noting) {}

    private final String notes;
    private int places;
    private Set<String> methods = Set.of();

    /**
     * @param notes a class whose methods take the notes: {@code at(place, value)} and {@code
     *     row(place, of(begin(), parameter), value)} return the value and have a variant for each
     *     primitive type; {@code turn(place)} begins a turn of a loop, {@code of(variable)} tells
     *     what it is a turn of, and {@code end(place)} ends the loop
     */
    public FormulaReader(String notes) {
        this.notes = notes;
    }

    /** Reads statements, in their order; one that is no valid Java gives no formula. */
    public List<Reading> read(List<String> statements) {
        List<JavaText.Parsed> parsed = parse(statements);
        methods =
                parsed.stream()
                        .filter(one -> one.valid())
                        .map(one -> member(one.tree()))
                        .filter(MethodTree.class::isInstance)
                        .map(one -> ((MethodTree) one).getName().toString())
                        .collect(Collectors.toSet());
        return IntStream.range(0, statements.size())
                .mapToObj(i -> read(statements.get(i), parsed.get(i)))
                .toList();
    }

    /**
     * A variable or a method is a member of a class; what is not is parsed again as a statement.
     */
    private static List<JavaText.Parsed> parse(List<String> statements) {
        List<JavaText.Parsed> parsed =
                new ArrayList<>(
                        JavaText.parse(statements.stream().map(MEMBER::formatted).toList()));
        List<Integer> left =
                IntStream.range(0, parsed.size())
                        .filter(i -> !parsed.get(i).valid())
                        .boxed()
                        .toList();
        List<JavaText.Parsed> again =
                JavaText.parse(
                        left.stream().map(i -> STATEMENT.formatted(statements.get(i))).toList());
        for (int i = 0; i < left.size(); i++) {
            parsed.set(left.get(i), again.get(i));
        }
        return parsed;
    }

    private Reading read(String text, JavaText.Parsed parsed) {
        Tree member = parsed.valid() ? member(parsed.tree()) : null;
        int start = (member instanceof BlockTree ? STATEMENT : MEMBER).indexOf("%s");
        TermReader reader = new TermReader(parsed, text, start, this);
        Optional<Formula> formula = formula(member, reader);
        if (formula.isEmpty() && member != null && !isReadMethod(member)) {
            new RowReader(reader).scan(member, null);
        }
        List<String> noting =
                Stream.of(reader.noting(notes, true), reader.noting(notes, false))
                        .distinct()
                        .filter(one -> !one.equals(text))
                        .toList();
        return new Reading(formula, reader.rows(), noting);
    }

    private static Tree member(CompilationUnitTree tree) {
        return tree.getTypeDecls().isEmpty()
                ? null
                : ((ClassTree) tree.getTypeDecls().get(0))
                        .getMembers().stream().findFirst().orElse(null);
    }

    private static Optional<Formula> formula(Tree member, TermReader reader) {
        if (member instanceof VariableTree variable
                && variable.getInitializer() != null
                && isNumber(variable.getType())) {
            return Optional.of(formula(variable.getName().toString(), variable, reader));
        }
        if (isReadMethod(member)) {
            MethodTree method = (MethodTree) member;
            List<String> parameters =
                    method.getParameters().stream().map(one -> one.getName().toString()).toList();
            return new MethodReader(reader)
                    .term(method)
                    .map(term -> new Formula(method.getName().toString(), parameters, true, term));
        }
        if (member instanceof BlockTree block
                && block.getStatements().get(0) instanceof ExpressionStatementTree statement
                && statement.getExpression() instanceof AssignmentTree assignment) {
            String name = assignment.getVariable().toString();
            return Optional.of(
                    new Formula(name, List.of(), false, reader.whole(assignment.getExpression())));
        }
        return Optional.empty();
    }

    private static Formula formula(String name, VariableTree variable, TermReader reader) {
        return new Formula(name, List.of(), false, reader.whole(variable.getInitializer()));
    }

    /** Whether values of a type, by its simple name, are numbers that have a unit. */
    public static boolean isNumber(String type) {
        return NUMBERS.contains(type);
    }

    private static boolean isNumber(Tree type) {
        return type != null && isNumber(type.toString());
    }

    private static boolean isReadMethod(Tree member) {
        return member instanceof MethodTree method
                && isNumber(method.getReturnType())
                && MethodReader.reads(method);
    }

    int nextPlace() {
        return places++;
    }

    /** Whether the page has a method of its own of that name. */
    boolean isOwnMethod(String name) {
        return methods.contains(name);
    }
}
