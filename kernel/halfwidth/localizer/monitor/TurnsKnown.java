package halfwidth.localizer.monitor;

/** How it is known that return lines do not differ by a further whole turn. */
public enum TurnsKnown {
    /** Coarse lengths decide it. */
    BY_LENGTH,
    /** All lines are within half a turn of each other if none is a whole turn off: assumed. */
    ASSUMED,
    /** A whole turn cannot be told from a length: measure the lines by tape before any cut. */
    NO
}
