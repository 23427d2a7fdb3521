package halfwidth.localizer.station;

import halfwidth.localizer.monitor.Composite;
import halfwidth.localizer.monitor.PairReturn;
import halfwidth.localizer.station.NullCrew.Nulled;
import halfwidth.localizer.uncertainty.Estimate;
import java.util.List;

/** Predicts the composite from what the nulls left, and reads it. */
record CompositeCrew(Crew crew, ReturnCrew returns, Estimate balance) {
    static final int READINGS = 9;

    /**
     * The composite.
     *
     * @param predicted from the pairs (1)
     * @param read less the carrier's balance (1)
     */
    record Combined(Composite predicted, Estimate read) {}

    Combined combine(List<Nulled> pairs) {
        int reference = pairs.get(0).pair().element90();
        Composite predicted =
                new Composite(pairs.stream().map(p -> pairReturn(p, reference)).toList());
        SimulatedMonitor monitor = crew.station().monitor();
        Estimate shown = crew.mean(READINGS, () -> monitor.compositeDdm(Transmitter.ONE));
        double u = Math.hypot(shown.standardUncertainty(), balance.standardUncertainty());
        return new Combined(predicted, new Estimate(shown.value() - balance.value(), u));
    }

    private PairReturn pairReturn(Nulled nulled, int reference) {
        AntennaPair pair = nulled.pair();
        double carrier =
                crew.station().array().course().csb().get(pair.element150() - 1).amplitude();
        return new PairReturn(
                "pair " + pair.number(),
                1,
                PairReturn.Currents.ofSensitivity(carrier, nulled.sensitivity()),
                new PairReturn.Phases(nulled.excess(), returns.common(pair, reference)));
    }
}
