package halfwidth.formula;

import com.sun.source.tree.ExpressionTree;
import com.sun.source.tree.IdentifierTree;
import com.sun.source.tree.MemberReferenceTree;
import com.sun.source.tree.MemberSelectTree;
import com.sun.source.tree.MethodInvocationTree;
import com.sun.source.tree.NewClassTree;
import com.sun.source.tree.Tree;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Reads the calls in an expression: of known functions, of methods, of constructors. */
final class CallReader {
    /** Methods that only unwrap what they are called on, so that a formula need not say it. */
    private static final Set<String> UNWRAPPING =
            Set.of(
                    "getAsDouble",
                    "getAsInt",
                    "get",
                    "orElseThrow",
                    "doubleValue",
                    "intValue",
                    "value",
                    "stream",
                    "boxed",
                    "asDoubleStream");

    /** As the trade writes them; u is that of JCGM 100:2008. */
    private static final Map<String, String> SHORT = Map.of("standardUncertainty", "u");

    private final TermReader reader;

    CallReader(TermReader reader) {
        this.reader = reader;
    }

    Term read(ExpressionTree tree, boolean noted) {
        if (tree instanceof NewClassTree made) {
            int place = reader.place(tree, noted && made.getClassBody() == null);
            return new Term.Call(
                    place, made.getIdentifier().toString(), null, parts(made.getArguments()));
        }
        MethodInvocationTree call = (MethodInvocationTree) tree;
        if (call.getMethodSelect() instanceof IdentifierTree name) {
            return plain(call, name.getName().toString(), noted);
        }
        return call.getMethodSelect() instanceof MemberSelectTree select
                ? selected(call, select, noted)
                : reader.code(tree);
    }

    private Term plain(MethodInvocationTree call, String name, boolean noted) {
        Optional<Function> known =
                Function.named(name, call.getArguments().size())
                        .filter(function -> !reader.isOwnMethod(name));
        if (known.isPresent()) {
            return new Term.Known(known.get(), parts(call.getArguments()));
        }
        int place = reader.place(call, noted);
        return new Term.Call(place, name, null, parts(call.getArguments()));
    }

    private Term selected(MethodInvocationTree call, MemberSelectTree select, boolean noted) {
        String name = select.getIdentifier().toString();
        ExpressionTree on = select.getExpression();
        Optional<Function> known = Function.named(name, call.getArguments().size());
        if (on.toString().equals("Math") && known.isPresent()) {
            return new Term.Known(known.get(), parts(call.getArguments()));
        }
        int place = reader.place(call, noted);
        Optional<String> type = type(on);
        if (type.isPresent()) {
            return new Term.Call(place, type.get() + "." + name, null, parts(call.getArguments()));
        }
        Term subject = reader.subject(on);
        // What orElseThrow would throw is no part of the value.
        boolean bare = call.getArguments().isEmpty() || name.equals("orElseThrow");
        boolean unwraps = UNWRAPPING.contains(name) && bare;
        return unwraps
                ? new Term.Call(place, "", subject, List.of())
                : new Term.Call(
                        place, SHORT.getOrDefault(name, name), subject, parts(call.getArguments()));
    }

    /** The type that a method is called on, without the package in which it is. */
    private static Optional<String> type(ExpressionTree on) {
        if (on instanceof IdentifierTree type && isType(type.getName().toString())) {
            return Optional.of(type.getName().toString());
        }
        return on instanceof MemberSelectTree select
                        && isType(select.getIdentifier().toString())
                        && select.getExpression().toString().matches("[a-z.]+")
                ? Optional.of(select.getIdentifier().toString())
                : Optional.empty();
    }

    /** Whether a name is a type's, by the custom of writing it with a capital letter. */
    private static boolean isType(String name) {
        return Character.isUpperCase(name.charAt(0));
    }

    private List<Term> parts(List<? extends ExpressionTree> arguments) {
        return arguments.stream().map(this::argument).toList();
    }

    private Term argument(ExpressionTree tree) {
        // The type of an expression with <> follows from where it stands.
        boolean noted = tree.getKind() != Tree.Kind.NEW_CLASS;
        return noted ? reader.part(tree) : reader.subject(tree);
    }

    /** A method that is handed on, with the variable that it is a method of. */
    static Term handedOn(MemberReferenceTree reference) {
        String of = reference.getQualifierExpression().toString();
        boolean variable = of.matches("[a-z]\\w*") && !of.equals("this");
        return new Term.Code((variable ? of + "." : "") + reference.getName());
    }
}
