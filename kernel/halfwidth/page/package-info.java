/**
 * Worked pages: reads a CommonMark file into its prose, fields, tables of readings, steps, results
 * and checks, and refuses a malformed one by file and line.
 */
package halfwidth.page;
