package halfwidth.localizer.station;

import halfwidth.localizer.array.Place;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * All that a station hides; for tests, never for a procedure.
 *
 * @param signals by transmitter and channel
 * @param lines the real lines
 * @param returns the monitor return of each element, in the array's order
 * @param lostMarks the marks that are not to be found
 */
public record Truth(
        Map<Transmitter, Map<Channel, SignalTruth>> signals,
        Lines lines,
        List<Return> returns,
        Set<Place> lostMarks) {

    /**
     * The real lines, which differ from their data sheets.
     *
     * @param feedVelocityFactor of the feed lines (1)
     * @param returnVelocityFactor of the monitor return lines (1)
     * @param quadraturePiece electrical length of the piece that should be 90° (deg)
     * @param adapter electrical length of the adapter for the returns (deg)
     */
    public record Lines(
            double feedVelocityFactor,
            double returnVelocityFactor,
            double quadraturePiece,
            double adapter) {}

    /**
     * One monitor return line.
     *
     * @param length as found (m)
     * @param gain what its pick-up and line leave of the amplitude (1)
     */
    public record Return(double length, double gain) {}

    public Truth {
        signals = Map.copyOf(signals);
        returns = List.copyOf(returns);
        lostMarks = Set.copyOf(lostMarks);
    }

    /**
     * Returns what is hidden of one signal.
     *
     * @param transmitter which transmitter
     * @param channel which channel
     * @return its truth
     */
    public SignalTruth signal(Transmitter transmitter, Channel channel) {
        return signals.get(transmitter).get(channel);
    }
}
