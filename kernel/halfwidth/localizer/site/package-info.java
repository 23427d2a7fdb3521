/**
 * Where things are: the course width that fits the runway, what a limit in metres is in DDM, where
 * the marks of a ground check stand, and where a lost one was.
 *
 * <p>A mark lies {@code along} metres out from the centre of the array along the course line, and
 * {@code offset} metres to the 150 Hz side of it. That side is on the right of a pilot on approach,
 * who faces the array, and on the left of someone at the array who looks out along the approach.
 */
package halfwidth.localizer.site;
