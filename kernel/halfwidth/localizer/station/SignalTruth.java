package halfwidth.localizer.station;

/**
 * What is hidden of one channel of one transmitter.
 *
 * @param sboDelay how much longer the path of the SBO is than that of the CSB, as found (deg); the
 *     offset that brings the sidebands in phase before any cut
 * @param sboAmplitude SBO amplitude over the array's design where the setting is 1 (1)
 * @param balance DDM of the CSB by itself (DDM), from unequal depths
 */
public record SignalTruth(double sboDelay, double sboAmplitude, double balance) {}
