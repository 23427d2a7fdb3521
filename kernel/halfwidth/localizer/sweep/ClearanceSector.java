package halfwidth.localizer.sweep;

import halfwidth.localizer.Range;
import halfwidth.localizer.limits.Limit;
import halfwidth.localizer.limits.Limits;
import halfwidth.localizer.signal.Ddm;
import java.util.List;

/**
 * A range of azimuths on either side of the course line, with the least clearance in it.
 *
 * @param azimuths the range, counted from the course line outward on either side (deg), its inner
 *     end excluded and its outer end included
 * @param limit the least clearance, a ratio or in µA as published
 * @param fromCourseLine whether the limit holds only from where the slope of the course reaches it,
 *     as next to the course sector
 */
public record ClearanceSector(Range azimuths, Limit limit, boolean fromCourseLine) {

    /**
     * Returns the sectors of ICAO Annex 10 Vol I, 3.1.3.7.3.
     *
     * @param limits the published limits
     * @return the inner and the outer sector
     */
    public static List<ClearanceSector> annex10(Limits limits) {
        return List.of(
                sector("clearance.annex10-inner", true, limits),
                sector("clearance.annex10-outer", false, limits));
    }

    /**
     * Returns sectors 1 and 2 of FAA Order 8200.1.
     *
     * @param limits the published limits
     * @return the two sectors
     */
    public static List<ClearanceSector> faa(Limits limits) {
        return List.of(
                sector("clearance.faa-inner", true, limits),
                sector("clearance.faa-outer", false, limits));
    }

    private static ClearanceSector sector(String key, boolean fromCourseLine, Limits limits) {
        Limit azimuths = limits.of(key + "-azimuth");
        return new ClearanceSector(
                new Range(azimuths.least("deg"), azimuths.most("deg")),
                limits.of(key),
                fromCourseLine);
    }

    /**
     * Returns the least clearance as DDM.
     *
     * @return the DDM (DDM)
     * @throws IllegalStateException if the limit is in another unit than 1 or uA
     */
    public double leastDdm() {
        return limit.unit().equals("uA") ? Ddm.fromMicroamps(limit.least("uA")) : limit.least("1");
    }

    /** Whether an azimuth of either side lies in the sector. */
    boolean contains(double azimuth) {
        double outward = Math.abs(azimuth);
        return outward > azimuths.least() && outward <= azimuths.most();
    }
}
