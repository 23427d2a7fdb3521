package halfwidth.localizer.pattern;

import halfwidth.localizer.Range;
import halfwidth.localizer.Require;
import halfwidth.localizer.array.ArrayModel;
import halfwidth.localizer.signal.Ddm;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/** Sets the course SBO of an array to the width wanted. */
public final class WidthSetting {
    private static final Range WIDTHS = new Range(0.5, 12);
    private static final double FACTOR_ACCURACY = 1e-12;
    private static final double BRACKET = 1.5;
    private static final int EVALUATIONS = 100;

    private WidthSetting() {}

    /**
     * Returns an array with all its course SBO currents scaled alike, so that the course has the
     * width wanted in the far field.
     *
     * @param array the array
     * @param width the course width wanted (deg), 0.5 to 12
     * @return the array, set
     * @throws IllegalArgumentException if the course SBO does not make the DDM rise through the
     *     course line, or no SBO within a factor of 1.5 of what the slope asks for gives the width
     */
    public static ArrayModel scaledToWidth(ArrayModel array, double width) {
        Require.within("course width", width, WIDTHS, "deg");
        double first = firstFactor(array, width);
        UnivariateFunction error =
                factor -> ArrayPattern.farField(scaled(array, factor)).course().width() - width;
        if (!(error.value(first / BRACKET) > 0 && error.value(first * BRACKET) < 0)) {
            throw new IllegalArgumentException(
                    "course width " + width + " deg must be within reach of the array's SBO");
        }
        double factor =
                new BracketingNthOrderBrentSolver(FACTOR_ACCURACY * first, 5)
                        .solve(EVALUATIONS, error, first / BRACKET, first * BRACKET, first);
        return scaled(array, factor);
    }

    /**
     * From the slopes that the course SBO and, through capture, the clearance make at the centre.
     */
    private static double firstFactor(ArrayModel array, double width) {
        double line = ArrayPattern.farField(array).courseLine();
        double others = ArrayPattern.farField(scaled(array, 0)).slope(line);
        double own = ArrayPattern.farField(array).slope(line) - others;
        Require.above("slope that the course SBO makes", own, 0, "1/deg");
        double wanted = Ddm.COURSE_SECTOR_EDGE / (width / 2);
        return Require.above("course SBO needed", (wanted - others) / own, 0, "of what it is");
    }

    private static ArrayModel scaled(ArrayModel array, double factor) {
        return array.withCourse(array.course().withSboScaled(factor));
    }
}
