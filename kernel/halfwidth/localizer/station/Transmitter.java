package halfwidth.localizer.station;

/** One of the two transmitters, of which either feeds the array. */
public enum Transmitter {
    /** Transmitter 1. */
    ONE,
    /** Transmitter 2. */
    TWO
}
