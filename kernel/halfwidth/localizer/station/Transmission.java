package halfwidth.localizer.station;

import halfwidth.localizer.Range;
import halfwidth.localizer.Require;
import halfwidth.localizer.array.ArrayModel;
import halfwidth.localizer.array.Carrier;
import halfwidth.localizer.array.FeedPath;
import halfwidth.localizer.line.Line;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;

/** Settings of both transmitters and the feed lines that they share, as they are now. */
final class Transmission {
    private static final Range OFFSETS = new Range(-180, 180);
    private static final Range AMPLITUDES = new Range(0, 10);

    private final ArrayModel array;
    private final Truth truth;
    private final Map<Transmitter, Map<Channel, Double>> offsets = table(0);
    private final Map<Transmitter, Map<Channel, Double>> amplitudes = table(1);
    private final Map<FeedPath, Double> cuts = new EnumMap<>(FeedPath.class);
    private final Set<Channel> quadraturePieces = EnumSet.noneOf(Channel.class);

    Transmission(ArrayModel array, Truth truth) {
        this.array = array;
        this.truth = truth;
        for (FeedPath path : FeedPath.values()) {
            cuts.put(path, 0.0);
        }
    }

    private static Map<Transmitter, Map<Channel, Double>> table(double value) {
        Map<Transmitter, Map<Channel, Double>> table = new EnumMap<>(Transmitter.class);
        for (Transmitter transmitter : Transmitter.values()) {
            Map<Channel, Double> row = new EnumMap<>(Channel.class);
            for (Channel channel : Channel.values()) {
                row.put(channel, value);
            }
            table.put(transmitter, row);
        }
        return table;
    }

    void setOffset(Transmitter transmitter, Channel channel, double degrees) {
        Require.within("SBO phase offset", degrees, OFFSETS, "deg");
        offsets.get(transmitter).put(present(channel), degrees);
    }

    void setAmplitude(Transmitter transmitter, Channel channel, double setting) {
        Require.within("SBO amplitude setting", setting, AMPLITUDES, "");
        amplitudes.get(transmitter).put(present(channel), setting);
    }

    void insertPiece(Channel channel) {
        if (!quadraturePieces.add(present(channel))) {
            throw new IllegalStateException("the piece is in the " + channel + " SBO path already");
        }
    }

    void removePiece(Channel channel) {
        if (!quadraturePieces.remove(channel)) {
            throw new IllegalStateException("no piece is in the " + channel + " SBO path");
        }
    }

    void cut(FeedPath path, double metres) {
        present(Channel.of(path));
        double total = cuts.get(path) + metres;
        cuts.put(path, Require.within("all cut off the feed", total, SimulatedStation.CUTS, "m"));
    }

    private Channel present(Channel channel) {
        if (channel.ordinal() >= array.carriers().size()) {
            throw new IllegalArgumentException("array must have a clearance carrier");
        }
        return channel;
    }

    /** The carrier as it feeds the array now, its SBO with all that is hidden. */
    Carrier carrier(Transmitter transmitter, Channel channel) {
        SignalTruth hidden = truth.signal(transmitter, channel);
        double setting = amplitudes.get(transmitter).get(present(channel));
        return array.carriers()
                .get(channel.ordinal())
                .withSboScaled(setting * hidden.sboAmplitude())
                .withSboAdvanced(sboLead(transmitter, channel));
    }

    /** How far the sidebands are ahead: offset − delay + β(SBO cut − CSB cut) − piece. */
    private double sboLead(Transmitter transmitter, Channel channel) {
        double frequency = array.carriers().get(channel.ordinal()).frequency();
        Line feed = new Line(truth.lines().feedVelocityFactor(), frequency);
        double lead =
                offsets.get(transmitter).get(channel)
                        - truth.signal(transmitter, channel).sboDelay()
                        + feed.phaseConstant() * netCut(channel);
        boolean delayed = quadraturePieces.contains(channel);
        return delayed ? lead - truth.lines().quadraturePiece() : lead;
    }

    private double netCut(Channel channel) {
        return channel == Channel.COURSE
                ? cuts.get(FeedPath.COURSE_SBO) - cuts.get(FeedPath.COURSE_CSB)
                : cuts.get(FeedPath.CLEARANCE_SBO) - cuts.get(FeedPath.CLEARANCE_CSB);
    }

    double balance(Transmitter transmitter, Channel channel) {
        return truth.signal(transmitter, channel).balance();
    }
}
