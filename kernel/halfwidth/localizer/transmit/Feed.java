package halfwidth.localizer.transmit;

import halfwidth.localizer.cut.NextCut;

/** The feed line that is cut, from the transmitters to the antenna distribution. */
public enum Feed {
    /** The sideband-only feed; cutting it lowers the offset needed. */
    SBO(+1, "SBO feed"),
    /** The feed of carrier with sidebands; cutting it raises the offset needed. */
    CSB(-1, "CSB feed"),
    /** Neither feed needs a cut. */
    NEITHER(0, "neither feed");

    private final int direction;
    private final String words;

    Feed(int direction, String words) {
        this.direction = direction;
        this.words = words;
    }

    /**
     * Returns what the crew calls it.
     *
     * @return for example "SBO feed"
     */
    public String words() {
        return words;
    }

    /**
     * Returns how a cut of this feed counts: the offset needed falls by direction × β × length.
     *
     * @return +1 for the SBO feed, -1 for the CSB feed, 0 for neither (1)
     */
    public int direction() {
        return direction;
    }

    /** The feed whose cut takes away an offset of this sign; NEITHER for 0. */
    static Feed takingAway(double value) {
        if (Double.isNaN(value)) {
            throw new IllegalArgumentException("the sign of NaN names no feed");
        }
        return value > 0 ? SBO : value < 0 ? CSB : NEITHER;
    }

    /**
     * Returns the feed that the next cut is of.
     *
     * @param next a cut from {@link FeedCutSeries#next}
     * @return the feed, NEITHER when no cut is made
     */
    public static Feed of(NextCut next) {
        return takingAway(next.direction());
    }
}
