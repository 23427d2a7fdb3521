package halfwidth.localizer.monitor;

import halfwidth.localizer.uncertainty.Estimate;
import java.util.List;
import org.hipparchus.exception.MathIllegalStateException;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresOptimizer.Optimum;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresProblem;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.optim.nonlinear.vector.leastsquares.MultivariateJacobianFunction;
import org.hipparchus.util.Pair;

/**
 * The readings of a pair as a least-squares problem.
 *
 * <p>Unknowns: K, δ0, and how many of their own standard uncertainties β and ε are off what the
 * data sheet and the adapter say. Each of the two is an observation of 0 ± 1, so that a phase
 * constant known exactly stays where it is without a weight of infinity. Readings are weighted by
 * 1/u.
 */
final class PairProblem {
    /** Places of the unknowns. */
    static final int K = 0;

    static final int EXCESS = 1;
    static final int BETA = 2;
    static final int ADAPTER = 3;
    private static final int UNKNOWNS = 4;
    private static final int MOST_STEPS = 200;

    private final AdapterTrial trial;
    private final List<PairCutRow> rows;
    private final Estimate dataSheet;
    private final double readingUncertainty;

    /** Takes rows that were read. */
    PairProblem(AdapterTrial trial, List<PairCutRow> rows, Estimate dataSheet) {
        this.trial = trial;
        this.rows = rows;
        this.dataSheet = dataSheet;
        readingUncertainty = Estimate.readInSteps(0, trial.resolution()).standardUncertainty();
    }

    Optimum solve() {
        double[] start = {trial.sensitivity().value(), trial.excess().value(), 0, 0};
        LeastSquaresProblem problem =
                new LeastSquaresBuilder()
                        .start(start)
                        .target(targets())
                        .model(model())
                        .maxIterations(MOST_STEPS)
                        .maxEvaluations(MOST_STEPS)
                        .build();
        try {
            return new LevenbergMarquardtOptimizer().optimize(problem);
        } catch (MathIllegalStateException unsettled) {
            throw new IllegalArgumentException(
                    "no curve of a pair fits these readings: " + unsettled.getMessage(), unsettled);
        }
    }

    double phaseConstant(double unknown) {
        return dataSheet.value() + unknown * dataSheet.standardUncertainty();
    }

    /** Readings without and with the adapter, after each cut, then the two data-sheet values. */
    private double[] targets() {
        double[] targets = new double[rows.size() + 4];
        targets[0] = trial.without() / readingUncertainty;
        targets[1] = trial.with() / readingUncertainty;
        for (int i = 0; i < rows.size(); i++) {
            targets[2 + i] = rows.get(i).reading().getAsDouble() / readingUncertainty;
        }
        return targets;
    }

    private MultivariateJacobianFunction model() {
        return point -> {
            double[] values = new double[rows.size() + 4];
            double[][] slopes = new double[values.length][];
            put(values, slopes, 0, new Spot(point, 0, 0));
            put(values, slopes, 1, new Spot(point, 0, trial.adapter().side().direction()));
            for (int i = 0; i < rows.size(); i++) {
                put(values, slopes, 2 + i, new Spot(point, rows.get(i).netCut(), 0));
            }
            for (int known : new int[] {BETA, ADAPTER}) {
                int at = rows.size() + known;
                values[at] = point.getEntry(known);
                slopes[at] = new double[UNKNOWNS];
                slopes[at][known] = 1;
            }
            RealVector value = new ArrayRealVector(values, false);
            RealMatrix jacobian = new Array2DRowRealMatrix(slopes, false);
            return new Pair<>(value, jacobian);
        };
    }

    private void put(double[] values, double[][] slopes, int at, Spot spot) {
        values[at] = reading(spot) / readingUncertainty;
        slopes[at] = slopes(spot);
        for (int i = 0; i < UNKNOWNS; i++) {
            slopes[at][i] /= readingUncertainty;
        }
    }

    /** The unknowns, a net cut (m), and the adapter: +1 or -1 by side, 0 without it. */
    record Spot(RealVector point, double netCut, int adapter) {}

    double excess(Spot spot) {
        Estimate length = trial.adapter().length();
        double epsilon =
                length.value() + spot.point().getEntry(ADAPTER) * length.standardUncertainty();
        return spot.point().getEntry(EXCESS)
                - phaseConstant(spot.point().getEntry(BETA)) * spot.netCut()
                + spot.adapter() * epsilon;
    }

    /** −K tan(δ/2). */
    double reading(Spot spot) {
        return -spot.point().getEntry(K) * Math.tan(Math.toRadians(excess(spot)) / 2);
    }

    /** How the reading changes with each unknown. */
    double[] slopes(Spot spot) {
        double t = Math.tan(Math.toRadians(excess(spot)) / 2);
        double perDegree = -spot.point().getEntry(K) * (1 + t * t) / 2 * Math.toRadians(1);
        double[] slopes = new double[UNKNOWNS];
        slopes[K] = -t;
        slopes[EXCESS] = perDegree;
        slopes[BETA] = -perDegree * spot.netCut() * dataSheet.standardUncertainty();
        slopes[ADAPTER] =
                perDegree * spot.adapter() * trial.adapter().length().standardUncertainty();
        return slopes;
    }
}
