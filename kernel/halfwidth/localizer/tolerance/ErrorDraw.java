package halfwidth.localizer.tolerance;

import java.util.random.RandomGenerator;

/** The errors of one draw: those of an element are shared by all its currents. */
final class ErrorDraw {
    private final Tolerances tolerances;
    private final double[] elementLogarithms;
    private final double[] elementPhases;
    private double pathLogarithm;
    private double pathPhase;
    private double logarithm;
    private double phase;

    ErrorDraw(Tolerances tolerances, int elements) {
        this.tolerances = tolerances;
        this.elementLogarithms = new double[elements];
        this.elementPhases = new double[elements];
    }

    void nextElements(RandomGenerator random) {
        Spread spread = tolerances.elements();
        for (int n = 0; n < elementLogarithms.length; n++) {
            elementLogarithms[n] = spread.logarithm() * random.nextGaussian();
            elementPhases[n] = Math.toRadians(spread.phase()) * random.nextGaussian();
        }
    }

    void nextPath(RandomGenerator random) {
        pathLogarithm = tolerances.paths().logarithm() * random.nextGaussian();
        pathPhase = Math.toRadians(tolerances.paths().phase()) * random.nextGaussian();
    }

    void nextCurrent(int element, RandomGenerator random) {
        Spread spread = tolerances.currents();
        logarithm =
                elementLogarithms[element]
                        + pathLogarithm
                        + spread.logarithm() * random.nextGaussian();
        phase =
                elementPhases[element]
                        + pathPhase
                        + Math.toRadians(spread.phase()) * random.nextGaussian();
    }

    /** Factor on the amplitude of the last current (1). */
    double factor() {
        return Math.exp(logarithm);
    }

    /** Advance of the last current (rad). */
    double phase() {
        return phase;
    }
}
