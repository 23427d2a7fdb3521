package halfwidth.localizer.array;

/** One of the signals that feed an element. */
public enum FeedPath {
    /** Carrier with sidebands of the course. */
    COURSE_CSB(0, false),
    /** Sidebands only of the course. */
    COURSE_SBO(0, true),
    /** Carrier with sidebands of the clearance. */
    CLEARANCE_CSB(1, false),
    /** Sidebands only of the clearance. */
    CLEARANCE_SBO(1, true);

    private final int carrier;
    private final boolean sidebandOnly;

    FeedPath(int carrier, boolean sidebandOnly) {
        this.carrier = carrier;
        this.sidebandOnly = sidebandOnly;
    }

    /**
     * Returns which carrier it belongs to.
     *
     * @return index in the array's list of carriers (1), 0 for course, 1 for clearance
     */
    public int carrier() {
        return carrier;
    }

    boolean isSidebandOnly() {
        return sidebandOnly;
    }

    boolean existsIn(ArrayModel array) {
        return carrier < array.carriers().size();
    }
}
