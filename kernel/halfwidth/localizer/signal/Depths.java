package halfwidth.localizer.signal;

import halfwidth.localizer.Range;
import halfwidth.localizer.Require;

/**
 * The depths to which the two tones modulate the carrier.
 *
 * @param m90 depth of the 90 Hz tone (1), 0 to 1
 * @param m150 depth of the 150 Hz tone (1), 0 to 1
 */
public record Depths(double m90, double m150) {
    private static final Range POSSIBLE = new Range(0, 1);

    /**
     * @throws IllegalArgumentException if a depth is outside 0 to 1
     */
    public Depths {
        Require.within("depth of 90 Hz", m90, POSSIBLE, "");
        Require.within("depth of 150 Hz", m150, POSSIBLE, "");
    }

    /**
     * Returns depths as instruments show them.
     *
     * @param percent90 depth of the 90 Hz tone (%), 0 to 100
     * @param percent150 depth of the 150 Hz tone (%), 0 to 100
     * @return the depths
     * @throws IllegalArgumentException if a depth is outside 0 to 100 %
     */
    public static Depths ofPercent(double percent90, double percent150) {
        return new Depths(percent90 / 100, percent150 / 100);
    }

    /**
     * Returns the depths that make a given difference and sum.
     *
     * @param ddm the difference (DDM), positive where 150 Hz predominates
     * @param sdm the sum (1)
     * @return the depths
     * @throws IllegalArgumentException if a depth would be outside 0 to 1
     */
    public static Depths ofDifferenceAndSum(double ddm, double sdm) {
        return new Depths((sdm - ddm) / 2, (sdm + ddm) / 2);
    }

    /**
     * Returns the difference in depth of modulation: DDM = m150 − m90.
     *
     * @return the DDM (DDM), positive where 150 Hz predominates
     */
    public double ddm() {
        return m150 - m90;
    }

    /**
     * Returns the sum of depths of modulation: SDM = m90 + m150.
     *
     * @return the SDM (1)
     */
    public double sdm() {
        return m90 + m150;
    }
}
