/**
 * Setting up what a transmitter sends: trimming the feeds from the sideband phase offsets, phasing
 * in quadrature, setting widths. Offsets and cuts belong together: a positive offset advances the
 * sideband-only (SBO) signal to make up for an SBO feed that is too long, so a cut of the SBO feed
 * lowers the offset needed and a cut of the carrier (CSB) feed raises it.
 */
package halfwidth.localizer.transmit;
