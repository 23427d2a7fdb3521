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
 *
 * <p>Each number of a public type states its unit where a machine can read it: one pair of
 * parentheses in its tag, as in {@code @param length L (m), above 0}; a constant in its first
 * sentence. It holds for every entry of a column and for an estimate with its uncertainty. The
 * spellings are those that {@code halfwidth.value.Unit} reads, with {@code deg} for degrees and
 * {@code DDM} for a difference in depth, as in {@code (deg/m)}; {@code (1)} is a plain number: a
 * ratio, a count, a place in a list. {@code (unit)} is that of the object, where a component names
 * it, and {@code (unit of x)} one that the caller chooses, x saying of what.
 */
package halfwidth.localizer;
