package halfwidth.demo;

import halfwidth.localizer.array.Place;
import halfwidth.localizer.site.Mark;
import halfwidth.localizer.station.Instruments.Precision;
import java.util.Comparator;
import java.util.List;

/**
 * The crew finds the width that fits the runway, sets out the marks and looks for the lost ones.
 */
record Surveying(Desk desk, Station station) {
    static final double RUNWAY = 2740;
    static final double SETBACK = 298;
    static final double CIRCLE = 300;
    static final double TAPE_UNCERTAINTY = 0.05;
    private static final Precision TAPE = new Precision(0.01, 0.03);

    void survey() {
        Visit geometry =
                desk.sheet("site/course-geometry")
                        .set("category", "II", "rule", "Annex 10")
                        .set("runwayLength", RUNWAY + " m", "displacement", "0 m")
                        .set("setback", SETBACK + " m", "distanceUncertainty", "0.5 m")
                        .run();
        List<Place> marks = station.simulated().marks();
        desk.sheet("site/check-points")
                .set("layout", "arc", "distance", CIRCLE + " m")
                .set("halfWidth", geometry.printed("halfWidth"))
                .set("ddmPerDegree", geometry.printed("ddmPerDegree"))
                .set("placing", "0.03 m", "frequency", Station.FREQUENCY)
                .set("aperture", aperture() + " m")
                .set("latitude", "52.4", "longitude", "10.2", "courseBearing", "141.60")
                .table(
                        "marks",
                        "mark,azimuth [°],own distance [m]",
                        marks.stream()
                                .map(mark -> List.of(name(mark), plain(mark.azimuth()), ""))
                                .toList())
                .run();
        lost().forEach(this::lookFor);
        desk.clear();
    }

    private double aperture() {
        List<Double> positions = station.array().positions();
        return positions.get(positions.size() - 1) - positions.get(0);
    }

    /** The marks that are not to be found; whoever walks the circle sees that they are missing. */
    List<Place> lost() {
        return station.simulated().truth().lostMarks().stream()
                .sorted(Comparator.comparingDouble(Place::azimuth))
                .toList();
    }

    /** By the distances on record to the array and to the mark on the course line. */
    private void lookFor(Place lost) {
        Mark there = mark(lost);
        Mark courseLine = new Mark(CIRCLE, 0);
        Mark array = new Mark(0, 0);
        desk.sheet("site/lost-mark", "mark-" + name(lost).replace(' ', '-'))
                .set("expectedAlong", metres(there.along()))
                .set("expectedOffset", metres(there.offset()))
                .set("latitude", "52.4", "longitude", "10.2", "courseBearing", "141.60")
                .table(
                        "recovered",
                        "mark,along [m],offset [m],tape [m],uncertain by [m]",
                        List.of(
                                tape("centre of the array", array, there),
                                tape("course line", courseLine, there)))
                .run();
    }

    private List<String> tape(String name, Mark from, Mark lost) {
        double tape = station.read(from.distanceTo(lost), TAPE);
        return List.of(
                name,
                plain(from.along()),
                plain(from.offset()),
                Typed.number(tape, 2),
                plain(TAPE_UNCERTAINTY));
    }

    static Mark mark(Place place) {
        return Mark.atAzimuth(place.distance(), place.azimuth());
    }

    static String name(Place mark) {
        return mark.azimuth() == 0
                ? "course line"
                : (mark.azimuth() > 0 ? "150 at " : "90 at ") + plain(Math.abs(mark.azimuth()));
    }

    /** By the list of marks, which gives centimetres. */
    private static String metres(double value) {
        return Typed.number(value, 2) + " m";
    }

    static String plain(double value) {
        return value == Math.rint(value) ? String.valueOf((long) value) : String.valueOf(value);
    }
}
