/**
 * What random errors of the feeds do to an array: percentiles of its figures over many thousand
 * draws, on all cores, in a memory that does not grow with the draws. {@link
 * halfwidth.localizer.tolerance.ToleranceStudy} is the entry.
 */
package halfwidth.localizer.tolerance;
