package halfwidth.localizer.station;

import halfwidth.localizer.array.Place;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;

/** Invents what a station hides; each range is wide enough to need the procedure and no wider. */
final class TruthDraw {
    private static final double COMMON_DELAY = 60;
    private static final double OWN_DELAY = 8;
    private static final double AMPLITUDE_ERROR = 0.2;
    private static final double BALANCE = 0.003;
    private static final double VELOCITY_ERROR = 0.03;
    private static final double PIECE_ERROR = 4;
    private static final double ADAPTER_ERROR = 1;
    private static final double RETURN_LENGTH = 40;
    private static final double RETURN_SPREAD = 0.9;
    private static final double RETURN_LOSS = 0.05;
    private static final int MOST_LOST = 2;

    private final SplittableRandom random;

    TruthDraw(long seed) {
        this.random = new SplittableRandom(seed);
    }

    Truth draw(int elements, List<Place> marks) {
        return new Truth(signals(), lines(), returns(elements), lost(marks));
    }

    private Map<Transmitter, Map<Channel, SignalTruth>> signals() {
        Map<Channel, Double> common = new EnumMap<>(Channel.class);
        for (Channel channel : Channel.values()) {
            common.put(channel, about(0, COMMON_DELAY));
        }
        Map<Transmitter, Map<Channel, SignalTruth>> signals = new EnumMap<>(Transmitter.class);
        for (Transmitter transmitter : Transmitter.values()) {
            Map<Channel, SignalTruth> own = new EnumMap<>(Channel.class);
            common.forEach((channel, delay) -> own.put(channel, signal(delay)));
            signals.put(transmitter, Map.copyOf(own));
        }
        return signals;
    }

    private SignalTruth signal(double commonDelay) {
        return new SignalTruth(
                about(commonDelay, OWN_DELAY), about(1, AMPLITUDE_ERROR), about(0, BALANCE));
    }

    private Truth.Lines lines() {
        return new Truth.Lines(
                SimulatedStation.VELOCITY_FACTOR * about(1, VELOCITY_ERROR),
                SimulatedStation.VELOCITY_FACTOR * about(1, VELOCITY_ERROR),
                about(SimulatedStation.QUADRATURE_PIECE, PIECE_ERROR),
                about(SimulatedStation.ADAPTER, ADAPTER_ERROR));
    }

    private List<Truth.Return> returns(int elements) {
        List<Truth.Return> returns = new ArrayList<>();
        for (int n = 0; n < elements; n++) {
            double length = about(RETURN_LENGTH, RETURN_SPREAD / 2);
            returns.add(new Truth.Return(length, 1 - RETURN_LOSS * random.nextDouble()));
        }
        return returns;
    }

    private Set<Place> lost(List<Place> marks) {
        Set<Place> lost = new HashSet<>();
        int number = random.nextInt(MOST_LOST + 1);
        for (int i = 0; i < number; i++) {
            lost.add(marks.get(random.nextInt(marks.size())));
        }
        return lost;
    }

    private double about(double middle, double halfRange) {
        return middle + halfRange * (2 * random.nextDouble() - 1);
    }
}
