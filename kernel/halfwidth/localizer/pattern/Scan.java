package halfwidth.localizer.pattern;

import halfwidth.localizer.Range;
import halfwidth.localizer.signal.Tone;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.univariate.BrentOptimizer;
import org.hipparchus.optim.univariate.SearchInterval;
import org.hipparchus.optim.univariate.UnivariateObjectiveFunction;

/** The DDM on a fine grid of azimuths, to bracket what solvers then find exactly. */
final class Scan {
    /** Both ways (deg): ICAO Annex 10 Vol I, 3.1.3.7.3 looks no further. */
    static final double LIMIT = 35;

    private static final int POINTS = 1401;
    private static final double STEP = 2 * LIMIT / (POINTS - 1);
    private static final double AZIMUTH_ACCURACY = 1e-10;

    /** A bracket whose DDM jumps past the level is a null of the carrier, not a crossing. */
    private static final double CROSSING_ACCURACY = 1e-4;

    private static final int EVALUATIONS = 500;

    private final DoubleUnaryOperator ddm;
    private final double[] values;

    Scan(DoubleUnaryOperator ddm) {
        this.ddm = ddm;
        this.values = IntStream.range(0, POINTS).mapToDouble(i -> ddm(azimuth(i))).toArray();
    }

    /** Azimuth of a point of the grid (deg). */
    static double azimuth(int i) {
        return (i - (POINTS - 1) / 2) * STEP;
    }

    /** All azimuths where the DDM has the level, from the least up. */
    List<Double> crossings(double level) {
        List<Double> found = new ArrayList<>();
        for (int i = 1; i < POINTS; i++) {
            if (values[i] >= level != values[i - 1] >= level) {
                double root = solve(level, azimuth(i - 1), azimuth(i));
                if (Math.abs(ddm(root) - level) < CROSSING_ACCURACY) {
                    found.add(root);
                }
            }
        }
        return found;
    }

    private double solve(double level, double from, double to) {
        UnivariateFunction difference = azimuth -> ddm(azimuth) - level;
        return new BracketingNthOrderBrentSolver(AZIMUTH_ACCURACY, 5)
                .solve(EVALUATIONS, difference, from, to);
    }

    double ddm(double azimuth) {
        return ddm.applyAsDouble(azimuth);
    }

    /** The grid's points within a sector of a side, from the course line outwards. */
    int[] outwards(Tone side, Range sector) {
        return IntStream.range(0, POINTS)
                .map(i -> side == Tone.HZ_150 ? i : POINTS - 1 - i)
                .filter(i -> sector.contains(side.sign() * azimuth(i)))
                .toArray();
    }

    /** DDM at a point of the grid. */
    double value(int i) {
        return values[i];
    }

    /** The azimuth of the least sign · DDM within a step of one on the grid, inside a sector. */
    double leastNear(Tone side, double azimuth, Range sector) {
        double middle = side.sign() * azimuth;
        double start = Math.max(sector.least(), middle - STEP);
        double end = Math.min(sector.most(), middle + STEP);
        UnivariateFunction sided = x -> side.sign() * ddm(side.sign() * x);
        double best =
                new BrentOptimizer(AZIMUTH_ACCURACY, AZIMUTH_ACCURACY)
                        .optimize(
                                new MaxEval(EVALUATIONS),
                                new UnivariateObjectiveFunction(sided),
                                GoalType.MINIMIZE,
                                new SearchInterval(start, end, middle))
                        .getPoint();
        return side.sign() * best;
    }
}
