/** Shows a run: as text for a terminal, as a self-contained HTML sheet, as a CSV of results. */
package halfwidth.show;
