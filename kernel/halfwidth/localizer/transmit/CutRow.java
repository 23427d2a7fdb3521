package halfwidth.localizer.transmit;

import halfwidth.localizer.Range;
import halfwidth.localizer.Require;
import java.util.OptionalDouble;

/**
 * One line of the cutting record: what has been cut so far, and the offsets found then.
 *
 * @param sboCut all that has been cut from the SBO feed so far (m), at least 0
 * @param csbCut all that has been cut from the CSB feed so far (m), at least 0
 * @param offset1 offset needed on transmitter 1 (deg), positive = SBO advanced; empty if not read
 * @param offset2 offset needed on transmitter 2 (deg); empty if not read
 */
public record CutRow(double sboCut, double csbCut, OptionalDouble offset1, OptionalDouble offset2) {
    /** Several turns of any line: a larger number is a slip of the unit (m). */
    static final Range CUTS = new Range(0, 10);

    /** An offset is known to a whole turn (deg). */
    static final Range OFFSETS = new Range(-180, 180);

    /**
     * @throws IllegalArgumentException if a cut is not 0 to 10 m, an offset is NaN or beyond ±180
     *     deg, or both are empty
     */
    public CutRow {
        Require.within("cut of the SBO feed", sboCut, CUTS, "m");
        Require.within("cut of the CSB feed", csbCut, CUTS, "m");
        offset1.ifPresent(o -> Require.within("offset 1", o, OFFSETS, "deg"));
        offset2.ifPresent(o -> Require.within("offset 2", o, OFFSETS, "deg"));
        if (offset1.isEmpty() && offset2.isEmpty()) {
            throw new IllegalArgumentException(
                    "no offset at all was read after cutting "
                            + sboCut
                            + " m of SBO and "
                            + csbCut
                            + " m of CSB feed");
        }
    }

    /**
     * Takes a line of a table, in which NaN stands for a cell left blank.
     *
     * @param feed the feed that was cut
     * @param totalCut all that has been cut from it so far (m)
     * @param offset1 offset needed on transmitter 1 (deg), NaN if not read
     * @param offset2 offset needed on transmitter 2 (deg), NaN if not read
     * @return the row, with nothing cut from the other feed
     * @throws IllegalArgumentException if the feed is NEITHER, or as the record does
     */
    public static CutRow onFeed(Feed feed, double totalCut, double offset1, double offset2) {
        return switch (feed) {
            case SBO -> after(totalCut, 0, offset1, offset2);
            case CSB -> after(0, totalCut, offset1, offset2);
            case NEITHER -> throw new IllegalArgumentException("say which feed was cut");
        };
    }

    /**
     * Takes a line of a table that has a column for each feed.
     *
     * @param sboCut all that has been cut from the SBO feed so far (m), at least 0
     * @param csbCut all that has been cut from the CSB feed so far (m), at least 0
     * @param offset1 offset needed on transmitter 1 (deg), NaN if not read
     * @param offset2 offset needed on transmitter 2 (deg), NaN if not read
     * @return the row
     * @throws IllegalArgumentException as the record does
     */
    public static CutRow after(double sboCut, double csbCut, double offset1, double offset2) {
        return new CutRow(sboCut, csbCut, blankAsEmpty(offset1), blankAsEmpty(offset2));
    }

    private static OptionalDouble blankAsEmpty(double cell) {
        return Double.isNaN(cell) ? OptionalDouble.empty() : OptionalDouble.of(cell);
    }

    /** Cut that lowers the offset needed (m): that of the SBO less that of the CSB feed. */
    double netCut() {
        return sboCut - csbCut;
    }
}
