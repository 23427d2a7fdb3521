package halfwidth.localizer.monitor;

import halfwidth.localizer.uncertainty.Estimate;

/**
 * A point of a fitted curve.
 *
 * @param netCut cut of the 150 Hz side less that of the 90 Hz side (m)
 * @param reading the reading there (DDM), with the standard uncertainty of the curve
 */
public record CurvePoint(double netCut, Estimate reading) {}
