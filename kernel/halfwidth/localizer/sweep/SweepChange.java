package halfwidth.localizer.sweep;

/**
 * Two readings at one azimuth.
 *
 * @param azimuth where (deg)
 * @param before the earlier reading, or the predicted one (DDM, 1)
 * @param after the later reading (DDM, 1)
 */
public record SweepChange(double azimuth, double before, double after) {

    /**
     * Returns the change.
     *
     * @return after less before (DDM, 1)
     */
    public double change() {
        return after - before;
    }
}
