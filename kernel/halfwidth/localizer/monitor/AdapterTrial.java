package halfwidth.localizer.monitor;

import halfwidth.localizer.Range;
import halfwidth.localizer.Require;
import halfwidth.localizer.cut.CutRule;
import halfwidth.localizer.cut.NextCut;
import halfwidth.localizer.cut.PhaseLength;
import halfwidth.localizer.uncertainty.Estimate;
import halfwidth.localizer.uncertainty.Propagation;
import halfwidth.localizer.uncertainty.Quantity;
import java.util.Locale;
import java.util.function.ToDoubleFunction;

/**
 * The excess of a pair, from its reading without and with an adapter in one side.
 *
 * <p>With equal returns d0 = −K t and d1 = −K tan((δ0 + ε)/2) = −K (t + τ)/(1 − tτ), where t =
 * tan(δ0/2), τ = tan(ε/2) and ε counts negative in the 90 Hz side. K taken from the first and put
 * into the second gives d1 (1 − tτ) t = d0 (t + τ), that is
 *
 * <p>d1 τ t² − (d1 − d0) t + d0 τ = 0.
 *
 * <p>Its roots are tan(δ0/2) and cot(δ1/2), δ1 = δ0 + ε, because their product is d0/d1. The
 * smaller one, which goes to δ0 = ε d0/(d1 − d0) for small angles, is therefore δ0 as long as |δ0|
 * and |δ1| are together below half a turn; a pair that is farther off has to be brought nearer by
 * measuring its returns first.
 *
 * @param without d0, the reading without the adapter (DDM), positive where 150 Hz predominates
 * @param with d1, the reading with it (DDM)
 * @param adapter the adapter and the side it was put into
 * @param resolution the step in which the receiver shows DDM (DDM)
 */
public record AdapterTrial(double without, double with, Adapter adapter, double resolution) {
    static final Range READINGS = new Range(-1, 1);

    /**
     * @throws IllegalArgumentException if a reading is not -1 to 1, the resolution not above 0 and
     *     at most 0.1, the readings differ by no more than the resolution, or no excess explains
     *     them
     */
    public AdapterTrial {
        Require.within("reading without the adapter", without, READINGS, "");
        Require.within("reading with the adapter", with, READINGS, "");
        Require.above("DDM resolution", resolution, 0, "");
        Require.within("DDM resolution", resolution, new Range(0, 0.1), "");
        if (Math.abs(with - without) <= resolution) {
            throw new IllegalArgumentException(
                    String.format(
                            Locale.ROOT,
                            "the adapter changed the reading from %s to %s, which is no more than"
                                    + " the receiver's resolution %s: this says nothing of the"
                                    + " phase; is the adapter in the return of this pair, is the"
                                    + " pair connected, and is the adapter long enough?",
                            without,
                            with,
                            resolution));
        }
        exactExcess(without, with, adapter.excess());
    }

    /**
     * Returns the excess of the pair without the adapter, from the exact equation.
     *
     * @return δ0 (deg), positive where the 150 Hz side is too long; its uncertainty to first order
     *     (JCGM 100:2008, equation (10)) from both readings, resolution/√12 each, and the adapter
     */
    public Estimate excess() {
        return propagated(x -> exactExcess(x[0], x[1], x[2]));
    }

    /**
     * Returns the excess for small angles: ε d0/(d1 − d0), which holds whatever the ratio of the
     * two amplitudes.
     *
     * @return δ0 (deg), to be shown beside {@link #excess()}
     */
    public double smallAngleExcess() {
        return adapter.excess() * without / (with - without) + 0.0;
    }

    /**
     * Returns the sensitivity of the pair: K = −(d1 − d0)(1 − tτ)/(τ (1 + t²)), from the difference
     * of the two readings.
     *
     * @return K (DDM), positive for a pair fed as usual
     */
    public Estimate sensitivity() {
        return propagated(
                x -> {
                    double tau = halfTangent(x[2]);
                    double t = halfTangent(exactExcess(x[0], x[1], x[2]));
                    return -(x[1] - x[0]) * (1 - t * tau) / (tau * (1 + t * t));
                });
    }

    /**
     * Tells whether the adapter moved the reading the way it should: towards 90 Hz from the 150 Hz
     * side, towards 150 Hz from the 90 Hz side.
     *
     * @return false when the sides may be exchanged (of the adapter, or of the returns at the
     *     combiner), or the pair is fed with reversed sidebands; find out which before cutting
     */
    public boolean movedAsExpected() {
        return (with - without) * adapter.side().direction() < 0;
    }

    /**
     * Returns the side to cut: the one whose return is too long.
     *
     * @return the side, NEITHER when the reading without the adapter is 0
     */
    public ArraySide sideToCut() {
        return ArraySide.tooLong(excess().value());
    }

    /**
     * Returns the whole length to cut from {@link #sideToCut()}: |δ0|/β.
     *
     * @param phaseConstant β of that return (deg/m), above 0
     * @return the length (m)
     * @throws IllegalArgumentException if the phase constant is not above 0 and at most 1000 deg/m
     */
    public Estimate length(Estimate phaseConstant) {
        Estimate signed = PhaseLength.of(excess(), phaseConstant);
        return new Estimate(Math.abs(signed.value()), signed.standardUncertainty());
    }

    /**
     * Returns the first cut, after the adapter is taken out: the rule's fraction of the whole.
     *
     * @param phaseConstant β of the returns (deg/m), above 0
     * @param rule how carefully the line is cut
     * @return the cut, or why there is none; {@link ArraySide#of} tells the side
     * @throws IllegalArgumentException if the phase constant is not above 0 and at most 1000 deg/m
     */
    public NextCut firstCut(Estimate phaseConstant, CutRule rule) {
        Estimate excess = excess();
        return rule.first(PhaseLength.of(excess, phaseConstant), excess.value());
    }

    private Estimate propagated(ToDoubleFunction<double[]> function) {
        double u = adapter.length().standardUncertainty();
        return Propagation.of(
                        function,
                        Quantity.of("without", Estimate.readInSteps(without, resolution)),
                        Quantity.of("with", Estimate.readInSteps(with, resolution)),
                        Quantity.of("adapter", new Estimate(adapter.excess(), u)))
                .result();
    }

    /** The smaller root, in the form that keeps its digits where d0 or d1 goes to 0. */
    private static double exactExcess(double d0, double d1, double epsilon) {
        double tau = halfTangent(epsilon);
        double change = d1 - d0;
        double root = 1 - 4 * d0 * d1 * tau * tau / (change * change);
        if (root < 0) {
            throw new IllegalArgumentException(
                    String.format(
                            Locale.ROOT,
                            "no excess gives %.4g without and %.4g with an adapter of %.4g deg: the"
                                    + " reading changed too little for it; are the readings, the"
                                    + " length of the adapter and the pair right?",
                            d0,
                            d1,
                            Math.abs(epsilon)));
        }
        double t = 2 * d0 * tau / (change * (1 + Math.sqrt(root)));
        // Adding 0 keeps a negative zero off the page.
        return 2 * Math.toDegrees(Math.atan(t)) + 0.0;
    }

    private static double halfTangent(double degrees) {
        return Math.tan(Math.toRadians(degrees) / 2);
    }
}
