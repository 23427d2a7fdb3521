package halfwidth.localizer.monitor;

/**
 * What one pair adds to the composite.
 *
 * @param name what the crew calls the pair
 * @param ddm its part of the composite reading (DDM): 2 Re(its sideband/the whole carrier); the
 *     parts of all pairs sum to the reading
 * @param carrierPart its part of the whole carrier (1): Re(its carrier/the whole carrier); the
 *     parts of all pairs sum to 1
 * @param perDegree how much the composite reading changes with the pair's excess (DDM/deg)
 * @param standardUncertainty what the pair's phases add to the uncertainty of the reading (DDM)
 */
public record PairShare(
        String name,
        double ddm,
        double carrierPart,
        double perDegree,
        double standardUncertainty) {}
