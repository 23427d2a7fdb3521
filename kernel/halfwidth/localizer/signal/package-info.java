/** The two-tone signal: DDM, its indicator current, sum and depths of modulation. */
package halfwidth.localizer.signal;
