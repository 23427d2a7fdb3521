/**
 * A simulated station for tests and training: it hides feed phases, line lengths and instrument
 * errors, answers only what a crew could read, and obeys cuts and settings.
 *
 * <p>Every number in it is invented. {@link halfwidth.localizer.station.SimulatedStation} is the
 * entry.
 */
package halfwidth.localizer.station;
