package halfwidth.demo;

import halfwidth.localizer.array.ArrayFile;
import halfwidth.localizer.array.ArrayModel;
import halfwidth.localizer.station.Channel;
import halfwidth.localizer.station.Instruments;
import halfwidth.localizer.station.Instruments.Precision;
import halfwidth.localizer.station.Radiated;
import halfwidth.localizer.station.SimulatedStation;
import halfwidth.localizer.station.Transmitter;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.Map;
import java.util.Random;

/**
 * The invented localizer of Varnholt Heath, runway 14, Category II, on channel 24Y of the ICAO
 * pairing table (108.75 MHz, Annex 10 Vol I, 3.1.6; from memory).
 */
final class Station {
    static final String ARRAY = "datasets/demo/array.csv";
    static final String FREQUENCY = "108.75 MHz";
    static final double METRES_PER_INCH = 0.0254;

    /** A sixteenth of an inch. */
    static final double TOOL = METRES_PER_INCH / 16;

    /** Chosen among others for two lost marks, and for feeds and returns that need several cuts. */
    private static final long SEED = 2509;

    static final Precision DDM = new Precision(0.001, 0.0003);
    static final Precision PHASE = new Precision(0.5, 0.2);

    private final ArrayModel array = ArrayFile.read(Path.of(ARRAY));
    private final SimulatedStation simulated =
            SimulatedStation.random(SEED, array, new Instruments(DDM, PHASE, TOOL));
    private final Random noise = new Random(SEED);
    private final Map<Channel, Map<Transmitter, Double>> amplitudes = new EnumMap<>(Channel.class);

    Station() {
        for (Channel channel : Channel.values()) {
            amplitudes.put(
                    channel, new EnumMap<>(Map.of(Transmitter.ONE, 1.0, Transmitter.TWO, 1.0)));
        }
    }

    ArrayModel array() {
        return array;
    }

    SimulatedStation simulated() {
        return simulated;
    }

    /** What an instrument shows that the simulated station does not have: tape, analyser, … */
    double read(double truth, Precision precision) {
        double shown = truth + precision.noise() * noise.nextGaussian();
        return precision.resolution() == 0
                ? shown
                : Math.rint(shown / precision.resolution()) * precision.resolution();
    }

    void setAmplitude(Transmitter transmitter, Channel channel, double setting) {
        amplitudes.get(channel).put(transmitter, setting);
        simulated.setSboAmplitude(transmitter, channel, setting);
    }

    double amplitude(Transmitter transmitter, Channel channel) {
        return amplitudes.get(channel).get(transmitter);
    }

    /** DDM of the carrier by itself, read with the SBO off. */
    double ownDdm(Transmitter transmitter, Channel channel) {
        simulated.setSboAmplitude(transmitter, channel, 0);
        double reading = simulated.ddmFarAway(0, transmitter, alone(channel));
        simulated.setSboAmplitude(transmitter, channel, amplitude(transmitter, channel));
        return reading;
    }

    static Radiated alone(Channel channel) {
        return channel == Channel.COURSE ? Radiated.COURSE : Radiated.CLEARANCE;
    }

    static String number(Transmitter transmitter) {
        return transmitter == Transmitter.ONE ? "1" : "2";
    }

    static String word(Channel channel) {
        return channel == Channel.COURSE ? "course" : "clearance";
    }
}
