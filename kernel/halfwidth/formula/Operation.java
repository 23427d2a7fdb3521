package halfwidth.formula;

/** What joins two terms. */
public enum Operation {
    OR("or", 1),
    AND("and", 2),
    EQUAL("=", 3),
    UNEQUAL("≠", 3),
    LESS("<", 3),
    AT_MOST("≤", 3),
    MORE(">", 3),
    AT_LEAST("≥", 3),
    PLUS("+", 4),
    MINUS("−", 4),
    TIMES("·", 5),
    OVER("/", 5),
    REMAINDER("mod", 5);

    private final String symbol;

    /** How strongly it binds. */
    final int rank;

    Operation(String symbol, int rank) {
        this.symbol = symbol;
        this.rank = rank;
    }

    /** How strongly what stands before it has to bind: one relation is no part of another. */
    int rankBefore() {
        return rank == EQUAL.rank ? rank + 1 : rank;
    }

    /** Whether it joins numbers to a number. */
    boolean isArithmetic() {
        return rank >= PLUS.rank;
    }

    /** How it is written between the terms. */
    public String symbol() {
        return symbol;
    }
}
