package halfwidth.demo;

import halfwidth.localizer.array.Current;
import halfwidth.localizer.array.Place;
import halfwidth.localizer.station.Instruments.Precision;
import java.util.ArrayList;
import java.util.List;

/** The crew predicts the field, measures the currents and asks what errors would do. */
record Arraying(Desk desk, Station station) {
    static final int DEAD = 9;
    static final int LONG_CABLE = 4;

    /** By how much the cable of one element is too long (deg). */
    static final double TOO_LONG = 17;

    private static final Precision PROBE = new Precision(0.001, 0.002);
    private static final double PROBE_GAIN = 0.71;
    private static final double PROBE_PHASE = 41;

    void predict() {
        List<List<String>> marks =
                station.simulated().marks().stream()
                        .map(
                                mark ->
                                        List.of(
                                                Surveying.name(mark),
                                                Surveying.plain(mark.azimuth()),
                                                distance(mark)))
                        .toList();
        desk.sheet("array/prediction")
                .set("arrayFile", Station.ARRAY, "category", "II")
                .set("datumDistance", datum(), "nearDistance", "300 m", "lookAt", "2")
                .table("marks", "mark,azimuth [°],distance [m]", marks)
                .run();
    }

    private String distance(Place mark) {
        return station.simulated().truth().lostMarks().contains(mark)
                ? ""
                : Surveying.plain(mark.distance());
    }

    String datum() {
        return desk.visit("site/course-geometry").printed("arrayToThreshold");
    }

    /** CSB and SBO at every element, with the noise of a probe. */
    void measureCurrents() {
        List<List<String>> rows = new ArrayList<>();
        for (int element = 1; element <= station.array().positions().size(); element++) {
            List<String> row = new ArrayList<>(List.of(String.valueOf(element)));
            row.addAll(probe(element, station.array().course().csb().get(element - 1)));
            row.addAll(probe(element, station.array().course().sbo().get(element - 1)));
            rows.add(row);
        }
        desk.sheet("array/distribution-check")
                .set("arrayFile", Station.ARRAY, "measuredCarrier", "course")
                .set("velocityFactor", "0.84", "velocityFactorUncertainty", "0.02")
                .set("phaseStep", "0.5 °", "phaseAllowed", "3 °", "levelAllowed", "0.5")
                .set("firstFraction", "0.8", "datumDistance", datum(), "category", "II")
                .table("measured", "element,CSB [1],CSB phase [°],SBO [1],SBO phase [°]", rows)
                .run();
    }

    private List<String> probe(int element, Current designed) {
        if (designed.amplitude() == 0) {
            return List.of("", "");
        }
        double left = element == DEAD ? 0.004 : 1;
        double amplitude = station.read(PROBE_GAIN * left * designed.amplitude(), PROBE);
        double phase = designed.phase() + PROBE_PHASE - (element == LONG_CABLE ? TOO_LONG : 0);
        double shown = Math.IEEEremainder(station.read(phase, Station.PHASE), 360);
        return List.of(Typed.number(Math.abs(amplitude), 3), Typed.number(shown, 1));
    }

    void studyTolerances() {
        desk.sheet("array/tolerance-study")
                .set("arrayFile", Station.ARRAY, "arisesIn", "cable", "levelSpread", "0.2")
                .set("phaseSpread", "2", "draws", "5000", "seed", "14", "inTheMiddle", "95")
                .set("datumDistance", datum(), "category", "II")
                .set("faultElement", String.valueOf(LONG_CABLE), "faultKind", "phase")
                .set("faultLevel", "-3", "faultPhase", String.valueOf(-TOO_LONG))
                .set("faultCut", "60", "velocityFactor", "0.84")
                .run();
        desk.clear();
    }
}
