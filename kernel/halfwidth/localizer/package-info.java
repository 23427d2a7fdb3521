/**
 * The physics of an ILS localizer, free of notebook code; each sub-package holds one part of the
 * work.
 *
 * <p>Conventions that every class below keeps. Lengths are in metres, frequencies in hertz, angles
 * and phases in degrees: phases, azimuths and electrical lengths are set, cut and read in degrees,
 * so a page shows the number that the method got. DDM is a plain ratio, positive where 150 Hz
 * predominates; azimuth is positive on the 150 Hz side of the course line, which a pilot on
 * approach, facing the array, has on the right. A positive sideband phase offset advances the
 * sideband-only (SBO) signal; a positive electrical length delays; every cut shortens. Methods
 * refuse NaN, infinity and impossible values with {@link IllegalArgumentException}, naming the
 * value and the limit that applies, and never return NaN.
 */
package halfwidth.localizer;
