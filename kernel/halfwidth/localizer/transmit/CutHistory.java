package halfwidth.localizer.transmit;

import halfwidth.localizer.transmit.CommonSlope.Group;
import halfwidth.localizer.uncertainty.Estimate;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;

/** Refusals of a cutting record that cannot be true, before anything is fitted to it. */
final class CutHistory {
    /** A line is never this many times faster or slower than its data sheet says. */
    private static final double FACTOR = 2;

    /** About 95 % sure that a change is not the rounding of the offsets. */
    private static final double SURE = 2;

    private CutHistory() {}

    static void checkTotals(List<CutRow> rows) {
        if (rows.isEmpty()) {
            throw new IllegalArgumentException("a series of cuts needs at least one row");
        }
        for (int i = 1; i < rows.size(); i++) {
            CutRow before = rows.get(i - 1);
            CutRow now = rows.get(i);
            checkGrows("SBO", before.sboCut(), now.sboCut(), i + 1);
            checkGrows("CSB", before.csbCut(), now.csbCut(), i + 1);
        }
    }

    private static void checkGrows(String feed, double before, double now, int row) {
        if (now < before) {
            throw new IllegalArgumentException(
                    String.format(
                            "cut of the %s feed fell from %s to %s m in row %d: it must not"
                                    + " shrink; enter all that was cut so far, not the last cut",
                            feed, before, now, row));
        }
    }

    /** The offsets of each transmitter against the net cut, without those not read. */
    static List<Group> groups(List<CutRow> rows) {
        List<Group> groups = new ArrayList<>();
        for (Function<CutRow, OptionalDouble> offset :
                List.<Function<CutRow, OptionalDouble>>of(CutRow::offset1, CutRow::offset2)) {
            List<CutRow> read = rows.stream().filter(r -> offset.apply(r).isPresent()).toList();
            if (!read.isEmpty()) {
                groups.add(
                        new Group(
                                read.stream().mapToDouble(CutRow::netCut).toArray(),
                                read.stream()
                                        .mapToDouble(r -> offset.apply(r).getAsDouble())
                                        .toArray()));
            }
        }
        return groups;
    }

    /** Refuses offsets that moved the wrong way, or not as any line of this type would. */
    static void checkMovement(Group group, Estimate dataSheet, double deviation) {
        if (!(group.spread() > 0)) {
            return;
        }
        double found = -group.slope();
        double slack = SURE * deviation / Math.sqrt(group.spread());
        String moved =
                String.format(
                        "the offset changed by %.4g deg for each metre cut, where the data sheet"
                                + " says %.4g",
                        found, dataSheet.value());
        if (found + slack < 0) {
            throw new IllegalArgumentException(
                    moved + ": it moved the wrong way; wrong feed cut, or a sign mistyped?");
        }
        if (found + slack < dataSheet.value() / FACTOR) {
            throw new IllegalArgumentException(
                    moved + ": it moved too little; was another line cut, or a unit mistaken?");
        }
        if (found - slack > dataSheet.value() * FACTOR) {
            throw new IllegalArgumentException(
                    moved + ": it moved too much; is a unit or an offset mistaken?");
        }
    }
}
