package halfwidth.localizer.array;

import halfwidth.localizer.Range;
import halfwidth.localizer.Require;
import halfwidth.localizer.line.Line;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * A change in what feeds one element: an error, a failure, or a cable cut.
 *
 * @param element its number (1), counting the array's list from 1
 * @param paths which of its feeds change
 * @param amplitudeFactor new over old amplitude (1), 0 to 100
 * @param phaseAdvance how far the phase moves ahead (deg), negative to delay
 */
public record Fault(int element, Set<FeedPath> paths, double amplitudeFactor, double phaseAdvance) {
    private static final Range FACTORS = new Range(0, 100);
    private static final Range ADVANCES = new Range(-36_000, 36_000);
    private static final Range CUTS = new Range(0, 100);

    /**
     * @throws IllegalArgumentException if the element's number is below 1, no path is named, or a
     *     number is outside its range
     */
    public Fault {
        Require.within("element", element, new Range(1, Integer.MAX_VALUE), "");
        Require.within("amplitude factor", amplitudeFactor, FACTORS, "");
        Require.within("phase advance", phaseAdvance, ADVANCES, "deg");
        paths = Set.copyOf(paths);
        if (paths.isEmpty()) {
            throw new IllegalArgumentException("fault must change at least one feed");
        }
    }

    /**
     * Returns an element that radiates nothing at all.
     *
     * @param element its number (1), from 1
     * @return the fault
     */
    public static Fault deadElement(int element) {
        return everywhere(element, 0, 0);
    }

    /**
     * Returns an element all of whose feeds are stronger or weaker than designed.
     *
     * @param element its number (1), from 1
     * @param decibels 20 log10 of new over old amplitude (dB)
     * @return the fault
     */
    public static Fault amplitudeChange(int element, double decibels) {
        Require.finite("amplitude change", decibels, "dB");
        return everywhere(element, Math.pow(10, decibels / 20), 0);
    }

    /**
     * Returns an element all of whose feeds are ahead of or behind the design.
     *
     * @param element its number (1), from 1
     * @param advance how far ahead (deg), negative to delay
     * @return the fault
     */
    public static Fault phaseChange(int element, double advance) {
        return everywhere(element, 1, advance);
    }

    /**
     * Returns an element whose cable was cut shorter, which advances it by β · length.
     *
     * @param element its number (1), from 1
     * @param length how much was cut off (m), 0 to 100
     * @param cable the cable
     * @return the fault
     */
    public static Fault cableCut(int element, double length, Line cable) {
        Require.within("length cut off", length, CUTS, "m");
        return everywhere(element, 1, cable.phaseConstant() * length);
    }

    private static Fault everywhere(int element, double factor, double advance) {
        return new Fault(element, EnumSet.allOf(FeedPath.class), factor, advance);
    }

    /**
     * Returns the same change on some of the element's feeds only.
     *
     * @param first a feed it is on
     * @param others further ones
     * @return the narrower fault
     */
    public Fault on(FeedPath first, FeedPath... others) {
        return new Fault(element, EnumSet.of(first, others), amplitudeFactor, phaseAdvance);
    }

    ArrayModel appliedTo(ArrayModel array) {
        int elements = array.positions().size();
        Require.within("element", element, new Range(1, elements), "");
        if (paths.stream().noneMatch(path -> path.existsIn(array))) {
            throw new IllegalArgumentException(
                    "fault on " + paths + " must be on a feed that the array has");
        }
        List<Carrier> changed = new ArrayList<>(array.carriers());
        for (FeedPath path : paths) {
            if (path.existsIn(array)) {
                changed.set(path.carrier(), changed(changed.get(path.carrier()), path));
            }
        }
        return new ArrayModel(array.name(), array.positions(), array.pattern(), changed);
    }

    private Carrier changed(Carrier carrier, FeedPath path) {
        List<Current> csb = new ArrayList<>(carrier.csb());
        List<Current> sbo = new ArrayList<>(carrier.sbo());
        List<Current> hit = path.isSidebandOnly() ? sbo : csb;
        Current sound = hit.get(element - 1);
        hit.set(element - 1, sound.scaled(amplitudeFactor).advanced(phaseAdvance));
        return new Carrier(carrier.frequency(), carrier.depth(), csb, sbo);
    }
}
