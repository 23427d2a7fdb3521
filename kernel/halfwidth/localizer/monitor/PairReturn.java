package halfwidth.localizer.monitor;

import halfwidth.localizer.Range;
import halfwidth.localizer.Require;
import halfwidth.localizer.uncertainty.Estimate;
import java.util.List;
import org.hipparchus.complex.Complex;

/**
 * What one pair brings to the combining network.
 *
 * <p>With half of the excess δ counted on each side, the pair's carrier is w e^(−jγ) C (e^(jδ/2) +
 * a e^(−jδ/2)) and its sideband w e^(−jγ) jS (e^(jδ/2) − a e^(−jδ/2)).
 *
 * @param name what the crew calls the pair
 * @param weight w, the amplitude of its path through the network relative to the others (1),
 *     negative for a path that turns the signal over
 * @param currents C, S and a
 * @param phases δ and γ
 */
public record PairReturn(String name, double weight, Currents currents, Phases phases) {
    private static final Range AMPLITUDES = new Range(-1e6, 1e6);
    private static final double LEAST_CARRIER = 1e-6;

    /**
     * Amplitudes at the elements, in any unit that all pairs share.
     *
     * @param carrier C of each element (unit of the amplitudes)
     * @param sideband S of each element (unit of the amplitudes), so that the pair's own K is 2S/C
     * @param amplitudeRatio a, the 150 Hz side's return over the other's (1), above 0
     */
    public record Currents(double carrier, double sideband, double amplitudeRatio) {

        /**
         * @throws IllegalArgumentException if an amplitude is beyond ±1e6, or the ratio not above 0
         *     and at most 100
         */
        public Currents {
            Require.within("carrier", carrier, AMPLITUDES, "");
            Require.within("sideband", sideband, AMPLITUDES, "");
            Require.above("amplitude ratio", amplitudeRatio, 0, "");
            Require.within("amplitude ratio", amplitudeRatio, new Range(0, 100), "");
        }

        /**
         * Takes the sensitivity that a series of cuts has shown: S = K C/2.
         *
         * @param carrier C of each element (unit of the amplitudes)
         * @param sensitivity K of the pair (DDM)
         * @return currents of a pair with equal returns
         * @throws IllegalArgumentException as the record does
         */
        public static Currents ofSensitivity(double carrier, double sensitivity) {
            return new Currents(carrier, sensitivity * carrier / 2, 1);
        }
    }

    /**
     * Electrical lengths of the two returns.
     *
     * @param excess δ, the 150 Hz side less the 90 Hz side (deg): what the pair null has left, or
     *     for a width channel that plus what its network puts in on purpose
     * @param common γ, the mean of the two sides less that of the other pairs (deg)
     */
    public record Phases(Estimate excess, Estimate common) {

        /**
         * @throws IllegalArgumentException if the excess or the common part is beyond ±360 deg
         */
        public Phases {
            Require.within("excess", excess.value(), new Range(-360, 360), "deg");
            Require.within("common delay", common.value(), new Range(-360, 360), "deg");
        }
    }

    /**
     * @throws IllegalArgumentException if the name is blank or the weight beyond ±1e6
     */
    public PairReturn {
        if (name.isBlank()) {
            throw new IllegalArgumentException("name of a pair must not be blank");
        }
        Require.within("weight of " + name, weight, AMPLITUDES, "");
    }

    /** A carrier that cancels to less than this part of its parts has no DDM to speak of. */
    static void checkCarrier(List<PairReturn> pairs) {
        Complex whole = Complex.ZERO;
        double parts = 0;
        for (PairReturn pair : pairs) {
            whole =
                    whole.add(
                            pair.carrier(
                                    pair.phases.excess().value(), pair.phases.common().value()));
            parts +=
                    Math.abs(pair.weight * pair.currents.carrier())
                            * (1 + pair.currents.amplitudeRatio());
        }
        if (!(whole.norm() > LEAST_CARRIER * parts)) {
            throw new IllegalArgumentException(
                    "carriers of the pairs must not cancel: of "
                            + parts
                            + " in all, "
                            + whole.norm()
                            + " is left");
        }
    }

    Complex carrier(double excess, double common) {
        double half = Math.toRadians(excess) / 2;
        return turned(half)
                .add(turned(-half).multiply(currents.amplitudeRatio()))
                .multiply(turned(-Math.toRadians(common)))
                .multiply(weight * currents.carrier());
    }

    Complex sideband(double excess, double common) {
        double half = Math.toRadians(excess) / 2;
        return turned(half)
                .subtract(turned(-half).multiply(currents.amplitudeRatio()))
                .multiply(turned(-Math.toRadians(common)))
                .multiply(Complex.I)
                .multiply(weight * currents.sideband());
    }

    private static Complex turned(double radians) {
        return new Complex(Math.cos(radians), Math.sin(radians));
    }
}
