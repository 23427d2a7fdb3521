/**
 * The monitor of the array: its return lines, the null of each antenna pair, the composite of all
 * pairs, and the points at which it has to alarm.
 *
 * <p>Signs. At the elements of a pair the one on the 90 Hz side (left as a pilot facing the array
 * sees it, right from behind) carries C + jS and the one on the 150 Hz side C − jS, for then the
 * far field is C(e+e*) and 2S sin, and 150 Hz predominates at positive azimuth. The excess δ of a
 * pair is the electrical length of the return of the 150 Hz side less that of the 90 Hz side:
 * positive where the 150 Hz side delays more, and brought down by cutting the 150 Hz side. Like any
 * longer path to one element, a positive excess moves the reading towards 90 Hz.
 *
 * <p>Readings of a pair or of the composite are of its sidebands alone, in phase with the carrier.
 * What the carrier by itself reads, with the SBO off, stands in every one of them and has to be
 * taken off first: 0.003 DDM hides 8° of excess in a pair of K = 0.044.
 */
package halfwidth.localizer.monitor;
