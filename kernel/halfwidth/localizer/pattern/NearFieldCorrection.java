package halfwidth.localizer.pattern;

import halfwidth.localizer.array.ArrayModel;
import halfwidth.localizer.array.Place;
import java.util.OptionalDouble;

/**
 * How a check point near the array reads against the far field at the same azimuth.
 *
 * @param place where the check point is
 * @param nearDdm the DDM predicted there (DDM)
 * @param farDdm the DDM predicted far away at its azimuth (DDM)
 */
public record NearFieldCorrection(Place place, double nearDdm, double farDdm) {
    /** Below this DDM, a portable receiver's step, a ratio would only be noise over noise. */
    private static final double SMALLEST = 0.001;

    /**
     * Predicts both readings.
     *
     * @param array the array
     * @param place where the check point is
     * @return both and what follows
     * @throws IllegalArgumentException if the place is among the elements or a carrier vanishes
     */
    public static NearFieldCorrection of(ArrayModel array, Place place) {
        return new NearFieldCorrection(
                place,
                array.nearField(place.azimuth(), place.distance()).ddm(),
                array.farField(place.azimuth()).ddm());
    }

    /**
     * Returns by how much the check point reads more than the far field.
     *
     * @return near − far (DDM)
     */
    public double difference() {
        return nearDdm - farDdm;
    }

    /**
     * Returns the correction: near/far at the same azimuth.
     *
     * @return the factor that turns a far reading into the near one (1); empty where the far field
     *     is below 0.001 DDM, as on the course line
     */
    public OptionalDouble factor() {
        return Math.abs(farDdm) < SMALLEST
                ? OptionalDouble.empty()
                : OptionalDouble.of(nearDdm / farDdm);
    }
}
