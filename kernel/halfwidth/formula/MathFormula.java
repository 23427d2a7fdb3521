package halfwidth.formula;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Writes a formula in MathML, as it would be set in a book. */
public final class MathFormula {
    private static final int LOOSEST = 0;
    private static final int TIGHTEST = 9;

    /** A formula of no more letters than this, as plain text, need not be broken. */
    private static final int SHORT = 28;

    /** How deep within brackets a line may break. */
    private static final int ROOM_DEPTH = 6;

    private MathFormula() {}

    /** Writes a term as an element without the {@code math} around it. */
    public static String of(Term term) {
        return of(term, LOOSEST);
    }

    /**
     * Writes a term in pieces between which a line may break, since a browser breaks none within an
     * equation.
     */
    public static List<String> pieces(Term term) {
        return PlainFormula.of(term).length() <= SHORT
                ? List.of(of(term))
                : pieces(term, LOOSEST, ROOM_DEPTH);
    }

    private static List<String> pieces(Term term, int around, int depth) {
        if (depth == 0) {
            return List.of(of(term, around));
        }
        if (term instanceof Term.Binary binary && binary.operation() != Operation.OVER) {
            int rank = binary.operation().rank;
            List<String> all =
                    new ArrayList<>(
                            pieces(binary.left(), binary.operation().rankBefore(), depth - 1));
            List<String> right = pieces(binary.right(), rank + 1, depth - 1);
            add(all, infix(binary.operation().symbol()), right);
            return rank < around ? bracketed(all) : all;
        }
        if (term instanceof Term.Choice choice) {
            List<String> all = new ArrayList<>(pieces(choice.then(), 1, depth - 1));
            add(all, text(" if "), pieces(choice.condition(), 1, depth - 1));
            add(all, text(", else "), pieces(choice.otherwise(), LOOSEST, depth - 1));
            return around > 0 ? bracketed(all) : all;
        }
        if (term instanceof Term.Call call && !call.name().isEmpty()) {
            return call(call, depth);
        }
        return List.of(of(term, around));
    }

    private static List<String> call(Term.Call call, int depth) {
        List<String> all = new ArrayList<>();
        String before = Symbols.math(call.name()) + operator("(");
        for (Term argument :
                Stream.concat(call.on().stream(), call.arguments().stream()).toList()) {
            add(all, before, pieces(argument, LOOSEST, depth - 1));
            before = "";
            all.set(all.size() - 1, all.get(all.size() - 1) + operator(","));
        }
        if (all.isEmpty()) {
            return List.of(of(call));
        }
        String last = all.get(all.size() - 1);
        String comma = operator(",");
        all.set(all.size() - 1, last.substring(0, last.length() - comma.length()) + operator(")"));
        return all;
    }

    private static void add(List<String> all, String before, List<String> more) {
        all.add(before + more.get(0));
        all.addAll(more.subList(1, more.size()));
    }

    private static List<String> bracketed(List<String> pieces) {
        List<String> all = new ArrayList<>(pieces);
        all.set(0, operator("(") + all.get(0));
        all.set(all.size() - 1, all.get(all.size() - 1) + operator(")"));
        return all;
    }

    /** A sign that keeps its room on both sides where a line begins with it. */
    private static String infix(String sign) {
        return "<mo form=\"infix\">" + Symbols.escaped(sign) + "</mo>";
    }

    /** Writes the name of a variable as a symbol. */
    public static String name(String name) {
        return Symbols.math(name);
    }

    private static String of(Term term, int around) {
        if (term instanceof Term.Binary binary) {
            return binary(binary, around);
        }
        if (term instanceof Term.Negative negative) {
            return bracketed(operator("−") + of(negative.of(), 5), around > 0);
        }
        if (term instanceof Term.Literal literal) {
            return number(literal.digits(), around);
        }
        if (term instanceof Term.Known known) {
            return known(known, around);
        }
        if (term instanceof Term.Choice choice) {
            String text =
                    of(choice.then(), 1)
                            + text(" if ")
                            + of(choice.condition(), 1)
                            + text(", else ")
                            + of(choice.otherwise());
            return bracketed(text, around > 0);
        }
        return word(term);
    }

    private static String binary(Term.Binary binary, int around) {
        if (binary.operation() == Operation.OVER) {
            return "<mfrac>" + row(of(binary.left())) + row(of(binary.right())) + "</mfrac>";
        }
        int rank = binary.operation().rank;
        String joined =
                of(binary.left(), binary.operation().rankBefore())
                        + operator(binary.operation().symbol())
                        + of(binary.right(), rank + 1);
        return bracketed(joined, rank < around);
    }

    private static String number(String digits, int around) {
        boolean negative = digits.startsWith("-");
        String shown = "<mn>" + Symbols.escaped(digits.substring(negative ? 1 : 0)) + "</mn>";
        return negative ? bracketed(operator("−") + shown, around > 0) : shown;
    }

    private static String known(Term.Known known, int around) {
        Term first = known.arguments().get(0);
        return switch (known.function()) {
            case SQRT -> "<msqrt>" + of(first) + "</msqrt>";
            case CBRT -> "<mroot>" + row(of(first)) + "<mn>3</mn></mroot>";
            case POW -> bracketed(power(first, of(known.arguments().get(1))), around >= TIGHTEST);
            case EXP -> "<msup><mi>e</mi>" + row(of(first)) + "</msup>";
            case HYPOT ->
                    "<msqrt>"
                            + power(first, "<mn>2</mn>")
                            + operator("+")
                            + power(known.arguments().get(1), "<mn>2</mn>")
                            + "</msqrt>";
            case TO_RADIANS -> row(of(first, TIGHTEST) + text("°"));
            case TO_DEGREES ->
                    bracketed(
                            of(first, 5) + operator("·") + "<mfrac><mn>180</mn><mi>π</mi></mfrac>",
                            around > 5);
            case ABS -> row(operator("|") + of(first) + operator("|"));
            case LOG10 -> row("<msub><mi>log</mi><mn>10</mn></msub>" + listed(known.arguments()));
            default ->
                    row("<mi>" + known.function().symbol() + "</mi>" + listed(known.arguments()));
        };
    }

    private static String power(Term base, String exponent) {
        boolean fraction =
                base instanceof Term.Binary binary && binary.operation() == Operation.OVER;
        String below = fraction ? bracketed(of(base), true) : of(base, TIGHTEST);
        return "<msup>" + row(below) + row(exponent) + "</msup>";
    }

    private static String word(Term term) {
        if (term instanceof Term.Constant constant) {
            return "<mi>" + constant.symbol() + "</mi>";
        }
        if (term instanceof Term.Name name) {
            return Symbols.math(name.name());
        }
        if (term instanceof Term.Element element) {
            return "<msub>"
                    + row(of(element.array(), TIGHTEST))
                    + row(of(element.index()))
                    + "</msub>";
        }
        if (term instanceof Term.Call call) {
            List<Term> all = Stream.concat(call.on().stream(), call.arguments().stream()).toList();
            return call.name().isEmpty()
                    ? of(call.subject(), TIGHTEST)
                    : row(Symbols.math(call.name()) + listed(all));
        }
        if (term instanceof Term.Not not) {
            return row(text("not ") + of(not.of(), TIGHTEST));
        }
        if (term instanceof Term.Rule rule) {
            String of =
                    rule.of().stream()
                            .map(Symbols::math)
                            .collect(Collectors.joining(operator(",")));
            return row(of + operator("↦") + of(rule.gives()));
        }
        return text(((Term.Code) term).text());
    }

    private static String listed(List<Term> arguments) {
        return operator("(")
                + arguments.stream().map(MathFormula::of).collect(Collectors.joining(operator(",")))
                + operator(")");
    }

    private static String bracketed(String inner, boolean needed) {
        return row(needed ? operator("(") + inner + operator(")") : inner);
    }

    private static String operator(String sign) {
        return "<mo>" + Symbols.escaped(sign) + "</mo>";
    }

    private static String text(String words) {
        // A browser drops plain spaces at either end.
        String kept = words.replaceAll("^ | $", "\u00A0");
        return "<mtext>" + Symbols.escaped(kept) + "</mtext>";
    }

    private static String row(String inner) {
        return "<mrow>" + inner + "</mrow>";
    }
}
