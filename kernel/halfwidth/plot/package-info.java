/**
 * Plots for pages, drawn by XChart with a theme of our own; the only package that touches XChart.
 */
package halfwidth.plot;
