package halfwidth.localizer.monitor;

import halfwidth.localizer.cut.NextCut;

/** A side of the array, by the tone that predominates on that side of the course line. */
public enum ArraySide {
    /** The 150 Hz side: right as a pilot facing the array sees it, left seen from behind it. */
    ON_150(+1, "150 Hz side"),
    /** The 90 Hz side: left as a pilot facing the array sees it, right seen from behind it. */
    ON_90(-1, "90 Hz side"),
    /** Neither side. */
    NEITHER(0, "neither side");

    private final int direction;
    private final String words;

    ArraySide(int direction, String words) {
        this.direction = direction;
        this.words = words;
    }

    /**
     * Returns what the crew calls it.
     *
     * @return for example "150 Hz side"
     */
    public String words() {
        return words;
    }

    /**
     * Returns how a delay in this side's return counts towards the excess of the pair.
     *
     * @return +1 for the 150 Hz side, -1 for the 90 Hz side, 0 for neither (1)
     */
    public int direction() {
        return direction;
    }

    /**
     * Returns the side that is too long for an excess of this sign.
     *
     * @param excess anything of the sign of the excess δ (unit of the value)
     * @return the 150 Hz side for a positive value, the 90 Hz side for a negative one
     * @throws IllegalArgumentException if the value is NaN
     */
    public static ArraySide tooLong(double excess) {
        if (Double.isNaN(excess)) {
            throw new IllegalArgumentException("the sign of NaN names no side");
        }
        return excess > 0 ? ON_150 : excess < 0 ? ON_90 : NEITHER;
    }

    /**
     * Returns the side that the next cut is on.
     *
     * @param next a cut from {@link AdapterTrial#firstCut} or {@link PairCutSeries#next}
     * @return the side, NEITHER when no cut is made
     */
    public static ArraySide of(NextCut next) {
        return tooLong(next.direction());
    }

    static ArraySide checked(ArraySide side, String what) {
        if (side == NEITHER) {
            throw new IllegalArgumentException(what + " must name a side of the array");
        }
        return side;
    }
}
