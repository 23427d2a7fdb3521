package halfwidth.localizer.sweep;

import halfwidth.localizer.Range;
import halfwidth.localizer.Require;
import java.util.OptionalDouble;

/**
 * One reading of a sweep.
 *
 * @param azimuth seen from the centre of the array (deg), -180 to 180, positive on the 150 Hz side
 * @param ddm the DDM (DDM), -1 to 1; empty where the reading is missing
 */
public record SweepReading(double azimuth, OptionalDouble ddm) {
    private static final Range AZIMUTHS = new Range(-180, 180);
    private static final Range DDMS = new Range(-1, 1);

    /**
     * @throws IllegalArgumentException if a value is outside its range
     */
    public SweepReading {
        Require.within("azimuth", azimuth, AZIMUTHS, "deg");
        if (ddm.isPresent()) {
            Require.within("DDM", ddm.getAsDouble(), DDMS, "");
        }
    }

    /**
     * Returns a reading.
     *
     * @param azimuth where it was taken (deg)
     * @param ddm the DDM (DDM)
     * @return the reading
     * @throws IllegalArgumentException if a value is outside its range
     */
    public static SweepReading of(double azimuth, double ddm) {
        return new SweepReading(azimuth, OptionalDouble.of(ddm));
    }

    /**
     * Returns a reading that is missing.
     *
     * @param azimuth where it should have been taken (deg)
     * @return the missing reading
     * @throws IllegalArgumentException if the azimuth is outside its range
     */
    public static SweepReading missing(double azimuth) {
        return new SweepReading(azimuth, OptionalDouble.empty());
    }

    /**
     * Tells whether the reading is missing.
     *
     * @return true if it is
     */
    public boolean isMissing() {
        return ddm.isEmpty();
    }

    double value() {
        return ddm.orElseThrow();
    }
}
