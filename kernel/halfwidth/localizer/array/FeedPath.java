package halfwidth.localizer.array;

/** One of the signals that feed an element. */
public enum FeedPath {
    COURSE_CSB(0, false),
    COURSE_SBO(0, true),
    CLEARANCE_CSB(1, false),
    CLEARANCE_SBO(1, true);

    private final int carrier;
    private final boolean sidebandOnly;

    FeedPath(int carrier, boolean sidebandOnly) {
        this.carrier = carrier;
        this.sidebandOnly = sidebandOnly;
    }

    /** Index of the carrier in the array's list (0: course, 1: clearance). */
    int carrier() {
        return carrier;
    }

    boolean isSidebandOnly() {
        return sidebandOnly;
    }

    boolean existsIn(ArrayModel array) {
        return carrier < array.carriers().size();
    }
}
