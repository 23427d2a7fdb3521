package halfwidth.localizer.site;

/**
 * One displacement from the course line at the reference datum, in every unit it is given in.
 *
 * @param metres lateral displacement at the datum (m), positive on the 150 Hz side
 * @param azimuth seen from the centre of the array (deg)
 * @param ddm the DDM there (DDM)
 * @param microamps the indicator current there (µA)
 */
public record Displacement(double metres, double azimuth, double ddm, double microamps) {}
