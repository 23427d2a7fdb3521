package halfwidth.localizer.line;

import halfwidth.localizer.Range;
import halfwidth.localizer.Require;

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

    /**
     * Returns the line of a measured phase constant: VF = 360 f / (c β).
     *
     * @param phaseConstant β (deg/m)
     * @param frequency (Hz)
     * @return the line
     * @throws IllegalArgumentException if the phase constant is below that of vacuum, or an
     *     argument is not finite and above 0
     */
    public static Line ofPhaseConstant(double phaseConstant, double frequency) {
        Require.above("phase constant", phaseConstant, 0, "deg/m");
        double vacuum = new Line(1, frequency).phaseConstant();
        if (phaseConstant < vacuum) {
            throw new IllegalArgumentException(
                    "phase constant "
                            + phaseConstant
                            + " deg/m must be at least that of vacuum, "
                            + vacuum);
        }
        return new Line(vacuum / phaseConstant, frequency);
    }

    /**
     * Returns the line of a piece that is resonant at a frequency: VF = 4 f L / (n c).
     *
     * @param length L (m), above 0
     * @param frequency of the resonance (Hz)
     * @param quarterWaves n, the quarter waves on the piece (1): odd for an open end that makes a
     *     short at the other, at least 1
     * @return the line, at the frequency of the resonance
     * @throws IllegalArgumentException if {@code quarterWaves} is below 1 or the velocity factor
     *     would be above 1
     */
    public static Line ofResonance(double length, double frequency, int quarterWaves) {
        Require.above("length", length, 0, "m");
        Require.within("quarter waves", quarterWaves, new Range(1, 10_000), "");
        return new Line(4 * frequency * length / (quarterWaves * SPEED_OF_LIGHT), frequency);
    }

    /**
     * Returns the same line at another frequency.
     *
     * @param other the frequency (Hz)
     * @return the line
     */
    public Line at(double other) {
        return new Line(velocityFactor, other);
    }

    /**
     * Returns the electrical length of a piece: φ = β L.
     *
     * @param length L (m); negative for a piece taken away
     * @return the electrical length (deg), positive where it delays
     * @throws IllegalArgumentException if {@code length} is not finite
     */
    public double electricalLength(double length) {
        return phaseConstant() * Require.finite("length", length, "m");
    }

    /**
     * Returns the piece of a given electrical length: L = φ / β.
     *
     * @param phase φ (deg)
     * @return the length (m), of the same sign
     * @throws IllegalArgumentException if {@code phase} is not finite
     */
    public double lengthOf(double phase) {
        return Require.finite("phase", phase, "deg") / phaseConstant();
    }

    /**
     * Returns the wavelength on the line.
     *
     * @return the length of 360° (m)
     */
    public double wavelength() {
        return lengthOf(360);
    }

    /**
     * Returns the quarter wave on the line.
     *
     * @return the length of 90° (m)
     */
    public double quarterWave() {
        return lengthOf(90);
    }

    /**
     * Returns how the phase of a piece changes with temperature: Δφ = φ α ΔT.
     *
     * @param length of the piece (m)
     * @param perKelvin α, the relative change of electrical length (1/K); 10 parts in a million are
     *     1e-5
     * @param warming ΔT (K)
     * @return the change of electrical length (deg), positive where it delays more
     * @throws IllegalArgumentException if an argument is not finite or the change is above a tenth
     *     of the length
     */
    public double phaseChangeByTemperature(double length, double perKelvin, double warming) {
        Require.within("relative change", perKelvin * warming, new Range(-0.1, 0.1), "");
        return electricalLength(length) * perKelvin * warming;
    }
}
