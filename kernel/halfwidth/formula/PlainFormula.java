package halfwidth.formula;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Writes a formula in one line of text, as in {@code sqrt(a^2 + b^2)/2}. */
public final class PlainFormula {
    private static final int LOOSEST = 0;
    private static final int OF_PREFIX = 5;
    private static final int OF_POWER = 7;

    private PlainFormula() {}

    /** Writes a term. The sign ° stands for the factor π/180. */
    public static String of(Term term) {
        return of(term, LOOSEST);
    }

    /** Writes a term, in brackets if it binds less than what stands around it. */
    private static String of(Term term, int around) {
        if (term instanceof Term.Binary binary) {
            int rank = binary.operation().rank;
            String gap = rank < 5 || binary.operation() == Operation.REMAINDER ? " " : "";
            String joined =
                    of(binary.left(), binary.operation().rankBefore())
                            + gap
                            + binary.operation().symbol()
                            + gap
                            + of(binary.right(), rank + 1);
            return rank < around ? "(" + joined + ")" : joined;
        }
        if (term instanceof Term.Negative negative) {
            return bracketed("−" + of(negative.of(), OF_PREFIX), around > 0);
        }
        if (term instanceof Term.Literal literal) {
            String digits = literal.digits().replace('-', '−');
            return bracketed(digits, around > 0 && digits.startsWith("−"));
        }
        if (term instanceof Term.Known known) {
            return known(known, around);
        }
        if (term instanceof Term.Choice choice) {
            return bracketed(
                    of(choice.then(), 1)
                            + " if "
                            + of(choice.condition(), 1)
                            + ", else "
                            + of(choice.otherwise()),
                    around > 0);
        }
        return word(term);
    }

    private static String bracketed(String text, boolean needed) {
        return needed ? "(" + text + ")" : text;
    }

    private static String known(Term.Known known, int around) {
        Term first = known.arguments().get(0);
        switch (known.function()) {
            case POW:
                String power =
                        of(first, OF_POWER + 1) + "^" + of(known.arguments().get(1), OF_POWER + 1);
                return bracketed(power, around > OF_POWER);
            case HYPOT:
                return "sqrt(%s^2 + %s^2)"
                        .formatted(
                                of(first, OF_POWER + 1),
                                of(known.arguments().get(1), OF_POWER + 1));
            case TO_RADIANS:
                return of(first, OF_POWER + 1) + "°";
            case TO_DEGREES:
                return bracketed(of(first, 5) + "·180/π", around > 5);
            case SQRT:
            case CBRT:
                return (known.function() == Function.SQRT ? "sqrt" : "cbrt")
                        + listed(known.arguments());
            default:
                return known.function().symbol() + listed(known.arguments());
        }
    }

    private static String listed(List<Term> arguments) {
        return arguments.stream().map(PlainFormula::of).collect(Collectors.joining(", ", "(", ")"));
    }

    private static String word(Term term) {
        if (term instanceof Term.Constant constant) {
            return constant.symbol();
        }
        if (term instanceof Term.Name name) {
            return name.name();
        }
        if (term instanceof Term.Element element) {
            return of(element.array(), OF_POWER + 1) + "[" + of(element.index()) + "]";
        }
        if (term instanceof Term.Call call) {
            return call(call);
        }
        if (term instanceof Term.Not not) {
            return "not " + of(not.of(), OF_POWER);
        }
        if (term instanceof Term.Rule rule) {
            String of = String.join(", ", rule.of());
            return (rule.of().size() == 1 ? of : "(" + of + ")") + " ↦ " + of(rule.gives());
        }
        return ((Term.Code) term).text();
    }

    private static String call(Term.Call call) {
        if (call.name().isEmpty()) {
            return of(call.subject());
        }
        List<Term> all = Stream.concat(call.on().stream(), call.arguments().stream()).toList();
        return call.name() + listed(all);
    }
}
