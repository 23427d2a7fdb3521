package halfwidth.localizer.monitor;

import halfwidth.localizer.Range;
import halfwidth.localizer.Require;
import halfwidth.localizer.uncertainty.Estimate;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresOptimizer.Optimum;

/**
 * The curve d = −K tan((δ0 − β x)/2) through all readings of a pair, x the net cut (150 Hz side
 * less 90 Hz side).
 *
 * <p>Uncertainties are those of weighted least squares, (JᵀWJ)⁻¹, enlarged by χ²/(degrees of
 * freedom) where the readings scatter by more than the receiver's resolution explains.
 */
public final class PairFit {
    /** Below this the matrix of the fit has no inverse to working precision. */
    private static final double SINGULAR = 1e-14;

    private final PairProblem problem;
    private final RealVector point;
    private final RealMatrix covariances;
    private final double scatter;

    PairFit(PairProblem problem, int degreesOfFreedom) {
        this.problem = problem;
        Optimum optimum = problem.solve();
        point = optimum.getPoint();
        double squares = optimum.getResiduals().dotProduct(optimum.getResiduals());
        scatter = degreesOfFreedom > 0 ? Math.sqrt(squares / degreesOfFreedom) : 1;
        double enlarged = Math.max(1, scatter * scatter);
        covariances = optimum.getCovariances(SINGULAR).scalarMultiply(enlarged);
    }

    /**
     * Returns the sensitivity K of the pair, near the null K·4a/(1+a)² for unequal returns.
     *
     * @return K (DDM)
     */
    public Estimate sensitivity() {
        return along(point.getEntry(PairProblem.K), unit(PairProblem.K, 1));
    }

    /**
     * Returns the excess before the first cut.
     *
     * @return δ0 (deg), positive where the 150 Hz side was too long
     */
    public Estimate excessAtStart() {
        return along(point.getEntry(PairProblem.EXCESS), unit(PairProblem.EXCESS, 1));
    }

    /**
     * Returns the phase constant of the returns, from the data sheet and all cuts.
     *
     * @return β (deg/m)
     */
    public Estimate phaseConstant() {
        return along(beta(), unit(PairProblem.BETA, betaStep()));
    }

    /**
     * Returns how the readings scatter about the curve over what their resolution explains:
     * √(χ²/ν).
     *
     * @return the ratio (1), 1 before the first cut; well above 1 the model is doubtful
     */
    public double scatter() {
        return scatter;
    }

    /**
     * Returns the excess after a net cut: δ0 − β x.
     *
     * @param netCut x, cut of the 150 Hz side less that of the 90 Hz side (m)
     * @return δ (deg)
     * @throws IllegalArgumentException if the cut is not finite
     */
    public Estimate excessAt(double netCut) {
        Require.finite("net cut", netCut, "m");
        double[] slope = unit(PairProblem.EXCESS, 1);
        slope[PairProblem.BETA] = -netCut * betaStep();
        return along(point.getEntry(PairProblem.EXCESS) - beta() * netCut, slope);
    }

    /**
     * Returns what is left to cut after a net cut: δ0/β − x.
     *
     * @param netCut x, cut of the 150 Hz side less that of the 90 Hz side (m)
     * @return the length (m), positive on the 150 Hz side, negative on the 90 Hz side
     * @throws IllegalArgumentException if the cut is not finite
     */
    public Estimate remainingAt(double netCut) {
        Require.finite("net cut", netCut, "m");
        double whole = point.getEntry(PairProblem.EXCESS) / beta();
        double[] slope = unit(PairProblem.EXCESS, 1 / beta());
        slope[PairProblem.BETA] = -whole / beta() * betaStep();
        return along(whole - netCut, slope);
    }

    /**
     * Returns the reading of the curve after a net cut: −K tan((δ0 − β x)/2).
     *
     * @param netCut x, cut of the 150 Hz side less that of the 90 Hz side (m)
     * @return the reading (DDM) with the standard uncertainty of the curve there
     * @throws IllegalArgumentException if the cut is not finite
     */
    public Estimate readingAt(double netCut) {
        Require.finite("net cut", netCut, "m");
        PairProblem.Spot spot = new PairProblem.Spot(point, netCut, 0);
        return along(problem.reading(spot), problem.slopes(spot));
    }

    /**
     * Returns the curve and its band, to be drawn.
     *
     * @param netCuts from where to where (m)
     * @param points how many points (1), 2 to 10 000
     * @return evenly spaced points
     * @throws IllegalArgumentException if the number is not 2 to 10 000, or an end is not finite
     */
    public List<CurvePoint> curve(Range netCuts, int points) {
        Require.within("points", points, new Range(2, 10_000), "");
        List<CurvePoint> curve = new ArrayList<>();
        for (int i = 0; i < points; i++) {
            double x = netCuts.least() + netCuts.width() * i / (points - 1);
            curve.add(new CurvePoint(x, readingAt(x)));
        }
        return List.copyOf(curve);
    }

    private double beta() {
        return problem.phaseConstant(point.getEntry(PairProblem.BETA));
    }

    private double betaStep() {
        return problem.phaseConstant(1) - problem.phaseConstant(0);
    }

    private double[] unit(int unknown, double size) {
        double[] slope = new double[point.getDimension()];
        slope[unknown] = size;
        return slope;
    }

    private Estimate along(double value, double[] slope) {
        RealVector c = new ArrayRealVector(slope, false);
        return new Estimate(value, Math.sqrt(Math.max(0, c.dotProduct(covariances.operate(c)))));
    }
}
