package halfwidth.localizer.signal;

import halfwidth.localizer.Require;

/** Electric field of a plane wave: its power density, and its distance law in free space. */
public final class FieldStrength {
    /** Impedance of free space (Ω), CODATA 2018: 376.730 313 668. */
    public static final double FREE_SPACE_IMPEDANCE = 376.730_313_668;

    /** 30 Ω: impedance of free space over 4π, rounded as the handbooks do (29.979). */
    private static final double THIRTY = 30;

    private FieldStrength() {}

    /**
     * Returns the power density of a field: S = E² / Z₀.
     *
     * @param field E, root mean square (V/m), above 0
     * @return the power density (W/m²)
     * @throws IllegalArgumentException if the field is not finite and above 0
     */
    public static double powerDensity(double field) {
        Require.above("field", field, 0, "V/m");
        return field * field / FREE_SPACE_IMPEDANCE;
    }

    /**
     * Returns the power density of a field as a level: 10 log₁₀ of S over 1 W/m².
     *
     * @param field E, root mean square (V/m), above 0
     * @return the level above 1 W/m² (dB)
     * @throws IllegalArgumentException if the field is not finite and above 0
     */
    public static double powerDensityLevel(double field) {
        return Decibel.ofPowerRatio(powerDensity(field));
    }

    /**
     * Returns how far from an antenna its field falls to a value: R = √(30 EIRP) / E.
     *
     * <p>In free space and the far field only. Close to an array the field is not that of a point,
     * so this is no safe distance there: measure, and follow the station's own survey.
     *
     * @param radiatedPower EIRP, in the direction of most radiation (W), above 0
     * @param field E, root mean square (V/m), above 0
     * @return the distance (m)
     * @throws IllegalArgumentException if an argument is not finite and above 0
     */
    public static double distanceOf(double radiatedPower, double field) {
        Require.above("radiated power", radiatedPower, 0, "W");
        Require.above("field", field, 0, "V/m");
        return Math.sqrt(THIRTY * radiatedPower) / field;
    }
}
