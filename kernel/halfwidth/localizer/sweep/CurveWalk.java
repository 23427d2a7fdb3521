package halfwidth.localizer.sweep;

import halfwidth.localizer.signal.Tone;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Walks along the readings of a sweep, outward from the course line. */
final class CurveWalk {
    private final Sweep sweep;
    private final List<SweepReading> present;
    private final double centre;

    CurveWalk(Sweep sweep, double centre) {
        this.sweep = sweep;
        this.present = sweep.present();
        this.centre = centre;
    }

    /** The passage through 0 from the 90 to the 150 that is nearest to the centre. */
    Optional<Crossing> crossingNearestCentre() {
        List<Crossing> crossings = new ArrayList<>();
        for (int i = 1; i < present.size(); i++) {
            SweepReading below = present.get(i - 1);
            SweepReading above = present.get(i);
            if (below.value() <= 0 && above.value() >= 0 && below.value() < above.value()) {
                crossings.add(crossing(below, above, 0));
            }
        }
        return crossings.stream()
                .min(Comparator.comparingDouble(one -> Math.abs(one.azimuth() - centre)));
    }

    /** The first passage of a DDM of a side, going outward on that side. */
    Optional<Crossing> outwardCrossing(Tone side, double size) {
        List<SweepReading> walk = new ArrayList<>(outward(side));
        int before = present.size() - walk.size() - 1;
        if (before >= 0) {
            walk.add(0, along(side).get(before));
        }
        for (int i = 1; i < walk.size(); i++) {
            double inner = walk.get(i - 1).value() * side.sign();
            double outer = walk.get(i).value() * side.sign();
            if (inner < size && outer >= size) {
                return Optional.of(crossing(walk.get(i - 1), walk.get(i), side.sign() * size));
            }
        }
        return Optional.empty();
    }

    /** The readings from the centre outward on a side; one at the centre itself is on both. */
    List<SweepReading> outward(Tone side) {
        return along(side).stream()
                .dropWhile(reading -> (reading.azimuth() - centre) * side.sign() < 0)
                .toList();
    }

    /** All readings, in the direction of a side. */
    private List<SweepReading> along(Tone side) {
        List<SweepReading> walk = new ArrayList<>(present);
        if (side == Tone.HZ_90) {
            Collections.reverse(walk);
        }
        return walk;
    }

    private Crossing crossing(SweepReading one, SweepReading other, double ddm) {
        double least = Math.min(one.azimuth(), other.azimuth());
        double most = Math.max(one.azimuth(), other.azimuth());
        boolean gap =
                sweep.missing().stream()
                        .anyMatch(lost -> lost.azimuth() > least && lost.azimuth() < most);
        return new Crossing(Straight.between(one, other).azimuthOf(ddm), gap);
    }
}
