package halfwidth.localizer.pattern;

/** A side of the course line, named by the tone that should predominate there. */
public enum Side {
    /** Negative azimuths: the left of a pilot on approach, facing the array. */
    HZ_90(-1),
    /** Positive azimuths: the right of a pilot on approach, facing the array. */
    HZ_150(1);

    private final int sign;

    Side(int sign) {
        this.sign = sign;
    }

    /**
     * Returns the sign of azimuths and DDM on this side.
     *
     * @return −1 or 1
     */
    public int sign() {
        return sign;
    }
}
