/**
 * Published limits and nominal figures, read from a table that names the document, the section and
 * how sure each figure is. {@link halfwidth.localizer.limits.Limits#published()} is that of the
 * project; no figure of a limit stands in code.
 */
package halfwidth.localizer.limits;
