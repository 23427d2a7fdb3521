/**
 * Shows a run: {@link halfwidth.show.TextSheet} for a terminal, {@link halfwidth.show.HtmlSheet} as
 * a self-contained file, {@link halfwidth.show.ResultsCsv} for other programs. Whether a result
 * keeps its limits is decided in one place, {@link halfwidth.show.Answer}.
 */
package halfwidth.show;
