/**
 * Values with a standard uncertainty, first-order propagation as in the Guide to the Expression of
 * Uncertainty in Measurement (JCGM 100:2008), and its Monte Carlo check.
 */
package halfwidth.localizer.uncertainty;
