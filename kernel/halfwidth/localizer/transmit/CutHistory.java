package halfwidth.localizer.transmit;

import halfwidth.localizer.cut.CutRecord;
import halfwidth.localizer.transmit.CommonSlope.Group;
import halfwidth.localizer.uncertainty.Estimate;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;

/** A cutting record as lines of offsets against the net cut, checked for slips. */
final class CutHistory {
    private CutHistory() {}

    static void checkTotals(List<CutRow> rows) {
        if (rows.isEmpty()) {
            throw new IllegalArgumentException("a series of cuts needs at least one row");
        }
        for (int i = 1; i < rows.size(); i++) {
            CutRow before = rows.get(i - 1);
            CutRow now = rows.get(i);
            CutRecord.checkGrows("SBO feed", before.sboCut(), now.sboCut(), i + 1);
            CutRecord.checkGrows("CSB feed", before.csbCut(), now.csbCut(), i + 1);
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

    /** Refuses offsets that moved as no line of this type would move them. */
    static void checkMovement(Group group, Estimate dataSheet, double deviation) {
        if (group.spread() > 0) {
            double u = deviation / Math.sqrt(group.spread());
            CutRecord.checkMovement(new Estimate(-group.slope(), u), dataSheet, "the offset");
        }
    }
}
