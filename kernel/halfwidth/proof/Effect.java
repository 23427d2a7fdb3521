package halfwidth.proof;

/**
 * What a library method does to units. "It" is what the method is called on; for a static method,
 * its first argument.
 */
enum Effect {
    /** It, in its own unit. */
    SAME,
    /** A count or another number without a unit, whatever it is. */
    ONE,
    /** Days. */
    DAYS,
    /** A percentage, whatever it is. */
    PERCENT,
    /** It beside all arguments, which have to be in its unit. */
    SUM,
    HYPOT,
    PRODUCT,
    QUOTIENT,
    /** It to the power of the argument. */
    POWER,
    SQUARE,
    CUBE,
    ROOT,
    CUBE_ROOT,
    RECIPROCAL,
    /** The product of as many as there are, which has a known unit for plain ratios only. */
    PLAIN,
    /** A function that takes an angle in radians. */
    ANGLE,
    /** A function that takes a plain ratio and gives one. */
    RATIO,
    /** The decimal logarithm of a plain ratio. */
    LOGARITHM,
    RADIANS,
    DEGREES,
    /** The angle of two amounts in one unit. */
    BEARING,

    /** Nothing that has a unit yet. */
    NOTHING,
    /** One of all: of it and every argument. */
    JOINED,
    /** One of the values among keys and values that alternate. */
    JOINED_VALUES,
    /** One of it and the last argument. */
    FALLBACK,
    /** The last argument, as often as the first says. */
    REPEATED,
    /** The whole numbers from the first argument to the second. */
    NUMBERED,
    /** What the first argument, a rule, gives for it. */
    MAPPED,
    /** The rule is run with it, and gives nothing. */
    EACH,
    /** It, after the rule was run with it. */
    WATCHED,
    /** What a rule of two makes of all its elements, one after the other. */
    FOLDED,
    /** What a collector makes of it. */
    COLLECTED,
    /** What the last argument, a rule, makes of the first again and again. */
    ITERATED,
    /** What a rule of nothing gives. */
    MADE,
    /** A rule that gives back what it takes. */
    ITSELF,
    /** A collector that counts. */
    COUNTED,
    /** A collector that makes a text. */
    TOLD,
    /** A collector that is like the rule in its first argument. */
    RULE,
    /** A collector: what the first argument makes of it, then what the last makes of that. */
    THEN,

    /** Takes the last argument up. */
    ADDED,
    /** Sets every element of an array to the last argument. */
    FILLED,
    /** Sets every element of an array by a rule of its place. */
    SET_ALL,
    /** Sets the cell of a row that the first argument names to the last. */
    CELL_SET,

    /** A table's column, or a row's cell, that the first argument names. */
    COLUMN,
    /** A table of columns. */
    TABLE,
    /** A table and more columns. */
    COLUMNS_ADDED,
    /** A column: its name, then its cells. */
    CREATED,
    /** A column: its name, and how long it is. */
    BLANK_COLUMN,
    /** A column under another name. */
    NAMED,

    /** A regression of y over x without points. */
    FIT,
    /** A regression that takes up a point. */
    FITTED,
    /** In the unit of a regression's y. */
    SECOND,
    /** In the unit of y over x. */
    SLOPE,
    FIRST_SQUARE,
    SECOND_SQUARE,
    /** In the unit of x times y. */
    BOTH,

    /** Changes nothing; what it gives is not known. */
    OPEN
}
