package halfwidth.localizer.transmit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.localizer.uncertainty.Estimate;
import java.util.List;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealVector;
import org.hipparchus.stat.regression.OLSMultipleLinearRegression;
import org.junit.jupiter.api.Test;

/** The offsets that the lines of a cutting record lead to. */
class FittedOffsetsTest {
    private static final double BLANK = Double.NaN;
    private static final double[] SBO = {0, 0.05, 0.10, 0.14};
    private static final double[] NONE = {0, 0, 0, 0};
    private static final double[] OFFSETS1 = {30, 22.5, 14.1, 8.2};
    private static final double[] OFFSETS2 = {21.2, BLANK, 5.3, -0.9};

    private static FeedCutSeries series() {
        return new FeedCutSeries(
                CutRow.ofColumns(SBO, NONE, OFFSETS1, OFFSETS2), new Estimate(155, 60), 0.1);
    }

    /** The same fit by Hipparchus, as a regression on two intercepts and one slope. */
    private static OLSMultipleLinearRegression regression() {
        OLSMultipleLinearRegression regression = new OLSMultipleLinearRegression();
        regression.setNoIntercept(true);
        regression.newSampleData(
                new double[] {30, 22.5, 14.1, 8.2, 21.2, 5.3, -0.9},
                new double[][] {
                    {1, 0, 0},
                    {1, 0, 0.05},
                    {1, 0, 0.10},
                    {1, 0, 0.14},
                    {0, 1, 0},
                    {0, 1, 0.10},
                    {0, 1, 0.14}
                });
        return regression;
    }

    private static void assertPredicted(Estimate found, double... regressors) {
        OLSMultipleLinearRegression regression = regression();
        RealVector x = new ArrayRealVector(regressors);
        RealVector fitted = new ArrayRealVector(regression.estimateRegressionParameters());
        double variance =
                MatrixUtils.createRealMatrix(regression.estimateRegressionParametersVariance())
                                .operate(x)
                                .dotProduct(x)
                        * regression.estimateErrorVariance();
        assertEquals(x.dotProduct(fitted), found.value(), 1e-9);
        assertEquals(Math.sqrt(variance), found.standardUncertainty(), 1e-9);
    }

    @Test
    void followTheLineOfEachTransmitterWithItsUncertainty() {
        assertPredicted(series().offset(1, 0.17).orElseThrow(), 1, 0, 0.17);
        assertPredicted(series().offset(2, 0.17).orElseThrow(), 0, 1, 0.17);
        assertPredicted(series().offset(2, 0.05).orElseThrow(), 0, 1, 0.05);
    }

    @Test
    void haveTheirMiddleBetweenThem() {
        FeedCutSeries series = series();
        double between =
                (series.offset(1, 0.2).orElseThrow().value()
                                + series.offset(2, 0.2).orElseThrow().value())
                        / 2;
        assertEquals(between, series.middle(0.2).value(), 1e-9);
        assertEquals(series.aim(), series.middle(0.14));
        // Where all that remains is cut, the middle is in phase.
        assertEquals(0, series.middle(0.14 + series.remaining().value()).value(), 1e-9);
    }

    @Test
    void areThereOnlyForATransmitterThatWasRead() {
        double[] blank = {BLANK, BLANK, BLANK, BLANK};
        FeedCutSeries one =
                new FeedCutSeries(
                        CutRow.ofColumns(SBO, NONE, OFFSETS1, blank), new Estimate(155, 60), 0.1);
        assertTrue(one.offset(2, 0).isEmpty());
        assertThrows(IllegalArgumentException.class, () -> one.offset(3, 0));
        assertThrows(IllegalArgumentException.class, () -> one.offset(1, BLANK));
        assertThrows(IllegalArgumentException.class, () -> one.middle(11));
    }

    @Test
    void comeFromRowsThatAreRefusedByNumber() {
        refuses(
                "row 2: the total cut of the SBO feed is blank; type 0 where nothing was cut",
                new double[] {0, BLANK},
                new double[] {1, 1});
        refuses("row 2: total cut of the SBO feed 11 m", new double[] {0, 11}, new double[] {1, 1});
        refuses("of one length", new double[] {0}, new double[] {1, 1});
        assertThrows(
                IllegalArgumentException.class, () -> CutRow.after(0, 0, -100, 100), "180 deg");
    }

    private static void refuses(String words, double[] cuts, double[] offsets) {
        double[] none = new double[cuts.length];
        double[] blank = new double[cuts.length];
        java.util.Arrays.fill(blank, BLANK);
        IllegalArgumentException refusal =
                assertThrows(
                        IllegalArgumentException.class,
                        () -> CutRow.ofColumns(cuts, none, offsets, blank));
        assertTrue(refusal.getMessage().contains(words), refusal.getMessage());
    }

    @Test
    void areKeptAsGiven() {
        List<CutRow> rows = CutRow.ofColumns(SBO, NONE, OFFSETS1, OFFSETS2);
        assertEquals(CutRow.after(0.05, 0, 22.5, BLANK), rows.get(1));
        assertEquals(0.14, rows.get(3).netCut(), 0);
    }
}
