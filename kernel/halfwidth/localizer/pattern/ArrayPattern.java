package halfwidth.localizer.pattern;

import halfwidth.localizer.Range;
import halfwidth.localizer.Require;
import halfwidth.localizer.array.ArrayModel;
import halfwidth.localizer.array.Detector;
import halfwidth.localizer.array.Prediction;
import halfwidth.localizer.signal.Ddm;
import halfwidth.localizer.signal.Tone;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.DoubleFunction;
import org.hipparchus.stat.regression.SimpleRegression;

/**
 * The pattern of an array over azimuth, ±35° from the course line, and its figures.
 *
 * <p>It is found on a grid of 0.05° first: two crossings closer than that are not told apart.
 */
public final class ArrayPattern {
    private static final Range STEPS = new Range(0.001, 10);
    private static final double SLOPE_STEP = 1e-3;
    private static final int LINEARITY_POINTS = 101;

    private final DoubleFunction<Prediction> predictions;
    private final Scan scan;

    private ArrayPattern(DoubleFunction<Prediction> predictions) {
        this.predictions = predictions;
        this.scan = new Scan(this::ddm);
    }

    /**
     * Returns the pattern far from the array.
     *
     * @param array the array
     * @return its pattern, as an envelope detector receives it
     * @throws IllegalArgumentException if the carrier vanishes at a point of the grid
     */
    public static ArrayPattern farField(ArrayModel array) {
        return new ArrayPattern(array.farField());
    }

    /**
     * Returns the pattern on a circle about the array's centre.
     *
     * @param array the array
     * @param distance radius of the circle (m), above half the aperture
     * @return its pattern, as an envelope detector receives it
     * @throws IllegalArgumentException if the circle cuts the array or the carrier vanishes at a
     *     point of the grid
     */
    public static ArrayPattern nearField(ArrayModel array, double distance) {
        return new ArrayPattern(array.nearField(distance));
    }

    /**
     * Returns the same pattern as another kind of detector receives it.
     *
     * @param detector the kind
     * @return its pattern
     */
    public ArrayPattern detectedBy(Detector detector) {
        return new ArrayPattern(azimuth -> predictions.apply(azimuth).detectedBy(detector));
    }

    /**
     * Returns the DDM at an azimuth.
     *
     * @param azimuth where (deg), positive on the 150 Hz side, −90 to 90
     * @return the DDM (DDM)
     */
    public double ddm(double azimuth) {
        return predictions.apply(azimuth).ddm();
    }

    /**
     * Returns all there is to know at an azimuth.
     *
     * @param azimuth where (deg), positive on the 150 Hz side, −90 to 90
     * @return the point
     */
    public PatternPoint at(double azimuth) {
        return new PatternPoint(
                azimuth, predictions.apply(azimuth), predictions.apply(0).amplitude());
    }

    /**
     * Returns the points of a range of azimuths, for a table or a plot.
     *
     * @param azimuths from where to where (deg)
     * @param step from point to point (deg), 0.001 to 10
     * @return the points, the first at the range's least, none beyond its most
     */
    public List<PatternPoint> points(Range azimuths, double step) {
        Require.within("step", step, STEPS, "deg");
        // A range that is a whole number of steps keeps its last point in spite of rounding.
        int last = (int) Math.floor(azimuths.width() / step + 1e-9);
        double reference = predictions.apply(0).amplitude();
        List<PatternPoint> points = new ArrayList<>();
        for (int i = 0; i <= last; i++) {
            double azimuth = Math.min(azimuths.least() + i * step, azimuths.most());
            points.add(new PatternPoint(azimuth, predictions.apply(azimuth), reference));
        }
        return points;
    }

    /**
     * Returns all azimuths without deflection within ±35°: the course line and any false ones.
     *
     * @return the azimuths (deg), from the least up
     */
    public List<Double> zeroCrossings() {
        return scan.crossings(0);
    }

    /**
     * Returns the course line: the zero crossing nearest to azimuth 0 (ICAO Annex 10 Vol I, 3.1.1).
     *
     * @return its azimuth (deg)
     * @throws IllegalArgumentException if there is none within ±35°
     */
    public double courseLine() {
        return zeroCrossings().stream()
                .min(Comparator.comparingDouble(Math::abs))
                .orElseThrow(
                        () -> new IllegalArgumentException("DDM must be 0 somewhere within ±35°"));
    }

    /**
     * Returns how fast the DDM rises at an azimuth, by its differences over ±0.001°.
     *
     * @param azimuth where (deg)
     * @return the slope (DDM/deg)
     */
    public double slope(double azimuth) {
        return (ddm(azimuth + SLOPE_STEP) - ddm(azimuth - SLOPE_STEP)) / (2 * SLOPE_STEP);
    }

    /**
     * Returns the course line and the half-width points with what follows from them.
     *
     * @return the course sector
     * @throws IllegalArgumentException if there is no course line, or a side does not reach 0.155
     */
    public PredictedCourse course() {
        double line = courseLine();
        double edge90 = firstReaching(Tone.HZ_90, Ddm.COURSE_SECTOR_EDGE, line);
        double edge150 = firstReaching(Tone.HZ_150, Ddm.COURSE_SECTOR_EDGE, line);
        return new PredictedCourse(line, slope(line), edge90, edge150, linearity(edge90, edge150));
    }

    private double firstReaching(Tone side, double level, double line) {
        int sign = side.sign();
        return scan.crossings(sign * level).stream()
                .filter(azimuth -> sign * azimuth > sign * line)
                .min(Comparator.comparingDouble(azimuth -> sign * azimuth))
                .orElseThrow(
                        () ->
                                new IllegalArgumentException(
                                        "DDM must reach "
                                                + level
                                                + " on the "
                                                + side.spoken()
                                                + " Hz side within 35°"));
    }

    private double linearity(double from, double to) {
        SimpleRegression line = new SimpleRegression();
        double[] azimuths = new double[LINEARITY_POINTS];
        for (int i = 0; i < LINEARITY_POINTS; i++) {
            azimuths[i] = from + (to - from) * i / (LINEARITY_POINTS - 1);
            line.addData(azimuths[i], ddm(azimuths[i]));
        }
        double most = 0;
        for (double azimuth : azimuths) {
            most = Math.max(most, Math.abs(ddm(azimuth) - line.predict(azimuth)));
        }
        return most;
    }

    /**
     * Returns the least DDM of a sector on one side.
     *
     * @param side which side, by the tone that should predominate there
     * @param sector between which angles from azimuth 0 (deg), 0 to 35
     * @return the least DDM and where it is
     * @throws IllegalArgumentException if the sector is not within 0 to 35° or narrower than 0.1°
     */
    public SideClearance leastDdm(Tone side, Range sector) {
        return ClearanceSearch.least(scan, side, sector);
    }

    /**
     * Returns the least DDM of the sectors of ICAO Annex 10 Vol I, 3.1.3.7.3: from where it first
     * reaches 0.180 to 10°, where it must not fall below 0.180, and from 10° to 35°, where it must
     * not fall below 0.155.
     *
     * <p>The first sector begins at the first point of the grid that reaches 0.180. On a side that
     * does not reach it within 10°, it begins where the DDM is greatest, so that the figure shows
     * what is missing.
     *
     * @return the inner sector of each side, then the outer sector of each side
     */
    public List<SideClearance> clearances() {
        return List.of(
                ClearanceSearch.inner(scan, Tone.HZ_90),
                ClearanceSearch.inner(scan, Tone.HZ_150),
                ClearanceSearch.outer(scan, Tone.HZ_90),
                ClearanceSearch.outer(scan, Tone.HZ_150));
    }
}
