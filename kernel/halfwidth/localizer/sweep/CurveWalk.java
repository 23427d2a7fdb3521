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
        List<SweepReading> walk = outward(side);
        for (int i = 1; i < walk.size(); i++) {
            double inner = walk.get(i - 1).value() * side.sign();
            double outer = walk.get(i).value() * side.sign();
            if (inner < size && outer >= size) {
                return Optional.of(crossing(walk.get(i - 1), walk.get(i), side.sign() * size));
            }
        }
        return Optional.empty();
    }

    /** The readings from the last one before the centre outward on a side. */
    private List<SweepReading> outward(Tone side) {
        List<SweepReading> walk = new ArrayList<>(present);
        if (side == Tone.HZ_90) {
            Collections.reverse(walk);
        }
        int start = 0;
        while (start < walk.size() && (walk.get(start).azimuth() - centre) * side.sign() < 0) {
            start++;
        }
        return walk.subList(Math.max(0, start - 1), walk.size());
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
