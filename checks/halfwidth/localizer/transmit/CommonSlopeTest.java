package halfwidth.localizer.transmit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import halfwidth.localizer.transmit.CommonSlope.Group;
import java.util.List;
import org.hipparchus.stat.regression.OLSMultipleLinearRegression;
import org.junit.jupiter.api.Test;

class CommonSlopeTest {

    /** Two intercepts and a slope as a design matrix, solved by another library. */
    @Test
    void agreesWithAGeneralRegression() {
        double[] x1 = {0, 0.05, 0.08, 0.08};
        double[] y1 = {20.2, 12.1, 7.4, 7.9};
        double[] x2 = {0, 0.08, 0.11};
        double[] y2 = {12.4, -0.2, -5.1};
        CommonSlope fit = new CommonSlope(List.of(new Group(x1, y1), new Group(x2, y2)));

        OLSMultipleLinearRegression general = new OLSMultipleLinearRegression();
        general.setNoIntercept(true);
        general.newSampleData(
                new double[] {20.2, 12.1, 7.4, 7.9, 12.4, -0.2, -5.1},
                new double[][] {
                    {1, 0, 0},
                    {1, 0, 0.05},
                    {1, 0, 0.08},
                    {1, 0, 0.08},
                    {0, 1, 0},
                    {0, 1, 0.08},
                    {0, 1, 0.11}
                });
        double[] expected = general.estimateRegressionParameters();
        double error = general.estimateRegressionStandardError();
        assertEquals(expected[2], fit.slope(), 1e-9);
        assertEquals(error, fit.deviation(0), 1e-9);
        assertEquals(
                general.estimateRegressionParametersStandardErrors()[2],
                fit.slopeUncertainty(error),
                1e-9);
    }

    @Test
    void keepsTheFloorWhereTheLinesLeaveNothingOver() {
        CommonSlope fit =
                new CommonSlope(List.of(new Group(new double[] {0, 1}, new double[] {5, 3})));
        assertEquals(-2, fit.slope());
        assertEquals(0.3, fit.deviation(0.3));
    }

    @Test
    void findsNoSlopeInEqualCuts() {
        double[] x = {0.1, 0.1, 0.1};
        CommonSlope fit = new CommonSlope(List.of(new Group(x, new double[] {1, 2, 4})));
        assertFalse(fit.determined());
    }
}
