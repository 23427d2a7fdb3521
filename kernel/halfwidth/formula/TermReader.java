package halfwidth.formula;

import static java.util.stream.Collectors.joining;

import com.sun.source.tree.ArrayAccessTree;
import com.sun.source.tree.BinaryTree;
import com.sun.source.tree.BlockTree;
import com.sun.source.tree.ConditionalExpressionTree;
import com.sun.source.tree.ExpressionTree;
import com.sun.source.tree.IdentifierTree;
import com.sun.source.tree.InstanceOfTree;
import com.sun.source.tree.LambdaExpressionTree;
import com.sun.source.tree.LiteralTree;
import com.sun.source.tree.MemberReferenceTree;
import com.sun.source.tree.MemberSelectTree;
import com.sun.source.tree.MethodInvocationTree;
import com.sun.source.tree.NewClassTree;
import com.sun.source.tree.ParenthesizedTree;
import com.sun.source.tree.StatementTree;
import com.sun.source.tree.SwitchExpressionTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.TypeCastTree;
import com.sun.source.tree.UnaryTree;
import com.sun.source.util.TreeScanner;
import halfwidth.source.JavaText;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Reads one expression, and takes note of which of its parts to note when it runs. */
final class TermReader {
    private static final Map<Tree.Kind, Operation> OPERATIONS =
            Map.ofEntries(
                    Map.entry(Tree.Kind.CONDITIONAL_OR, Operation.OR),
                    Map.entry(Tree.Kind.CONDITIONAL_AND, Operation.AND),
                    Map.entry(Tree.Kind.EQUAL_TO, Operation.EQUAL),
                    Map.entry(Tree.Kind.NOT_EQUAL_TO, Operation.UNEQUAL),
                    Map.entry(Tree.Kind.LESS_THAN, Operation.LESS),
                    Map.entry(Tree.Kind.LESS_THAN_EQUAL, Operation.AT_MOST),
                    Map.entry(Tree.Kind.GREATER_THAN, Operation.MORE),
                    Map.entry(Tree.Kind.GREATER_THAN_EQUAL, Operation.AT_LEAST),
                    Map.entry(Tree.Kind.PLUS, Operation.PLUS),
                    Map.entry(Tree.Kind.MINUS, Operation.MINUS),
                    Map.entry(Tree.Kind.MULTIPLY, Operation.TIMES),
                    Map.entry(Tree.Kind.DIVIDE, Operation.OVER),
                    Map.entry(Tree.Kind.REMAINDER, Operation.REMAINDER));

    private final JavaText.Parsed parsed;
    private final String text;
    private final int start;
    private final FormulaReader page;
    private final Insertions insertions;
    private final List<EachRow> rows = new ArrayList<>();
    private final CallReader calls = new CallReader(this);

    /** How many rules and loops there are around. */
    private int within;

    /**
     * @param start where {@code text} begins in what was parsed
     */
    TermReader(JavaText.Parsed parsed, String text, int start, FormulaReader page) {
        this.parsed = parsed;
        this.text = text;
        this.start = start;
        this.insertions = new Insertions(text, start);
        this.page = page;
    }

    /** The term of a whole step. A call's own value need not be noted: the step shows it. */
    Term whole(ExpressionTree tree) {
        boolean call = tree instanceof MethodInvocationTree || tree instanceof NewClassTree;
        return read(tree, !call);
    }

    /** The term of what something is asked of. */
    Term subject(ExpressionTree tree) {
        return read(tree, false);
    }

    /** The term of a part. */
    Term part(ExpressionTree tree) {
        return read(tree, true);
    }

    private Term read(ExpressionTree tree, boolean noted) {
        if (tree instanceof ParenthesizedTree inner) {
            return read(inner.getExpression(), noted);
        }
        if (tree instanceof LiteralTree literal) {
            return literal(literal);
        }
        if (tree instanceof BinaryTree binary) {
            return binary(binary);
        }
        if (tree instanceof UnaryTree unary) {
            return unary(unary);
        }
        if (tree instanceof ConditionalExpressionTree choice) {
            return choice(choice);
        }
        if (tree instanceof TypeCastTree cast) {
            Term of = read(cast.getExpression(), true);
            boolean whole = cast.getType().toString().matches("int|long|short|byte");
            return whole ? new Term.Known(Function.WHOLE, List.of(of)) : of;
        }
        return named(tree, noted);
    }

    private Term named(ExpressionTree tree, boolean noted) {
        if (tree instanceof IdentifierTree name) {
            return constant(name.getName().toString())
                    .orElseGet(() -> new Term.Name(place(tree, noted), name.getName().toString()));
        }
        if (tree instanceof MemberSelectTree select) {
            String name = select.getIdentifier().toString();
            if (name.equals("length")) {
                int place = place(tree, noted);
                return new Term.Call(place, name, subject(select.getExpression()), List.of());
            }
            return select.getExpression().toString().equals("Math")
                    ? constant(name).orElseGet(() -> code(tree))
                    : new Term.Name(place(tree, noted), name);
        }
        if (tree instanceof ArrayAccessTree access) {
            int place = place(tree, noted);
            return new Term.Element(
                    place, read(access.getExpression(), false), part(access.getIndex()));
        }
        if (tree instanceof MethodInvocationTree || tree instanceof NewClassTree) {
            return calls.read(tree, noted);
        }
        if (tree instanceof LambdaExpressionTree lambda) {
            return rule(lambda);
        }
        if (tree instanceof SwitchExpressionTree cases) {
            return new SwitchReader(this).read(cases);
        }
        return tree instanceof MemberReferenceTree reference
                ? CallReader.handedOn(reference)
                : code(tree);
    }

    private static Optional<Term> constant(String name) {
        return switch (name) {
            case "PI" -> Optional.of(new Term.Constant("π"));
            case "E" -> Optional.of(new Term.Constant("e"));
            default -> Optional.empty();
        };
    }

    private Term literal(LiteralTree literal) {
        Object value = literal.getValue();
        boolean plain = value instanceof Number || value instanceof Boolean;
        String written = source(literal);
        return plain
                ? new Term.Literal(written.replaceAll("_|(?<=[\\d.])[dDfFlL]$", ""))
                : new Term.Code(written);
    }

    private Term binary(BinaryTree tree) {
        Operation operation = OPERATIONS.get(tree.getKind());
        if (operation == null || operation == Operation.PLUS && joinsText(tree)) {
            return code(tree);
        }
        return new Term.Binary(
                operation, part(tree.getLeftOperand()), part(tree.getRightOperand()));
    }

    private static boolean joinsText(ExpressionTree tree) {
        return tree.getKind() == Tree.Kind.STRING_LITERAL
                || tree instanceof BinaryTree sum
                        && Stream.of(sum.getLeftOperand(), sum.getRightOperand())
                                .anyMatch(TermReader::joinsText);
    }

    private Term unary(UnaryTree tree) {
        return switch (tree.getKind()) {
            case UNARY_MINUS -> new Term.Negative(part(tree.getExpression()));
            case UNARY_PLUS -> part(tree.getExpression());
            case LOGICAL_COMPLEMENT -> new Term.Not(part(tree.getExpression()));
            default -> code(tree);
        };
    }

    private Term choice(ConditionalExpressionTree tree) {
        // A pattern's variable would not be known beyond the note around it.
        int place = place(tree.getCondition(), !matchesPattern(tree.getCondition()));
        Term condition = read(tree.getCondition(), false);
        return new Term.Choice(
                place, condition, part(tree.getTrueExpression()), part(tree.getFalseExpression()));
    }

    private static boolean matchesPattern(Tree tree) {
        boolean[] found = {false};
        new TreeScanner<Void, Void>() {
            @Override
            public Void visitInstanceOf(InstanceOfTree test, Void none) {
                found[0] = true;
                return null;
            }
        }.scan(tree, null);
        return found[0];
    }

    private Term rule(LambdaExpressionTree lambda) {
        if (!(lambda.getBody() instanceof ExpressionTree body)) {
            return code(lambda);
        }
        within++;
        int place = page.nextPlace();
        int outer = rows.size();
        List<String> of =
                lambda.getParameters().stream().map(one -> one.getName().toString()).toList();
        String begun = "%1$s.begin()";
        for (String name : of) {
            begun = "%1$s.of(" + begun + ", " + name + ")";
        }
        insert(begin(body), "%1$s.row(" + place + ", " + begun + ", ");
        Term gives = whole(body);
        insert(end(body), ")");
        within--;
        rows.add(outer, new EachRow(place, of, List.of(new EachRow.Part("", gives, place))));
        return new Term.Rule(of, gives);
    }

    /** Takes note of each turn of a loop. */
    void loop(StatementTree loop, StatementTree body, List<String> of, RowReader reader) {
        within++;
        int place = page.nextPlace();
        int outer = rows.size();
        boolean block = body instanceof BlockTree;
        insert(begin(loop), "{");
        String turn = of.stream().map(name -> "%1$s.of(" + name + ");").collect(joining());
        insert(
                begin(body) + (block ? 1 : 0),
                (block ? "" : "{") + "%1$s.turn(" + place + ");" + turn);
        List<EachRow.Part> parts = reader.parts(body);
        if (!block) {
            insert(end(body), "}");
        }
        insert(end(loop), "%s.end(" + place + ");}");
        within--;
        rows.add(outer, new EachRow(place, of, parts));
    }

    /** A number that a loop keeps under a name. */
    EachRow.Part kept(String name, ExpressionTree tree) {
        int place = place(tree, true);
        return new EachRow.Part(name, read(tree, false), place);
    }

    /** What was found to be computed row by row. */
    List<EachRow> rows() {
        return rows;
    }

    Term code(Tree tree) {
        return new Term.Code(source(tree).replaceAll("\\s+", " "));
    }

    private String source(Tree tree) {
        return text.substring((int) begin(tree) - start, (int) end(tree) - start);
    }

    private long begin(Tree tree) {
        return parsed.positions().getStartPosition(parsed.tree(), tree);
    }

    private long end(Tree tree) {
        return parsed.positions().getEndPosition(parsed.tree(), tree);
    }

    /** A place for the value of a part; it has none where it is not noted. */
    int place(Tree tree, boolean noted) {
        if (!noted) {
            return Term.NO_PLACE;
        }
        int place = page.nextPlace();
        insert(begin(tree), "%s.at(" + place + ", ");
        insert(end(tree), ")");
        return place;
    }

    /** A place for whether a condition held that has no expression of its own in the text. */
    int nextPlace() {
        return page.nextPlace();
    }

    /** Makes of what follows an arrow a block that does something first. */
    void precede(ExpressionTree gives, String does) {
        insert(begin(gives), "{" + does + "yield ");
        int semicolon = text.indexOf(';', (int) end(gives) - start);
        insert(semicolon + 1 + start, "}");
    }

    private void insert(long at, String text) {
        insertions.add(at, text, within > 0);
    }

    boolean isOwnMethod(String name) {
        return page.isOwnMethod(name);
    }

    /**
     * The text with a note around each part that has a place, on the same lines as before.
     *
     * @param notes the class that takes the notes
     * @param withRows whether to note what is computed row by row
     */
    String noting(String notes, boolean withRows) {
        return insertions.made(notes, withRows);
    }
}
