/**
 * Finds words in pages: {@link halfwidth.search.Search} looks through their titles, headings,
 * fields, tables of readings and results.
 */
package halfwidth.search;
