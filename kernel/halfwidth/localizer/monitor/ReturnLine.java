package halfwidth.localizer.monitor;

import halfwidth.localizer.Range;
import halfwidth.localizer.Require;
import java.util.OptionalDouble;

/**
 * One monitor return, measured through against another one.
 *
 * @param name what the crew calls it
 * @param side the side of the array that it comes from
 * @param delay its electrical length less that of the line measured against (deg), positive =
 *     delays more; known to a whole turn, kept as 0 to 360
 * @param tapeLength its length by tape or time-domain reflectometer (m), empty if not measured
 */
public record ReturnLine(String name, ArraySide side, double delay, OptionalDouble tapeLength) {
    private static final double TURN = 360;
    private static final Range PHASES = new Range(-TURN, TURN);
    private static final Range LENGTHS = new Range(0, 2000);

    /**
     * @throws IllegalArgumentException if the name is blank, the side is NEITHER, the delay is
     *     beyond ±360 deg, or the length is not 0 to 2000 m
     */
    public ReturnLine {
        if (name.isBlank()) {
            throw new IllegalArgumentException("name of a return line must not be blank");
        }
        ArraySide.checked(side, "side of return line " + name);
        Require.within("delay of " + name, delay, PHASES, "deg");
        tapeLength.ifPresent(l -> Require.within("length of " + name, l, LENGTHS, "m"));
        double turned = delay - TURN * Math.floor(delay / TURN);
        delay = turned < TURN ? turned : 0;
    }

    /**
     * Takes a delay: a longer line has the larger number.
     *
     * @param name what the crew calls the line
     * @param side the side of the array that it comes from
     * @param delay electrical length against the reference (deg)
     * @return the line, without a length by tape
     * @throws IllegalArgumentException as the record does
     */
    public static ReturnLine ofDelay(String name, ArraySide side, double delay) {
        return new ReturnLine(name, side, delay, OptionalDouble.empty());
    }

    /**
     * Takes the phase of a transmission measurement: a longer line has the smaller number, as the
     * argument of S21 has on a network analyser.
     *
     * @param name what the crew calls the line
     * @param side the side of the array that it comes from
     * @param phase phase of the signal against that through the reference (deg), positive = leads
     * @return the line, without a length by tape
     * @throws IllegalArgumentException as the record does
     */
    public static ReturnLine ofTransmissionPhase(String name, ArraySide side, double phase) {
        return ofDelay(name, side, -phase);
    }

    /**
     * Adds a coarse length, which tells whole turns apart.
     *
     * @param length length by tape or time-domain reflectometer (m)
     * @return the line with its length
     * @throws IllegalArgumentException if the length is not 0 to 2000 m
     */
    public ReturnLine withTapeLength(double length) {
        return new ReturnLine(name, side, delay, OptionalDouble.of(length));
    }
}
