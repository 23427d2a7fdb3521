package halfwidth.localizer.signal;

/** The tone that predominates in a reading. */
public enum Tone {
    /** 90 Hz: negative DDM, on the left of a pilot on approach, facing the array. */
    HZ_90("90", -1),
    /** 150 Hz: positive DDM, on the right of a pilot on approach, facing the array. */
    HZ_150("150", 1);

    private final String spoken;
    private final int sign;

    Tone(String spoken, int sign) {
        this.spoken = spoken;
        this.sign = sign;
    }

    /**
     * Returns the tone as crews name it.
     *
     * @return "90" or "150"
     */
    public String spoken() {
        return spoken;
    }

    /**
     * Returns the sign of a DDM in which this tone predominates.
     *
     * @return -1 for 90 Hz, 1 for 150 Hz (1)
     */
    public int sign() {
        return sign;
    }
}
