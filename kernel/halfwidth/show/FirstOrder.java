package halfwidth.show;

import halfwidth.run.InputQuantity;
import halfwidth.run.Propagation;
import halfwidth.run.Response;
import halfwidth.run.Trace;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The standard uncertainty of a value to first order: u² = Σ (cᵢ uᵢ)², with sensitivities cᵢ by
 * differences over ± uᵢ (JCGM 100:2008, 5.1.2 and 5.1.3, note 2), and the larger change of both
 * sides where they differ. Inputs are taken as independent.
 *
 * @param shares what each input or column of readings adds, the largest first; the cells of a
 *     column count together
 * @param withheld the responses to uncertain inputs of which first order says nothing
 * @param complete whether all uncertain inputs were looked at
 */
record FirstOrder(List<Share> shares, List<Response> withheld, boolean complete) {

    /**
     * What one input or column adds.
     *
     * @param source as in {@code velocityFactor} or {@code phasing.offset 1}
     * @param amount in the unit of the value
     * @param bent whether the value does not follow it straight over ± u
     */
    record Share(String source, double amount, boolean bent) {}

    static FirstOrder of(Trace trace, Propagation propagation) {
        Map<String, List<Response>> bySource = new LinkedHashMap<>();
        List<Response> withheld = new ArrayList<>();
        for (Response response : trace.responses()) {
            InputQuantity input = propagation.inputs().get(response.input());
            if (input.standardUncertainty() > 0 && response.firstOrder()) {
                bySource.computeIfAbsent(input.source(), s -> new ArrayList<>()).add(response);
            } else if (input.standardUncertainty() > 0) {
                withheld.add(response);
            }
        }
        List<Share> shares = new ArrayList<>();
        bySource.forEach((source, all) -> shares.add(share(source, all, propagation)));
        shares.sort(Comparator.comparingDouble(Share::amount).reversed());
        boolean complete =
                propagation.inputs().stream()
                        .skip(propagation.moved())
                        .noneMatch(input -> input.standardUncertainty() > 0);
        return new FirstOrder(List.copyOf(shares), List.copyOf(withheld), complete);
    }

    private static Share share(String source, List<Response> all, Propagation propagation) {
        double squares =
                all.stream()
                        .mapToDouble(one -> amount(one, propagation))
                        .map(amount -> amount * amount)
                        .sum();
        boolean bent = all.stream().anyMatch(one -> one.manner() == Response.Manner.BENT);
        return new Share(source, Math.sqrt(squares), bent);
    }

    /** Where both sides differ, the larger counts: their mean would hide it. */
    private static double amount(Response response, Propagation propagation) {
        return response.manner() == Response.Manner.BENT
                ? Math.max(Math.abs(response.up()), Math.abs(response.down()))
                : response.sensitivity()
                        * propagation.inputs().get(response.input()).standardUncertainty();
    }

    /** Empty where no uncertain input moves the value, or first order does not tell. */
    Optional<Double> standardUncertainty() {
        return shares.isEmpty() || !withheld.isEmpty() || !complete
                ? Optional.empty()
                : Optional.of(Math.sqrt(squares()));
    }

    private double squares() {
        return shares.stream().mapToDouble(share -> share.amount() * share.amount()).sum();
    }

    /** The part of u² that a share makes up (%). */
    double percent(Share share) {
        return squares() == 0 ? 0 : 100 * share.amount() * share.amount() / squares();
    }

    /** What adds most, in words, as in {@code velocityFactor (82 %)}; "" if nothing adds. */
    String largest() {
        return shares.isEmpty()
                ? ""
                : shares.get(0).source() + " (" + Numbers.fixed(percent(shares.get(0)), 0) + " %)";
    }

    /** Whether some share is only roughly known. */
    boolean bent() {
        return shares.stream().anyMatch(Share::bent);
    }
}
