/**
 * Worked pages: {@link halfwidth.page.Pages} reads a CommonMark file into its prose, fields, tables
 * of readings, steps, results and checks, and refuses a malformed one by file and line; {@link
 * halfwidth.page.Filled} is a page with what was typed into it.
 */
package halfwidth.page;
