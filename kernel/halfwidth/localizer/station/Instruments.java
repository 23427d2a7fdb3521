package halfwidth.localizer.station;

import halfwidth.localizer.Range;
import halfwidth.localizer.Require;

/**
 * What the crew's instruments and tools can tell apart.
 *
 * @param ddm the portable receiver
 * @param phase the phase meter
 * @param cutStep the smallest step in which a line can be cut (m), 0 for any length
 */
public record Instruments(Precision ddm, Precision phase, double cutStep) {

    /**
     * How finely one instrument reads.
     *
     * @param resolution step of its display (unit of the instrument), 0 for none
     * @param noise standard deviation of a reading (unit of the instrument), at least 0
     */
    public record Precision(double resolution, double noise) {
        private static final Range POSSIBLE = new Range(0, 30);

        /**
         * @throws IllegalArgumentException if a value is negative, above 30 or not a number
         */
        public Precision {
            Require.within("resolution", resolution, POSSIBLE, "");
            Require.within("noise", noise, POSSIBLE, "");
        }
    }

    /**
     * @throws IllegalArgumentException if the step is not 0 to 0.1 m
     */
    public Instruments {
        Require.within("cut step", cutStep, new Range(0, 0.1), "m");
    }

    /**
     * Returns invented but plausible ones: 0.001 DDM, 0.5°, cuts to a millimetre.
     *
     * @return the instruments
     */
    public static Instruments plausible() {
        return new Instruments(new Precision(0.001, 0.0003), new Precision(0.5, 0.2), 0.001);
    }

    /**
     * Returns ones that read and cut exactly, to see a procedure's own errors alone.
     *
     * @return the instruments
     */
    public static Instruments exact() {
        return new Instruments(new Precision(0, 0), new Precision(0, 0), 0);
    }
}
