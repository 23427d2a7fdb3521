package halfwidth.localizer.array;

import halfwidth.localizer.Range;
import halfwidth.localizer.Require;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.complex.Complex;

/**
 * One feed current of an element, relative to a current that all of an array share.
 *
 * @param amplitude its amplitude (1), at least 0; SBO by the peak of one tone on the scale of the
 *     carriers
 * @param phase its phase (deg), positive where it is ahead
 */
public record Current(double amplitude, double phase) {
    private static final Range AMPLITUDES = new Range(0, 1e6);
    private static final Range PHASES = new Range(-3600, 3600);

    /** No current: a feed that is open, or an element that this carrier does not use. */
    public static final Current NONE = new Current(0, 0);

    /**
     * @throws IllegalArgumentException if the amplitude is not 0 to 1e6 or the phase is more than
     *     ten turns
     */
    public Current {
        Require.within("amplitude", amplitude, AMPLITUDES, "");
        Require.within("phase", phase, PHASES, "deg");
    }

    /**
     * Returns the currents of a column of amplitudes and one of phases, as measured or designed.
     *
     * @param amplitudes the amplitudes (1), one for each element
     * @param phases the phases (deg), in the same order
     * @return the currents, in the same order
     * @throws IllegalArgumentException if the columns differ in length or a value is impossible
     */
    public static List<Current> list(double[] amplitudes, double[] phases) {
        Require.sameLength("amplitudes and phases", amplitudes.length, phases.length);
        List<Current> currents = new ArrayList<>();
        for (int i = 0; i < amplitudes.length; i++) {
            currents.add(new Current(amplitudes[i], phases[i]));
        }
        return List.copyOf(currents);
    }

    /**
     * Returns the phasor: amplitude · exp(j phase).
     *
     * @return the complex current (1)
     */
    public Complex phasor() {
        double radians = Math.toRadians(phase);
        return new Complex(amplitude * Math.cos(radians), amplitude * Math.sin(radians));
    }

    /**
     * Returns this current made stronger or weaker.
     *
     * @param factor new over old amplitude (1), at least 0
     * @return the changed current
     */
    public Current scaled(double factor) {
        return new Current(amplitude * factor, phase);
    }

    /**
     * Returns this current with its phase moved ahead.
     *
     * @param degrees by how much (deg), negative to delay
     * @return the changed current, its phase within ±180 deg
     */
    public Current advanced(double degrees) {
        return new Current(amplitude, Math.IEEEremainder(phase + degrees, 360));
    }
}
