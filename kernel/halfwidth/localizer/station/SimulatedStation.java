package halfwidth.localizer.station;

import halfwidth.localizer.Range;
import halfwidth.localizer.Require;
import halfwidth.localizer.array.ArrayModel;
import halfwidth.localizer.array.Carrier;
import halfwidth.localizer.array.FeedPath;
import halfwidth.localizer.array.Place;
import halfwidth.localizer.array.Prediction;
import halfwidth.localizer.line.Line;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;

/**
 * A station to practise on: the same seed and the same handling give the same readings.
 *
 * <p>It keeps its state, as a real one does, and is for one thread. Nothing that is cut comes back.
 */
public final class SimulatedStation {
    /** Velocity factor of all lines by their invented data sheet (1). */
    public static final double VELOCITY_FACTOR = 0.84;

    /** What the piece for phasing in quadrature should delay by (deg). */
    public static final double QUADRATURE_PIECE = 90;

    /** What the adapter for the monitor returns is said to delay by (deg). */
    public static final double ADAPTER = 20;

    static final Range CUTS = new Range(0, 10);

    private static final Range ONE_CUT = new Range(0, 5);
    private static final double MARK_DISTANCE = 300;
    private static final double[] MARKS = {0, 1, 2, 3, 4, 5, 6, 8, 10, 15, 20, 25, 30, 35};

    private final ArrayModel array;
    private final Instruments instruments;
    private final Truth truth;
    private final Noise noise;
    private final Transmission transmission;
    private final SimulatedMonitor monitor;

    private SimulatedStation(long seed, ArrayModel array, Instruments instruments) {
        this.array = array;
        this.instruments = instruments;
        this.truth = new TruthDraw(seed).draw(array.positions().size(), marks());
        this.noise = new Noise(seed);
        this.transmission = new Transmission(array, truth);
        this.monitor = new SimulatedMonitor(this);
    }

    /**
     * Builds a station with plausible instruments.
     *
     * @param seed what decides all that is hidden
     * @param array the array it feeds
     * @return the station as the crew finds it
     */
    public static SimulatedStation random(long seed, ArrayModel array) {
        return random(seed, array, Instruments.plausible());
    }

    /**
     * Builds a station.
     *
     * @param seed what decides all that is hidden
     * @param array the array it feeds
     * @param instruments what the crew reads and cuts with
     * @return the station as the crew finds it
     */
    public static SimulatedStation random(long seed, ArrayModel array, Instruments instruments) {
        return new SimulatedStation(seed, array, instruments);
    }

    /**
     * Returns the array by its design.
     *
     * @return the array, which hides nothing
     */
    public ArrayModel array() {
        return array;
    }

    /**
     * Returns what the crew reads and cuts with.
     *
     * @return the instruments
     */
    public Instruments instruments() {
        return instruments;
    }

    /**
     * Returns all that is hidden. For tests only: no crew could know it.
     *
     * @return the truth as the station was found
     */
    public Truth truth() {
        return truth;
    }

    /**
     * Returns the line of all feeds and returns as its data sheet has it.
     *
     * @return the line at the course frequency
     */
    public Line dataSheetLine() {
        return new Line(VELOCITY_FACTOR, array.course().frequency());
    }

    /**
     * Returns where the marks of the ground check should be, lost ones included.
     *
     * @return the marks from −35° to 35°, 300 m from the array's centre
     */
    public List<Place> marks() {
        List<Place> marks = new ArrayList<>();
        DoubleStream.of(MARKS)
                .flatMap(a -> a == 0 ? DoubleStream.of(0) : DoubleStream.of(-a, a))
                .sorted()
                .forEach(azimuth -> marks.add(new Place(azimuth, MARK_DISTANCE)));
        return List.copyOf(marks);
    }

    /**
     * Sets the phase of a transmitter's sidebands.
     *
     * @param transmitter which transmitter
     * @param channel which channel
     * @param degrees the offset (deg), positive advances the SBO, −180 to 180
     * @throws IllegalArgumentException if it is outside its range or there is no such channel
     */
    public void setSboOffset(Transmitter transmitter, Channel channel, double degrees) {
        transmission.setOffset(transmitter, channel, degrees);
    }

    /**
     * Sets the amplitude of a transmitter's sidebands.
     *
     * @param transmitter which transmitter
     * @param channel which channel
     * @param setting amplitude over that as found (1), 0 to 10
     * @throws IllegalArgumentException if it is outside its range or there is no such channel
     */
    public void setSboAmplitude(Transmitter transmitter, Channel channel, double setting) {
        transmission.setAmplitude(transmitter, channel, setting);
    }

    /**
     * Puts the 90° piece into the SBO path of a channel, where both transmitters pass it.
     *
     * @param channel which channel
     * @throws IllegalStateException if it is in already
     */
    public void insertQuadraturePiece(Channel channel) {
        transmission.insertPiece(channel);
    }

    /**
     * Takes the 90° piece out again.
     *
     * @param channel which channel
     * @throws IllegalStateException if it is not in
     */
    public void removeQuadraturePiece(Channel channel) {
        transmission.removePiece(channel);
    }

    /**
     * Cuts a feed line shorter, for both transmitters.
     *
     * @param path which feed
     * @param metres how much to cut off (m), 0 to 5
     * @return how much was cut, to the step of the tool (m)
     * @throws IllegalArgumentException if there is no such feed, or its cuts add up to above 10 m
     */
    public double cutFeed(FeedPath path, double metres) {
        double cut = toolCut(metres);
        transmission.cut(path, cut);
        return cut;
    }

    double toolCut(double metres) {
        Require.within("length to cut off", metres, ONE_CUT, "m");
        return Noise.step(metres, instruments.cutStep());
    }

    /**
     * Reads the DDM at a place near the array.
     *
     * @param place where the receiver stands
     * @param transmitter the transmitter on the air
     * @param radiated what it radiates
     * @return the DDM shown (DDM), empty where the place is a mark that is lost
     * @throws IllegalArgumentException if the place is among the elements, or the array has nothing
     *     of what should be radiated
     */
    public OptionalDouble ddmAt(Place place, Transmitter transmitter, Radiated radiated) {
        if (truth.lostMarks().contains(place)) {
            return OptionalDouble.empty();
        }
        ArrayModel fed = fed(transmitter, radiated);
        Prediction prediction = fed.nearField(place.azimuth(), place.distance());
        return OptionalDouble.of(shown(prediction, transmitter, radiated));
    }

    /**
     * Reads the DDM far away, as a flight check does.
     *
     * @param azimuth where the receiver is (deg), positive on the 150 Hz side
     * @param transmitter the transmitter on the air
     * @param radiated what it radiates
     * @return the DDM shown (DDM)
     * @throws IllegalArgumentException if the array has nothing of what should be radiated
     */
    public double ddmFarAway(double azimuth, Transmitter transmitter, Radiated radiated) {
        Prediction prediction = fed(transmitter, radiated).farField(azimuth);
        return shown(prediction, transmitter, radiated);
    }

    private ArrayModel fed(Transmitter transmitter, Radiated radiated) {
        List<Carrier> carriers =
                channels(radiated).stream()
                        .map(channel -> transmission.carrier(transmitter, channel))
                        .toList();
        return new ArrayModel(array.name(), array.positions(), array.pattern(), carriers);
    }

    /** A station with one carrier radiates that when both are asked for. */
    private List<Channel> channels(Radiated radiated) {
        boolean courseOnly = radiated == Radiated.BOTH && array.carriers().size() == 1;
        return courseOnly ? Radiated.COURSE.channels() : radiated.channels();
    }

    private double shown(Prediction prediction, Transmitter transmitter, Radiated radiated) {
        List<Channel> channels = channels(radiated);
        double first = transmission.balance(transmitter, channels.get(0));
        double last = transmission.balance(transmitter, channels.get(channels.size() - 1));
        double weight = prediction.courseWeight();
        return readDdm(prediction.ddm() + weight * first + (1 - weight) * last);
    }

    double readDdm(double truth) {
        return noise.read(truth, instruments.ddm());
    }

    double readPhase(double truth) {
        return noise.read(truth, instruments.phase());
    }

    Transmission transmission() {
        return transmission;
    }

    /**
     * Returns the monitor returns.
     *
     * @return the monitor of this station
     */
    public SimulatedMonitor monitor() {
        return monitor;
    }
}
