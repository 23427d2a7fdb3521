package halfwidth.localizer.sweep;

import halfwidth.localizer.Require;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Readings over azimuth, from the 90 Hz side to the 150 Hz side.
 *
 * @param readings the readings, at least one, no two at one azimuth
 */
public record Sweep(List<SweepReading> readings) {

    /**
     * @throws IllegalArgumentException if there is no reading or two are at one azimuth
     */
    public Sweep {
        List<SweepReading> sorted = new ArrayList<>(readings);
        sorted.sort(Comparator.comparingDouble(SweepReading::azimuth));
        if (sorted.isEmpty()) {
            throw new IllegalArgumentException("readings must be at least 1");
        }
        for (int i = 1; i < sorted.size(); i++) {
            if (sorted.get(i).azimuth() == sorted.get(i - 1).azimuth()) {
                throw new IllegalArgumentException(
                        "azimuth " + sorted.get(i).azimuth() + " deg must stand once");
            }
        }
        readings = List.copyOf(sorted);
    }

    /**
     * Returns the sweep of two columns of a table.
     *
     * @param azimuths where the readings were taken (deg)
     * @param ddms the readings (DDM), NaN where one is missing
     * @return the sweep
     * @throws IllegalArgumentException if the columns differ in length or a value is outside its
     *     range
     */
    public static Sweep ofColumns(double[] azimuths, double[] ddms) {
        Require.sameLength("azimuths and DDM readings", azimuths.length, ddms.length);
        List<SweepReading> readings = new ArrayList<>();
        for (int i = 0; i < azimuths.length; i++) {
            readings.add(
                    Double.isNaN(ddms[i])
                            ? SweepReading.missing(azimuths[i])
                            : SweepReading.of(azimuths[i], ddms[i]));
        }
        return new Sweep(readings);
    }

    /**
     * Returns the readings that were taken.
     *
     * @return the readings with a value, by azimuth
     */
    public List<SweepReading> present() {
        return readings.stream().filter(reading -> !reading.isMissing()).toList();
    }

    /**
     * Returns the readings that are missing.
     *
     * @return the readings without a value, by azimuth
     */
    public List<SweepReading> missing() {
        return readings.stream().filter(SweepReading::isMissing).toList();
    }

    /**
     * Returns the DDM between readings, straight from one to the next.
     *
     * @param azimuth where (deg)
     * @return the DDM (DDM), empty outside the readings that were taken
     * @throws IllegalArgumentException if {@code azimuth} is not finite
     */
    public OptionalDouble ddmAt(double azimuth) {
        Require.finite("azimuth", azimuth, "deg");
        SweepReading below = null;
        for (SweepReading reading : present()) {
            if (reading.azimuth() == azimuth) {
                return reading.ddm();
            }
            if (reading.azimuth() > azimuth) {
                return below == null
                        ? OptionalDouble.empty()
                        : OptionalDouble.of(Straight.between(below, reading).ddmAt(azimuth));
            }
            below = reading;
        }
        return OptionalDouble.empty();
    }

    /**
     * Returns the sweep seen in a mirror: sides and tones exchanged.
     *
     * @return the mirrored sweep
     */
    public Sweep mirrored() {
        return new Sweep(
                readings.stream()
                        .map(
                                reading ->
                                        reading.isMissing()
                                                ? SweepReading.missing(-reading.azimuth())
                                                : SweepReading.of(
                                                        -reading.azimuth(), -reading.value()))
                        .toList());
    }
}
