package halfwidth.localizer.transmit;

import halfwidth.localizer.Range;
import halfwidth.localizer.Require;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * One line of the cutting record: what has been cut so far, and the offsets found then. A row
 * without offsets counts by what was cut.
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
     * @throws IllegalArgumentException if a cut is NaN or not 0 to 10 m, an offset is NaN or beyond
     *     ±180 deg, or both differ by more than 180 deg
     */
    public CutRow {
        checkCut("SBO", sboCut);
        checkCut("CSB", csbCut);
        offset1.ifPresent(o -> Require.within("offset 1", o, OFFSETS, "deg"));
        offset2.ifPresent(o -> Require.within("offset 2", o, OFFSETS, "deg"));
        if (offset1.isPresent() && offset2.isPresent()) {
            FeedTrim.checkSpread(offset1.getAsDouble(), offset2.getAsDouble());
        }
    }

    private static void checkCut(String feed, double cut) {
        if (Double.isNaN(cut)) {
            throw new IllegalArgumentException(
                    "the total cut of the "
                            + feed
                            + " feed is blank; type 0 where nothing was cut");
        }
        Require.within("total cut of the " + feed + " feed", cut, CUTS, "m");
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

    /**
     * Takes the columns of a table, in which NaN stands for a cell left blank.
     *
     * @param sboCuts all that had been cut from the SBO feed at each row (m)
     * @param csbCuts all that had been cut from the CSB feed at each row (m)
     * @param offsets1 offset needed on transmitter 1 at each row (deg)
     * @param offsets2 offset needed on transmitter 2 at each row (deg)
     * @return the rows
     * @throws IllegalArgumentException if the columns differ in length, or as the record does,
     *     naming the row, counted from 1
     */
    public static List<CutRow> ofColumns(
            double[] sboCuts, double[] csbCuts, double[] offsets1, double[] offsets2) {
        Require.sameLength("cuts of the two feeds", sboCuts.length, csbCuts.length);
        Require.sameLength("cuts and offsets 1", sboCuts.length, offsets1.length);
        Require.sameLength("cuts and offsets 2", sboCuts.length, offsets2.length);
        List<CutRow> rows = new ArrayList<>();
        for (int i = 0; i < sboCuts.length; i++) {
            try {
                rows.add(after(sboCuts[i], csbCuts[i], offsets1[i], offsets2[i]));
            } catch (IllegalArgumentException e) {
                throw new IllegalArgumentException("row " + (i + 1) + ": " + e.getMessage(), e);
            }
        }
        return List.copyOf(rows);
    }

    /** Whether a transmitter was phased then. */
    boolean isRead() {
        return offset1.isPresent() || offset2.isPresent();
    }

    /** The offset of transmitter 1 or 2. */
    OptionalDouble offset(int transmitter) {
        return transmitter == 1 ? offset1 : offset2;
    }

    private static OptionalDouble blankAsEmpty(double cell) {
        return Double.isNaN(cell) ? OptionalDouble.empty() : OptionalDouble.of(cell);
    }

    /**
     * Returns the cut that lowers the offset needed: that of the SBO less that of the CSB feed.
     *
     * @return the net cut (m)
     */
    public double netCut() {
        return sboCut - csbCut;
    }
}
