/**
 * Records: a run of a page as one HTML file that prints as it stands, holds all that is needed to
 * do it again, and tells when a byte of it was changed. {@link halfwidth.record.Verification} does
 * it again.
 */
package halfwidth.record;
