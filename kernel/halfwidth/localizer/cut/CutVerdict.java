package halfwidth.localizer.cut;

/** What a series of cuts has come to. */
public enum CutVerdict {
    /** Cut again where the last cut was made (or make the first one). */
    CUT,
    /** The line was cut since it was last read: read before anything more is cut. */
    READ_FIRST,
    /** More was cut than was needed: the other line is cut next. */
    OVERSHOT,
    /** The phase left is within the target: stop. */
    AT_TARGET,
    /** What is left is shorter than the tool can cut: stop. */
    BELOW_SMALLEST_CUT
}
