package halfwidth.localizer.monitor;

import halfwidth.localizer.cut.CutRecord;
import halfwidth.localizer.cut.CutRule;
import halfwidth.localizer.cut.NextCut;
import halfwidth.localizer.cut.PhaseLength;
import halfwidth.localizer.uncertainty.Estimate;
import java.util.List;

/**
 * The readings of a pair after each cut of its returns, and what they say of the next cut.
 *
 * <p>Each further reading is one more point on d = −K tan((δ0 − β x)/2). Returns of unequal
 * amplitude change the shape of the curve far from the null only; near it they change K.
 *
 * @param trial the readings without and with the adapter, before any cut
 * @param rows the record after the first cut, in the order of the cuts, without adapter; may be
 *     empty. A row that was not read counts by what was cut
 * @param dataSheet β of the returns as the data sheet has it (deg/m), with its standard uncertainty
 */
public record PairCutSeries(AdapterTrial trial, List<PairCutRow> rows, Estimate dataSheet) {

    /**
     * @throws IllegalArgumentException if a total cut shrinks; the data sheet's β is not above 0
     *     and at most 1000 deg/m; or the reading moved the wrong way, less than half or more than
     *     twice as far as the data sheet says, by more than five standard uncertainties
     */
    public PairCutSeries {
        rows = List.copyOf(rows);
        PhaseLength.checkedPhaseConstant(dataSheet);
        PairCutRow before = new PairCutRow(0, 0, trial.without());
        for (int i = 0; i < rows.size(); i++) {
            PairCutRow now = rows.get(i);
            CutRecord.checkGrows("150 Hz side", before.cut150(), now.cut150(), i + 1);
            CutRecord.checkGrows("90 Hz side", before.cut90(), now.cut90(), i + 1);
            before = now;
        }
        PairCutRow readBefore = new PairCutRow(0, 0, trial.without());
        for (PairCutRow now : read(rows)) {
            checkMovement(trial, readBefore, now, dataSheet);
            readBefore = now;
        }
    }

    /**
     * Fits K, δ0 and β to all readings, by weighted least squares.
     *
     * @return the fit
     */
    public PairFit fit() {
        List<PairCutRow> read = read(rows);
        return new PairFit(new PairProblem(trial, read, dataSheet), read.size());
    }

    private static List<PairCutRow> read(List<PairCutRow> rows) {
        return rows.stream().filter(row -> row.reading().isPresent()).toList();
    }

    /** Whether a return was cut after the last reading. */
    private boolean cutSinceRead() {
        List<PairCutRow> read = read(rows);
        PairCutRow lastRead =
                read.isEmpty() ? new PairCutRow(0, 0, trial.without()) : read.get(read.size() - 1);
        return rows.stream()
                .anyMatch(
                        row -> row.cut150() > lastRead.cut150() || row.cut90() > lastRead.cut90());
    }

    /**
     * Returns the net cut made so far.
     *
     * @return cut of the 150 Hz side less that of the 90 Hz side (m)
     */
    public double netCut() {
        return rows.isEmpty() ? 0 : rows.get(rows.size() - 1).netCut();
    }

    /**
     * Returns the next cut; {@link ArraySide#of} tells on which side.
     *
     * @param rule how carefully the line is cut
     * @return the cut, or why there is none; overshot when it is on the other side than the last,
     *     none before a return that was cut is read again
     */
    public NextCut next(CutRule rule) {
        PairFit fit = fit();
        Estimate remaining = fit.remainingAt(netCut());
        if (cutSinceRead()) {
            return NextCut.readFirst(remaining);
        }
        double phase = fit.excessAt(netCut()).value();
        int last = lastDirection();
        return last == 0 ? rule.first(remaining, phase) : rule.following(remaining, phase, last);
    }

    private int lastDirection() {
        for (int i = rows.size() - 1; i >= 0; i--) {
            double before = i == 0 ? 0 : rows.get(i - 1).netCut();
            if (rows.get(i).netCut() != before) {
                return (int) Math.signum(rows.get(i).netCut() - before);
            }
        }
        return 0;
    }

    /** Compares two rows as phases of the curve that the adapter gave. */
    private static void checkMovement(
            AdapterTrial trial, PairCutRow before, PairCutRow now, Estimate dataSheet) {
        double cut = now.netCut() - before.netCut();
        if (cut == 0) {
            return;
        }
        PairModel model = PairModel.ofEqualReturns(trial.sensitivity().value());
        double taken =
                model.excessFor(before.reading().getAsDouble())
                        - model.excessFor(now.reading().getAsDouble());
        double step = Estimate.readInSteps(0, trial.resolution()).standardUncertainty();
        double perDdm = Math.toDegrees(2 / Math.abs(model.sensitivity()));
        double u = Math.sqrt(2) * step * perDdm / Math.abs(cut);
        CutRecord.checkMovement(new Estimate(taken / cut, u), dataSheet, "the phase of the pair");
    }
}
