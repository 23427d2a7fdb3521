package halfwidth.localizer.array;

import halfwidth.localizer.Range;
import halfwidth.localizer.Require;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * One radiated carrier of an array: its frequency, its tones and its current in each element.
 *
 * @param frequency the carrier frequency (Hz), 50 to 500 MHz
 * @param depth depth of modulation of each tone in the CSB (1), above 0 and at most 0.5
 * @param csb the CSB current of each element, by its carrier
 * @param sbo the SBO current of each element, by the peak of one tone
 */
public record Carrier(double frequency, double depth, List<Current> csb, List<Current> sbo) {
    private static final Range FREQUENCIES = new Range(50e6, 500e6);

    /**
     * @throws IllegalArgumentException if the frequency or the depth is outside its range, there is
     *     no element, or the two lists differ in length
     */
    public Carrier {
        Require.within("frequency", frequency, FREQUENCIES, "Hz");
        Require.above("depth of each tone", depth, 0, "");
        Require.within("depth of each tone", depth, new Range(0, 0.5), "");
        csb = List.copyOf(csb);
        sbo = List.copyOf(sbo);
        Require.sameLength("CSB and SBO currents", csb.size(), sbo.size());
        if (csb.isEmpty()) {
            throw new IllegalArgumentException("carrier must feed at least one element");
        }
    }

    /**
     * Returns the number of elements.
     *
     * @return how many (1)
     */
    public int elements() {
        return csb.size();
    }

    /**
     * Returns this carrier with all SBO currents made stronger or weaker alike.
     *
     * @param factor new over old SBO amplitude (1), at least 0
     * @return the changed carrier
     */
    public Carrier withSboScaled(double factor) {
        return changed(current -> current, current -> current.scaled(factor));
    }

    /**
     * Returns this carrier with the whole SBO signal moved ahead of the CSB.
     *
     * @param degrees by how much (deg), negative to delay
     * @return the changed carrier
     */
    public Carrier withSboAdvanced(double degrees) {
        return changed(current -> current, current -> current.advanced(degrees));
    }

    private Carrier changed(UnaryOperator<Current> onCsb, UnaryOperator<Current> onSbo) {
        return new Carrier(
                frequency,
                depth,
                csb.stream().map(onCsb).toList(),
                sbo.stream().map(onSbo).toList());
    }
}
