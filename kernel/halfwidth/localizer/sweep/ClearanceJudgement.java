package halfwidth.localizer.sweep;

import halfwidth.localizer.Require;
import halfwidth.localizer.signal.Tone;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Every reading of a sweep against the clearance limit of its sector.
 *
 * @param points one verdict for each reading of the sweep, by azimuth
 * @param minima the least clearance of each sector on each side
 */
public record ClearanceJudgement(List<PointVerdict> points, List<ClearanceMinimum> minima) {

    /** Copies the lists. */
    public ClearanceJudgement {
        points = List.copyOf(points);
        minima = List.copyOf(minima);
    }

    /**
     * Judges a sweep. Next to the course, a limit L holds from where the course line reaches it: at
     * centre ± L/slope. Any reading beyond counts, so that a hole next to the course sector, or a
     * wrong tone there, is not met.
     *
     * @param sweep the sweep
     * @param sectors the sectors, which must not overlap
     * @param centre the azimuth of the course line (deg), positive on the 150 Hz side
     * @param slope the slope of the course (DDM/deg), above 0: the fitted one, or the commissioned
     *     one where none could be fitted
     * @return the verdicts
     * @throws IllegalArgumentException if the centre is not finite or the slope not above 0
     */
    public static ClearanceJudgement of(
            Sweep sweep, List<ClearanceSector> sectors, double centre, double slope) {
        Require.finite("centre", centre, "deg");
        Require.above("slope", slope, 0, "DDM/deg");
        List<PointVerdict> points = new ArrayList<>();
        List<ClearanceMinimum> minima = new ArrayList<>();
        for (ClearanceSector sector : sectors) {
            for (Tone side : Tone.values()) {
                SideJudge judge = new SideJudge(sweep, sector, side, centre, slope);
                points.addAll(judge.points());
                minima.add(judge.minimum());
            }
        }
        for (SweepReading reading : sweep.readings()) {
            if (sectors.stream().noneMatch(sector -> sector.contains(reading.azimuth()))) {
                points.add(
                        new PointVerdict(reading, Verdict.NOT_JUDGED, "no clearance limit here"));
            }
        }
        points.sort(Comparator.comparingDouble(point -> point.reading().azimuth()));
        return new ClearanceJudgement(points, minima);
    }

    /**
     * Returns the verdict on the whole sweep.
     *
     * @return not met if any sector is not, else not judged if any sector could not be or a reading
     *     under a limit is missing, else met
     */
    public Verdict verdict() {
        if (minima.stream().anyMatch(one -> one.verdict() == Verdict.NOT_MET)) {
            return Verdict.NOT_MET;
        }
        boolean open =
                minima.stream()
                        .anyMatch(one -> one.verdict() == Verdict.NOT_JUDGED || one.missing() > 0);
        return open ? Verdict.NOT_JUDGED : Verdict.MET;
    }

    /**
     * Returns the readings that fail their limit.
     *
     * @return their verdicts, by azimuth
     */
    public List<PointVerdict> notMet() {
        return points.stream().filter(point -> point.verdict() == Verdict.NOT_MET).toList();
    }

    /**
     * Returns the readings that are missing and so could not be judged.
     *
     * @return the missing readings, by azimuth
     */
    public List<SweepReading> missing() {
        return points.stream().map(PointVerdict::reading).filter(SweepReading::isMissing).toList();
    }
}
