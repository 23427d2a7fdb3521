package halfwidth.localizer.array;

import java.util.List;
import java.util.Optional;

/**
 * What a receiver reads at one place, and what it is made of.
 *
 * @param ddm the DDM of all carriers together (DDM)
 * @param sdm the sum of the depths of all carriers together (1)
 * @param amplitude the mean output of the detector (1), on the scale of the currents and, near the
 *     array, as if the distance to its centre were the far field's
 * @param courseWeight the share of the course carrier in both (1), 1 where there is no other
 * @param carriers the field of the course carrier, and of the clearance carrier if there is one
 */
public record Prediction(
        double ddm,
        double sdm,
        double amplitude,
        double courseWeight,
        List<CarrierField> carriers) {

    public Prediction {
        carriers = List.copyOf(carriers);
    }

    static Prediction of(List<CarrierField> carriers, Detector detector) {
        CarrierField course = carriers.get(0);
        if (carriers.size() == 1) {
            return new Prediction(course.ddm(), course.sdm(), course.amplitude(), 1, carriers);
        }
        CarrierField clearance = carriers.get(1);
        double first = course.amplitude();
        double second = clearance.amplitude();
        double weight = detector.weightOfFirst(first, second);
        return new Prediction(
                part(weight, course) + part(1 - weight, clearance),
                weight * course.sdm() + (1 - weight) * clearance.sdm(),
                detector.meanOutput(first, second),
                weight,
                carriers);
    }

    /** A carrier without weight may have vanished, so that it has no DDM to ask for. */
    private static double part(double weight, CarrierField field) {
        return weight == 0 ? 0 : weight * field.ddm();
    }

    /**
     * Returns what another kind of detector would read of the same fields.
     *
     * @param detector the kind
     * @return its reading; the same as this where there is one carrier
     */
    public Prediction detectedBy(Detector detector) {
        return of(carriers, detector);
    }

    /**
     * Returns the field of the course carrier alone.
     *
     * @return the first carrier's field
     */
    public CarrierField course() {
        return carriers.get(0);
    }

    /**
     * Returns the field of the clearance carrier alone.
     *
     * @return the second carrier's field, empty where there is one carrier
     */
    public Optional<CarrierField> clearance() {
        return carriers.size() == 2 ? Optional.of(carriers.get(1)) : Optional.empty();
    }
}
