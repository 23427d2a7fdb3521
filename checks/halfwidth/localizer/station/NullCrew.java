package halfwidth.localizer.station;

import halfwidth.localizer.array.Carrier;
import halfwidth.localizer.cut.CutRule;
import halfwidth.localizer.cut.NextCut;
import halfwidth.localizer.cut.PhaseLength;
import halfwidth.localizer.monitor.Adapter;
import halfwidth.localizer.monitor.AdapterTrial;
import halfwidth.localizer.monitor.ArraySide;
import halfwidth.localizer.monitor.PairCutRow;
import halfwidth.localizer.monitor.PairCutSeries;
import halfwidth.localizer.monitor.PairFit;
import halfwidth.localizer.monitor.PairModel;
import halfwidth.localizer.uncertainty.Estimate;
import java.util.ArrayList;
import java.util.List;

/** Cuts the returns of one pair to its null: adapter trial, then a series of cuts. */
final class NullCrew {
    static final double TARGET = 0.5;
    static final int MOST_CUTS = 12;

    /** How many readings are averaged, so that a pair with little sideband shows its phase. */
    static final int READINGS = 9;

    /** Largest excess at which a trial is made, adapter included (deg). */
    private static final double WIDEST = 80;

    private final Crew crew;
    private final ReturnCrew returns;
    private final AntennaPair pair;
    private final Estimate balance;
    private final CutRule rule;
    private final List<Double> netCuts = new ArrayList<>(List.of(0.0));
    private double cut150;
    private double cut90;

    NullCrew(ReturnCrew returns, Crew crew, AntennaPair pair, Estimate balance) {
        this.crew = crew;
        this.returns = returns;
        this.pair = pair;
        this.balance = balance;
        rule = CutRule.usual(crew.cutStep(), TARGET);
    }

    /**
     * What a null ended with.
     *
     * @param pair the pair
     * @param excess what is left by the fit, or by the meter (deg)
     * @param sensitivity K, by the fit or by the design (1)
     * @param netCuts cut of the 150 Hz side less that of the 90 Hz side, before and after each cut
     * @param finished whether the crew came to stop by itself
     * @param byMeter whether the pair's DDM was of no use and the phase meter took its place
     */
    record Nulled(
            AntennaPair pair,
            Estimate excess,
            double sensitivity,
            List<Double> netCuts,
            boolean finished,
            boolean byMeter) {
        int cuts() {
            return netCuts.size() - 1;
        }
    }

    Nulled bring() {
        double designed = designedSensitivity();
        return readable(designed) ? byReading() : byMeter(designed);
    }

    private double designedSensitivity() {
        Carrier course = crew.station().array().course();
        int n = pair.element150() - 1;
        return 2 * course.sbo().get(n).amplitude() / course.csb().get(n).amplitude();
    }

    /** Tells the target from 0, and stays within what a receiver shows during the trial. */
    private boolean readable(double sensitivity) {
        PairModel model = PairModel.ofEqualReturns(sensitivity);
        double u = Math.hypot(read().standardUncertainty(), balance.standardUncertainty());
        return Math.abs(model.readingAt(TARGET)) > u && Math.abs(model.readingAt(WIDEST)) < 1;
    }

    private Nulled byReading() {
        AdapterTrial trial = trial();
        Estimate beta = crew.dataSheet(Channel.COURSE);
        List<PairCutRow> rows = new ArrayList<>();
        NextCut next = trial.firstCut(beta, rule);
        while (!next.finished() && rows.size() < MOST_CUTS) {
            cut(next);
            rows.add(new PairCutRow(cut150, cut90, read().value()));
            next = new PairCutSeries(trial, rows, beta).next(rule);
        }
        PairCutSeries series = new PairCutSeries(trial, rows, beta);
        return new Nulled(
                pair,
                excess(series.fit(), series.netCut()),
                series.fit().sensitivity().value(),
                netCuts,
                next.finished(),
                false);
    }

    /** Every reading of the pair was taken from one balance, whose error is that of the null. */
    private Estimate excess(PairFit fit, double netCut) {
        Estimate left = fit.excessAt(netCut);
        double ofBalance =
                Math.toDegrees(
                        2 * balance.standardUncertainty() / Math.abs(fit.sensitivity().value()));
        return new Estimate(left.value(), Math.hypot(left.standardUncertainty(), ofBalance));
    }

    private AdapterTrial trial() {
        Estimate without = read();
        ArraySide shorter = without.value() > 0 ? ArraySide.ON_150 : ArraySide.ON_90;
        crew.station().monitor().insertAdapter(pair, ReturnCrew.tone(shorter));
        Estimate with = read();
        crew.station().monitor().removeAdapter();
        Adapter adapter = new Adapter(shorter, Crew.adapter());
        double step = Math.sqrt(12) * without.standardUncertainty();
        return new AdapterTrial(without.value(), with.value(), adapter, step);
    }

    private Estimate read() {
        SimulatedMonitor monitor = crew.station().monitor();
        Estimate shown = crew.mean(READINGS, () -> monitor.pairDdm(pair, Transmitter.ONE));
        return new Estimate(shown.value() - balance.value(), shown.standardUncertainty());
    }

    private Nulled byMeter(double sensitivity) {
        Estimate beta = crew.dataSheet(Channel.COURSE);
        Estimate excess = returns.excess(pair);
        NextCut next = rule.first(PhaseLength.of(excess, beta), excess.value());
        while (!next.finished() && netCuts.size() <= MOST_CUTS) {
            cut(next);
            excess = returns.excess(pair);
            next = rule.following(PhaseLength.of(excess, beta), excess.value(), next.direction());
        }
        return new Nulled(pair, excess, sensitivity, netCuts, next.finished(), true);
    }

    private void cut(NextCut next) {
        ArraySide side = ArraySide.of(next);
        double cut = returns.cut(pair.element(ReturnCrew.tone(side)), next.length());
        if (side == ArraySide.ON_150) {
            cut150 += cut;
        } else {
            cut90 += cut;
        }
        netCuts.add(cut150 - cut90);
    }
}
