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

    /** Readings averaged: at least so many, and at most what a crew has patience for. */
    private static final int FEWEST_READINGS = 4;

    private static final int MOST_READINGS = 25;

    /** Largest excess at which a trial is made, adapter included (deg). */
    private static final double WIDEST = 80;

    private final Crew crew;
    private final ReturnCrew returns;
    private final AntennaPair pair;
    private final Crew.Signal signal;
    private final CutRule rule;
    private final double designed;
    private final int readings;
    private final List<Double> netCuts = new ArrayList<>(List.of(0.0));
    private double cut150;
    private double cut90;

    NullCrew(ReturnCrew returns, Crew crew, AntennaPair pair, Crew.Signal signal) {
        this.crew = crew;
        this.returns = returns;
        this.pair = pair;
        this.signal = signal;
        rule = CutRule.usual(crew.cutStep(), TARGET);
        designed = designedSensitivity();
        readings = Math.max(FEWEST_READINGS, readingsNeeded());
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
        return readable() ? byReading() : byMeter();
    }

    private double designedSensitivity() {
        Carrier course = crew.station().array().course();
        int n = pair.element150() - 1;
        return 2 * course.sbo().get(n).amplitude() / course.csb().get(n).amplitude();
    }

    /** As many as bring two standard uncertainties of the mean to what the target reads. */
    private int readingsNeeded() {
        double ofTarget = Math.abs(PairModel.ofEqualReturns(designed).readingAt(TARGET));
        return (int) Math.ceil(Math.pow(2 * crew.ddmUncertainty() / ofTarget, 2));
    }

    /** Neither too weak to show the target, nor too strong for a receiver during the trial. */
    private boolean readable() {
        double widest = PairModel.ofEqualReturns(designed).readingAt(WIDEST);
        return readings <= MOST_READINGS && Math.abs(widest) < 1;
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

    /**
     * What the fit left, uncertain besides by what all readings of the pair have in common: the
     * balance taken off them, and sidebands not quite in phase on returns not quite equal.
     */
    private Estimate excess(PairFit fit, double netCut) {
        Estimate left = fit.excessAt(netCut);
        double k = Math.abs(fit.sensitivity().value());
        double ofBalance = Math.toDegrees(2 * signal.balance().standardUncertainty() / k);
        double u = Math.hypot(left.standardUncertainty(), ofBalance);
        return new Estimate(left.value(), Math.hypot(u, ofUnequalReturns()));
    }

    /** Both causes are around 0, so their deviations multiply. */
    private double ofUnequalReturns() {
        double ratio = 1 + Crew.amplitudeRatio().standardUncertainty();
        return Math.abs(new PairModel(1, ratio).excessAtNull(signal.lead().standardUncertainty()));
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
        Estimate shown = crew.mean(readings, () -> monitor.pairDdm(pair, Transmitter.ONE));
        return new Estimate(shown.value() - signal.balance().value(), shown.standardUncertainty());
    }

    private Nulled byMeter() {
        Estimate beta = crew.dataSheet(Channel.COURSE);
        Estimate excess = returns.excess(pair);
        NextCut next = rule.first(PhaseLength.of(excess, beta), excess.value());
        while (!next.finished() && netCuts.size() <= MOST_CUTS) {
            cut(next);
            excess = returns.excess(pair);
            next = rule.following(PhaseLength.of(excess, beta), excess.value(), next.direction());
        }
        return new Nulled(pair, excess, designed, netCuts, next.finished(), true);
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
