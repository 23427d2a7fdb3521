package halfwidth.localizer.sweep;

/** What the limit says of a reading or of a sector. */
public enum Verdict {
    /** The limit is met. */
    MET,
    /** The limit is not met. */
    NOT_MET,
    /** Nothing to judge: a reading is missing, or no limit holds there. */
    NOT_JUDGED
}
