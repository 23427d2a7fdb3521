package halfwidth.formula;

import java.util.Arrays;
import java.util.Optional;

/** The functions that have a form or a name of their own in mathematics. */
public enum Function {
    SQRT("sqrt", "√", 1),
    CBRT("cbrt", "∛", 1),
    POW("pow", "pow", 2),
    HYPOT("hypot", "hypot", 2),
    EXP("exp", "exp", 1),
    LOG("log", "ln", 1),
    LOG10("log10", "log10", 1),
    SIN("sin", "sin", 1),
    COS("cos", "cos", 1),
    TAN("tan", "tan", 1),
    ASIN("asin", "arcsin", 1),
    ACOS("acos", "arccos", 1),
    ATAN("atan", "arctan", 1),
    ATAN2("atan2", "arctan2", 2),
    TO_RADIANS("toRadians", "radians", 1),
    TO_DEGREES("toDegrees", "degrees", 1),
    ABS("abs", "abs", 1),
    SIGNUM("signum", "sgn", 1),
    MIN("min", "min", 2),
    MAX("max", "max", 2),
    ROUND("round", "round", 1),
    RINT("rint", "round", 1),
    FLOOR("floor", "floor", 1),
    CEIL("ceil", "ceil", 1),
    /** A cast to a whole number; it has no name in Java. */
    WHOLE("(int)", "whole", 1);

    private final String java;
    private final String symbol;
    private final int arguments;

    Function(String java, String symbol, int arguments) {
        this.java = java;
        this.symbol = symbol;
        this.arguments = arguments;
    }

    /** How it is written before its arguments. */
    public String symbol() {
        return symbol;
    }

    /** The function of {@code java.lang.Math} of this name. */
    public static Optional<Function> named(String java, int arguments) {
        return Arrays.stream(values())
                .filter(one -> one.java.equals(java) && one.arguments == arguments)
                .findFirst();
    }
}
