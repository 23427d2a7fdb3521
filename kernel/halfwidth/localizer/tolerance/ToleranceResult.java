package halfwidth.localizer.tolerance;

import halfwidth.localizer.pattern.PredictedCourse;

/**
 * What the draws gave.
 *
 * @param draws how many there were (1)
 * @param lost how many of them had no course line, or a side that does not reach 0.155 (1); they
 *     count in the clearances only
 * @param nominal the course sector without errors
 * @param courseShift the course line's azimuth less the nominal one's (deg)
 * @param width the course width (deg)
 * @param symmetry90 the part of the width on the 90 Hz side (%)
 * @param innerClearance the least DDM of either side from where it reaches 0.180 to 10° (DDM), or
 *     the greatest one where it does not get there
 * @param outerClearance the least DDM of either side from 10° to 35° (DDM)
 */
public record ToleranceResult(
        long draws,
        long lost,
        PredictedCourse nominal,
        FigureDistribution courseShift,
        FigureDistribution width,
        FigureDistribution symmetry90,
        FigureDistribution innerClearance,
        FigureDistribution outerClearance) {}
