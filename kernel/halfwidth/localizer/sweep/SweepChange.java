package halfwidth.localizer.sweep;

/**
 * Two readings at one azimuth.
 *
 * @param azimuth where (deg)
 * @param before the earlier reading, or the predicted one (DDM)
 * @param after the later reading (DDM)
 */
public record SweepChange(double azimuth, double before, double after) {

    /**
     * Returns the change.
     *
     * @return after less before (DDM)
     */
    public double change() {
        return after - before;
    }
}
