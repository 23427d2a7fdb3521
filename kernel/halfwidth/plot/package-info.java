/**
 * Plots for pages: {@link halfwidth.plot.Plot} is what a step builds; XChart draws it in a theme of
 * our own, and this is the only package that touches XChart.
 */
package halfwidth.plot;
