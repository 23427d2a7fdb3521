package halfwidth.localizer.line;

/** How a phase of a line is measured, and so how often the wave runs along it. */
public enum Measurement {
    /** In at one end, out at the other: the wave runs along the line once. */
    THROUGH(1),
    /** At one end, the other open or shorted: the wave runs along the line and back. */
    ONE_PORT(2);

    private final int passes;

    Measurement(int passes) {
        this.passes = passes;
    }

    /**
     * Returns how often the wave runs along the line.
     *
     * @return the degrees read for one degree of electrical length (1)
     */
    public int passes() {
        return passes;
    }

    /**
     * Returns the electrical length that makes one whole turn of the reading.
     *
     * @return 360 through, 180 one-port (deg)
     */
    public double ambiguity() {
        return 360.0 / passes;
    }
}
