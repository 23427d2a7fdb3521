package halfwidth.localizer.monitor;

import halfwidth.localizer.uncertainty.Contribution;
import halfwidth.localizer.uncertainty.Estimate;
import halfwidth.localizer.uncertainty.Propagation;
import halfwidth.localizer.uncertainty.Quantity;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import org.hipparchus.complex.Complex;

/**
 * The reading of all pairs combined: DDM = 2 Re(Σ sidebands/Σ carriers), as complex sums.
 *
 * <p>Errors that are common to several pairs do not average out; the uncertainty given here takes
 * the pairs' phases for independent, their amplitudes for known, and the sidebands to be in phase
 * with the carrier.
 *
 * @param pairs what each pair brings, at least one
 */
public record Composite(List<PairReturn> pairs) {
    private static final String EXCESS = "excess of ";
    private static final String COMMON = "common delay of ";

    /**
     * @throws IllegalArgumentException if there is no pair, two share a name, or the carriers of
     *     all pairs cancel
     */
    public Composite {
        pairs = List.copyOf(pairs);
        if (pairs.isEmpty()) {
            throw new IllegalArgumentException("a composite needs at least one pair");
        }
        if (pairs.stream().map(PairReturn::name).distinct().count() != pairs.size()) {
            throw new IllegalArgumentException("each pair must have a name of its own");
        }
        PairReturn.checkCarrier(pairs);
    }

    /**
     * Predicts the composite reading.
     *
     * @return the reading (DDM), positive where 150 Hz predominates; its uncertainty to first order
     *     from the phases of all pairs (JCGM 100:2008, equation (10))
     */
    public Estimate reading() {
        return propagation().result();
    }

    /**
     * Returns what each pair adds, in the order of the pairs.
     *
     * @return one share for each pair
     */
    public List<PairShare> shares() {
        Complex whole = carrier(values());
        Map<String, Contribution> contributions =
                propagation().contributions().stream()
                        .collect(Collectors.toMap(Contribution::name, Function.identity()));
        return pairs.stream().map(pair -> share(pair, whole, contributions)).toList();
    }

    private static PairShare share(
            PairReturn pair, Complex whole, Map<String, Contribution> contributions) {
        double excess = pair.phases().excess().value();
        double common = pair.phases().common().value();
        Contribution fromExcess = contributions.get(EXCESS + pair.name());
        Contribution fromCommon = contributions.get(COMMON + pair.name());
        return new PairShare(
                pair.name(),
                2 * pair.sideband(excess, common).divide(whole).getReal(),
                pair.carrier(excess, common).divide(whole).getReal(),
                fromExcess.sensitivity(),
                Math.hypot(fromExcess.standardUncertainty(), fromCommon.standardUncertainty()));
    }

    /**
     * Returns how far a measured reading is from the predicted one, in standard uncertainties of
     * the difference; above 2 something else is at work than the pairs' phases.
     *
     * @param measured the composite reading (DDM) with its standard uncertainty
     * @return |measured − predicted|/√(u² + u²) (1)
     * @throws IllegalArgumentException if neither has any uncertainty
     */
    public double departure(Estimate measured) {
        Estimate predicted = reading();
        double u = Math.hypot(measured.standardUncertainty(), predicted.standardUncertainty());
        if (!(u > 0)) {
            throw new IllegalArgumentException(
                    "measured or predicted reading must have an uncertainty to compare by");
        }
        return Math.abs(measured.value() - predicted.value()) / u;
    }

    private Propagation propagation() {
        List<Quantity> inputs = new ArrayList<>();
        for (PairReturn pair : pairs) {
            inputs.add(Quantity.of(EXCESS + pair.name(), pair.phases().excess()));
            inputs.add(Quantity.of(COMMON + pair.name(), pair.phases().common()));
        }
        return Propagation.of(this::ddm, inputs.toArray(Quantity[]::new));
    }

    /** The reading for the excess and the common delay of each pair in turn (deg). */
    private double ddm(double[] phases) {
        Complex sideband = Complex.ZERO;
        for (int i = 0; i < pairs.size(); i++) {
            sideband = sideband.add(pairs.get(i).sideband(phases[2 * i], phases[2 * i + 1]));
        }
        return 2 * sideband.divide(carrier(phases)).getReal();
    }

    private Complex carrier(double[] phases) {
        Complex carrier = Complex.ZERO;
        for (int i = 0; i < pairs.size(); i++) {
            carrier = carrier.add(pairs.get(i).carrier(phases[2 * i], phases[2 * i + 1]));
        }
        return carrier;
    }

    private double[] values() {
        return pairs.stream()
                .map(PairReturn::phases)
                .flatMapToDouble(p -> DoubleStream.of(p.excess().value(), p.common().value()))
                .toArray();
    }
}
