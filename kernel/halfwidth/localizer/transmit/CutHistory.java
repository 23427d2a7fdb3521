package halfwidth.localizer.transmit;

import halfwidth.localizer.cut.CutRecord;
import halfwidth.localizer.transmit.CommonSlope.Group;
import halfwidth.localizer.uncertainty.Estimate;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** A cutting record as lines of offsets against the net cut, checked for slips. */
final class CutHistory {
    private CutHistory() {}

    static void checkTotals(List<CutRow> rows) {
        if (rows.isEmpty()) {
            throw new IllegalArgumentException("a series of cuts needs at least one row");
        }
        if (rows.stream().noneMatch(CutRow::isRead)) {
            throw new IllegalArgumentException("a series of cuts needs at least one offset");
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
        return IntStream.of(1, 2).mapToObj(i -> group(rows, i)).flatMap(Optional::stream).toList();
    }

    /** The offsets of transmitter 1 or 2 against the net cut; empty if it was never read. */
    static Optional<Group> group(List<CutRow> rows, int transmitter) {
        List<CutRow> read = rows.stream().filter(r -> r.offset(transmitter).isPresent()).toList();
        return read.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        new Group(
                                read.stream().mapToDouble(CutRow::netCut).toArray(),
                                read.stream()
                                        .mapToDouble(r -> r.offset(transmitter).getAsDouble())
                                        .toArray()));
    }

    /** Refuses offsets that moved as no line of this type would move them. */
    static void checkMovement(List<CutRow> rows, Estimate dataSheet, double deviation) {
        for (int transmitter = 1; transmitter <= 2; transmitter++) {
            Optional<Group> group = group(rows, transmitter).filter(read -> read.spread() > 0);
            if (group.isPresent()) {
                double u = deviation / Math.sqrt(group.get().spread());
                Estimate found = new Estimate(-group.get().slope(), u);
                CutRecord.checkMovement(found, dataSheet, "offset " + transmitter);
            }
        }
    }
}
