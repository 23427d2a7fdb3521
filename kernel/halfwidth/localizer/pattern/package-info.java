/**
 * The figures of an array's pattern: course line, half-width points, slope, symmetry, linearity,
 * clearance, and how each differs near the array. {@link halfwidth.localizer.pattern.ArrayPattern}
 * is the entry.
 */
package halfwidth.localizer.pattern;
