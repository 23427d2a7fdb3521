/**
 * A sweep of DDM readings over azimuth: course line, width, symmetry, linearity and clearance of
 * one; the change between two; tone sides that look mistyped; and the drift of a figure over years.
 *
 * <p>A missing reading stays missing: it is counted and named where it keeps something from being
 * judged, and it never changes a number.
 */
package halfwidth.localizer.sweep;
