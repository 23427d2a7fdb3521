package halfwidth.localizer.array;

import halfwidth.localizer.Range;
import halfwidth.localizer.Require;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.Function;

/**
 * An antenna array: where its elements stand, how they radiate and what feeds them.
 *
 * @param name what it is, as its file says
 * @param positions of the elements along the array from its centre (m), positive to the 150 Hz
 *     side; at least one, no two alike
 * @param pattern how each element radiates
 * @param carriers the course carrier, and the clearance carrier if it has its own
 */
public record ArrayModel(
        String name, List<Double> positions, ElementPattern pattern, List<Carrier> carriers) {
    private static final Range POSITIONS = new Range(-200, 200);

    /**
     * @throws IllegalArgumentException if there is no element, two stand in one place, a position
     *     is more than 200 m from the centre, there are not one or two carriers, or a carrier feeds
     *     another number of elements
     */
    public ArrayModel {
        positions = List.copyOf(positions);
        carriers = List.copyOf(carriers);
        positions.forEach(x -> Require.within("position", x, POSITIONS, "m"));
        if (new HashSet<>(positions).size() < positions.size()) {
            throw new IllegalArgumentException("positions must differ from each other");
        }
        if (carriers.isEmpty() || carriers.size() > 2) {
            throw new IllegalArgumentException(
                    "carriers must be one or two, not " + carriers.size());
        }
        for (Carrier carrier : carriers) {
            Require.sameLength("positions and currents", positions.size(), carrier.elements());
        }
    }

    /**
     * Returns the carrier of the course signal.
     *
     * @return the first carrier
     */
    public Carrier course() {
        return carriers.get(0);
    }

    /**
     * Returns the carrier of the clearance signal.
     *
     * @return the second carrier, empty for an array with one
     */
    public Optional<Carrier> clearance() {
        return carriers.size() == 2 ? Optional.of(carriers.get(1)) : Optional.empty();
    }

    /**
     * Returns the distance between the outermost elements.
     *
     * @return the aperture D (m)
     */
    public double aperture() {
        double least = positions.stream().mapToDouble(x -> x).min().orElseThrow();
        double most = positions.stream().mapToDouble(x -> x).max().orElseThrow();
        return most - least;
    }

    /**
     * Returns this array with another course carrier.
     *
     * @param course the new course carrier
     * @return the changed array
     */
    public ArrayModel withCourse(Carrier course) {
        return withCarriers(
                clearance().map(own -> List.of(course, own)).orElseGet(() -> List.of(course)));
    }

    /**
     * Returns this array with another clearance carrier, or with its first.
     *
     * @param clearance the new clearance carrier
     * @return the changed array
     */
    public ArrayModel withClearance(Carrier clearance) {
        return withCarriers(List.of(course(), clearance));
    }

    private ArrayModel withCarriers(List<Carrier> changed) {
        return new ArrayModel(name, positions, pattern, changed);
    }

    /**
     * Returns this array with a fault in it, or any other change of a feed.
     *
     * @param fault which element, which of its feeds, and what happened
     * @return the changed array
     * @throws IllegalArgumentException if the array has no such element or no such carrier
     */
    public ArrayModel with(Fault fault) {
        return fault.appliedTo(this);
    }

    /**
     * Predicts what a receiver far away reads.
     *
     * @param azimuth towards the receiver (deg), positive on the 150 Hz side, −90 to 90
     * @return the fields of each carrier and their combined reading
     * @throws IllegalArgumentException if the azimuth is outside its range or no carrier is
     *     received
     */
    public Prediction farField(double azimuth) {
        return farField().apply(azimuth);
    }

    /**
     * Returns the far field as a function of the azimuth, for many of them.
     *
     * @return what {@link #farField(double)} gives, from an azimuth (deg)
     */
    public DoubleFunction<Prediction> farField() {
        List<Radiation> radiations = radiations();
        return azimuth -> {
            Require.within("azimuth", azimuth, Place.AZIMUTHS, "deg");
            return prediction(radiations, radiation -> radiation.far(azimuth));
        };
    }

    /**
     * Predicts what a receiver near the array reads, from its true distance to each element.
     *
     * @param azimuth of the receiver from the array's centre (deg), −90 to 90
     * @param distance of the receiver from the array's centre (m), above half the aperture
     * @return the fields of each carrier and their combined reading, scaled as in the far field
     * @throws IllegalArgumentException if an argument is outside its range or no carrier is
     *     received
     */
    public Prediction nearField(double azimuth, double distance) {
        return nearField(distance).apply(azimuth);
    }

    /**
     * Returns the field on a circle about the array's centre as a function of the azimuth.
     *
     * @param distance radius of the circle (m), above half the aperture
     * @return what {@link #nearField(double, double)} gives, from an azimuth (deg)
     * @throws IllegalArgumentException if the circle cuts the array
     */
    public DoubleFunction<Prediction> nearField(double distance) {
        Require.above("distance", distance, aperture() / 2, "m");
        List<Radiation> radiations = radiations();
        double[] at = positions.stream().mapToDouble(Double::doubleValue).toArray();
        return azimuth -> {
            SightLines lines = SightLines.to(new Place(azimuth, distance), at, pattern);
            return prediction(radiations, radiation -> radiation.near(lines));
        };
    }

    private List<Radiation> radiations() {
        return carriers.stream().map(carrier -> new Radiation(this, carrier)).toList();
    }

    private static Prediction prediction(
            List<Radiation> radiations, Function<Radiation, CarrierField> field) {
        return Prediction.of(radiations.stream().map(field).toList(), Detector.LINEAR_ENVELOPE);
    }
}
