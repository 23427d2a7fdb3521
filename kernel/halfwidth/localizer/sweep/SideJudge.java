package halfwidth.localizer.sweep;

import halfwidth.localizer.signal.Tone;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Judges the readings of one sector on one side, outward from the course line. */
final class SideJudge {
    private final ClearanceSector sector;
    private final Tone side;
    private final double reached;
    private final List<SweepReading> inSector = new ArrayList<>();
    private boolean readBeyond;

    /** The course line, with its slope (DDM/deg), tells where the inner limit begins. */
    SideJudge(Sweep sweep, ClearanceSector sector, Tone side, double centre, double slope) {
        this.sector = sector;
        this.side = side;
        this.reached = side.sign() * centre + sector.leastDdm() / slope;
        for (SweepReading reading : sweep.readings()) {
            if (reading.azimuth() * side.sign() <= 0) {
                continue;
            }
            if (sector.contains(reading.azimuth())) {
                inSector.add(reading);
            }
            readBeyond |=
                    !reading.isMissing() && Math.abs(reading.azimuth()) >= sector.azimuths().most();
        }
        inSector.sort(Comparator.comparingDouble(reading -> Math.abs(reading.azimuth())));
    }

    List<PointVerdict> points() {
        double from = start();
        return inSector.stream().map(reading -> judge(reading, from)).toList();
    }

    ClearanceMinimum minimum() {
        List<PointVerdict> judged =
                points().stream().filter(p -> p.verdict() != Verdict.NOT_JUDGED).toList();
        Optional<SweepReading> lowest =
                judged.stream()
                        .map(PointVerdict::reading)
                        .min(Comparator.comparingDouble(this::clearance));
        Verdict verdict =
                lowest.map(reading -> isMet(reading) ? Verdict.MET : Verdict.NOT_MET)
                        .orElse(Verdict.NOT_JUDGED);
        int missing = (int) inSector.stream().filter(SweepReading::isMissing).count();
        return new ClearanceMinimum(sector, side, lowest, missing, verdict);
    }

    /**
     * How far from the centre line (deg) the limit begins. Where the course line would reach it
     * only beyond the sector although readings went on there, the outermost reading of the sector
     * may fail it.
     */
    private double start() {
        if (!sector.fromCourseLine()) {
            return 0;
        }
        List<SweepReading> present = inSector.stream().filter(one -> !one.isMissing()).toList();
        boolean within = reached <= sector.azimuths().most();
        return within || present.isEmpty() || !readBeyond
                ? reached
                : Math.abs(present.get(present.size() - 1).azimuth());
    }

    private PointVerdict judge(SweepReading reading, double from) {
        if (reading.isMissing()) {
            return new PointVerdict(reading, Verdict.NOT_JUDGED, "reading missing");
        }
        double out = Math.abs(reading.azimuth());
        boolean onSlope = sector.fromCourseLine() && out < reached;
        if (out < from || onSlope && isMet(reading)) {
            return new PointVerdict(
                    reading,
                    Verdict.NOT_JUDGED,
                    "on the slope, before " + sector.limit().words() + " is reached");
        }
        return new PointVerdict(
                reading, isMet(reading) ? Verdict.MET : Verdict.NOT_MET, sector.limit().words());
    }

    private boolean isMet(SweepReading reading) {
        return clearance(reading) >= sector.leastDdm();
    }

    private double clearance(SweepReading reading) {
        return reading.value() * side.sign();
    }
}
