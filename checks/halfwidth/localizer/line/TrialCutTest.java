package halfwidth.localizer.line;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import halfwidth.localizer.uncertainty.Estimate;
import org.junit.jupiter.api.Test;

class TrialCutTest {

    @Test
    void findsThePhaseConstantFromOneCut() {
        // 100 mm of foam line at VF 0.83 and 110 MHz are 15.915° (159.15 deg/m), by hand.
        TrialCut cut =
                TrialCut.ofOne(
                        new Estimate(0.100, 0.0003),
                        new Estimate(15.915, 0.03),
                        Measurement.THROUGH,
                        110e6);

        assertEquals(159.15, cut.phaseConstant().value(), 0.005);
        assertEquals(0.83, cut.velocityFactor().value(), 5e-5);
        // Relative parts 0.3 % of the rule and 0.19 % of the phase: together 0.354 %.
        double relative = Math.hypot(0.003, 0.03 / 15.915);
        assertEquals(159.15 * relative, cut.phaseConstant().standardUncertainty(), 0.001);
        assertEquals(0.83 * relative, cut.velocityFactor().standardUncertainty(), 1e-5);
    }

    @Test
    void halvesTheChangeOfAOnePortReading() {
        Estimate removed = new Estimate(0.100, 0);
        Estimate change = new Estimate(31.83, 0);

        assertEquals(
                159.15,
                TrialCut.ofOne(removed, change, Measurement.ONE_PORT, 110e6)
                        .phaseConstant()
                        .value(),
                0.005);
    }

    @Test
    void fitsSeveralCutsAcrossATurn() {
        double[] removed = {0, 0.05, 0.10, 0.20};
        double[] readings = {170, 177.9575, -174.085, -158.17};

        TrialCut cut = TrialCut.ofSeveral(removed, readings, Measurement.THROUGH, 110e6);

        assertEquals(159.15, cut.phaseConstant().value(), 1e-9);
    }

    @Test
    void refusesACutThatChangedNothingOrTheWrongWay() {
        Estimate removed = new Estimate(0.1, 0.001);

        assertThrows(
                IllegalArgumentException.class,
                () -> TrialCut.ofOne(removed, new Estimate(0, 1), Measurement.THROUGH, 110e6));
        assertThrows(
                IllegalArgumentException.class,
                () -> TrialCut.ofOne(removed, new Estimate(-9, 1), Measurement.THROUGH, 110e6));
        // A wave no faster than light: 100 mm are at least 13.2° at 110 MHz.
        TrialCut tooFast = TrialCut.ofOne(removed, new Estimate(9, 1), Measurement.THROUGH, 110e6);
        assertThrows(IllegalArgumentException.class, tooFast::velocityFactor);
    }
}
