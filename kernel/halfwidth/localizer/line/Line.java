package halfwidth.localizer.line;

/**
 * A uniform coaxial line at one frequency.
 *
 * @param velocityFactor velocity of the wave on the line over that in vacuum (1), above 0 and at
 *     most 1
 * @param frequency (Hz), above 0
 */
public record Line(double velocityFactor, double frequency) {
    /** Speed of light in vacuum (m/s), exact by the SI's definition of the metre. */
    public static final double SPEED_OF_LIGHT = 299_792_458;

    /**
     * @throws IllegalArgumentException if the velocity factor is outside (0, 1] or the frequency is
     *     not positive and finite
     */
    public Line {
        if (!(velocityFactor > 0 && velocityFactor <= 1)) {
            throw new IllegalArgumentException(
                    "velocity factor " + velocityFactor + " must be above 0 and at most 1");
        }
        if (!(frequency > 0) || Double.isInfinite(frequency)) {
            throw new IllegalArgumentException(
                    "frequency " + frequency + " Hz must be finite and above 0");
        }
    }

    /**
     * Returns how fast the phase lags along the line: β = 360 f / (c VF).
     *
     * @return the phase constant (deg/m)
     */
    public double phaseConstant() {
        return 360 * frequency / (SPEED_OF_LIGHT * velocityFactor);
    }
}
