/**
 * The two-tone signal: DDM, its indicator current and its spoken form, depths and their sum, what
 * carrier and sidebands make of each other, and levels in decibels.
 */
package halfwidth.localizer.signal;
