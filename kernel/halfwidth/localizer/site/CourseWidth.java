package halfwidth.localizer.site;

import halfwidth.localizer.Range;
import halfwidth.localizer.Require;
import halfwidth.localizer.limits.Limits;
import halfwidth.localizer.signal.Ddm;

/**
 * A course width and where it applies: the whole sector between the two half-width points, each of
 * which reads 0.155 DDM.
 *
 * @param width the width (deg), 0.1 to 20
 * @param unclipped the width that the rule alone would give (deg); {@code width} where no least or
 *     most width changed it
 * @param datumDistance from the centre of the array to the reference datum (m), 100 to 20 000
 */
public record CourseWidth(double width, double unclipped, double datumDistance) {
    private static final Range DISTANCES = new Range(100, 20_000);
    private static final Range WIDTHS = new Range(0.1, 20);

    /** One foot (m), exact: NIST SP 811, appendix B. */
    private static final double FOOT = 0.3048;

    /**
     * @throws IllegalArgumentException if a value is outside its range
     */
    public CourseWidth {
        Require.within("course width", width, WIDTHS, "deg");
        Require.above("unclipped width", unclipped, 0, "deg");
        Require.within("distance from array to datum", datumDistance, DISTANCES, "m");
    }

    /**
     * Returns a width that is given, as commissioned.
     *
     * @param width the width (deg)
     * @param datumDistance from the centre of the array to the reference datum (m)
     * @return the course width
     * @throws IllegalArgumentException if a value is outside its range
     */
    public static CourseWidth of(double width, double datumDistance) {
        return new CourseWidth(width, width, datumDistance);
    }

    /**
     * Returns the width that gives nominal displacement sensitivity at the datum, at most the
     * largest sector: W = 2 atan((0.155 / s) / D).
     *
     * <p>ICAO Annex 10 Vol I, 3.1.3.7.1; s and the largest sector are taken from {@code limits}.
     *
     * @param datumDistance D, from the centre of the array to the reference datum (m)
     * @param limits the published limits
     * @return the course width
     * @throws IllegalArgumentException if the distance is outside its range
     */
    public static CourseWidth byAnnex10(double datumDistance, Limits limits) {
        return annex10(datumDistance, datumDistance, limits);
    }

    /**
     * Returns the width that gives nominal displacement sensitivity at Point B, as short runways
     * may have it.
     *
     * <p>ICAO Annex 10 Vol I, 3.1.3.7.1, Category I only.
     *
     * @param datumDistance from the centre of the array to the reference datum (m)
     * @param runwayLength the length of the runway (m), above 0
     * @param limits the published limits
     * @return the course width
     * @throws IllegalArgumentException if the runway is longer than the rule allows, or a distance
     *     is outside its range
     */
    public static CourseWidth byAnnex10AtPointB(
            double datumDistance, double runwayLength, Limits limits) {
        double longest = limits.of("width.short-runway", "I").most("m");
        Require.above("runway length", runwayLength, 0, "m");
        Require.within("length of a short runway", runwayLength, new Range(0, longest), "m");
        double pointB = datumDistance + limits.of("point.b").nominal("m");
        return annex10(datumDistance, pointB, limits);
    }

    /**
     * Returns the width tailored to 700 ft at the threshold: W = 2 atan(350 ft / D), clipped.
     *
     * <p>FAA practice; the width at the threshold and the clips are taken from {@code limits}.
     *
     * @param thresholdDistance D, from the centre of the array to the threshold (m)
     * @param limits the published limits
     * @return the course width
     * @throws IllegalArgumentException if the distance is outside its range
     */
    public static CourseWidth byFaa(double thresholdDistance, Limits limits) {
        double half = limits.of("width.faa-threshold").nominal("ft") * FOOT / 2;
        double exact = sector(half, thresholdDistance);
        double least = limits.of("width.faa-tailored").least("deg");
        double most = limits.of("width.faa-tailored").most("deg");
        return new CourseWidth(Math.max(least, Math.min(most, exact)), exact, thresholdDistance);
    }

    private static CourseWidth annex10(double datumDistance, double at, Limits limits) {
        double sensitivity = limits.of("sensitivity.nominal").nominal("1/m");
        double exact = sector(Ddm.COURSE_SECTOR_EDGE / sensitivity, at);
        double most = limits.of("width.sector").most("deg");
        return new CourseWidth(Math.min(most, exact), exact, datumDistance);
    }

    private static double sector(double halfWidthInMetres, double distance) {
        Require.within("distance from array", distance, DISTANCES, "m");
        return 2 * Math.toDegrees(Math.atan(halfWidthInMetres / distance));
    }

    /**
     * Tells whether a least or most width changed what the rule gives.
     *
     * @return true if it did
     */
    public boolean isClipped() {
        return width != unclipped;
    }

    /**
     * Returns the azimuth of the half-width point on the 150 Hz side.
     *
     * @return half the width (deg)
     */
    public double halfWidth() {
        return width / 2;
    }

    /**
     * Returns the lateral distance of a half-width point from the course line at the datum.
     *
     * @return D tan(W/2) (m)
     */
    public double halfWidthAtDatum() {
        return datumDistance * Math.tan(Math.toRadians(halfWidth()));
    }

    /**
     * Returns the deflection for a degree of azimuth: 0.155 / (W/2).
     *
     * @return the angular sensitivity (DDM/deg)
     */
    public double ddmPerDegree() {
        return Ddm.COURSE_SECTOR_EDGE / halfWidth();
    }

    /**
     * Returns the displacement sensitivity at the datum: 0.155 / (D tan(W/2)).
     *
     * @return the sensitivity (DDM/m)
     */
    public double ddmPerMetre() {
        return Ddm.COURSE_SECTOR_EDGE / halfWidthAtDatum();
    }

    /**
     * Returns a displacement given in metres, counting DDM as linear in metres at the datum.
     *
     * <p>Counting it as linear in degrees instead would differ by less than 0.1 % in a sector of
     * 6°.
     *
     * @param metres lateral displacement at the datum (m), positive on the 150 Hz side
     * @return the displacement
     * @throws IllegalArgumentException if {@code metres} is not finite
     */
    public Displacement ofMetres(double metres) {
        Require.finite("displacement", metres, "m");
        double ddm = metres * ddmPerMetre();
        double azimuth = Math.toDegrees(Math.atan(metres / datumDistance));
        return new Displacement(metres, azimuth, ddm, Ddm.toMicroamps(ddm));
    }

    /**
     * Returns a displacement given as DDM.
     *
     * @param ddm the DDM (DDM)
     * @return the displacement
     * @throws IllegalArgumentException if {@code ddm} is not finite
     */
    public Displacement ofDdm(double ddm) {
        Require.finite("DDM", ddm, "");
        return ofMetres(ddm / ddmPerMetre());
    }

    /**
     * Returns how far the course line may lie from the runway centre line at the datum.
     *
     * <p>ICAO Annex 10 Vol I, 3.1.3.6.1: metres, or a DDM where that is stated and smaller.
     *
     * @param category "I", "II" or "III"
     * @param limits the published limits
     * @return the limit, as the displacement on the 150 Hz side
     * @throws IllegalArgumentException if the category has no limit
     */
    public Displacement alignmentLimit(String category, Limits limits) {
        return smaller("alignment.annex10", category, limits);
    }

    /**
     * Returns the course shift at the datum at which a monitor must alarm.
     *
     * <p>ICAO Annex 10 Vol I, 3.1.3.11.2: metres, or a DDM where that is stated and smaller.
     *
     * @param category "I", "II" or "III"
     * @param limits the published limits
     * @return the limit, as the displacement on the 150 Hz side
     * @throws IllegalArgumentException if the category has no limit
     */
    public Displacement monitorShiftLimit(String category, Limits limits) {
        return smaller("monitor.shift", category, limits);
    }

    private Displacement smaller(String key, String category, Limits limits) {
        Displacement inMetres = ofMetres(limits.of(key, category).most("m"));
        if (!limits.has(key + "-ddm", category)) {
            return inMetres;
        }
        Displacement inDdm = ofDdm(limits.of(key + "-ddm", category).most("1"));
        return inDdm.metres() < inMetres.metres() ? inDdm : inMetres;
    }
}
