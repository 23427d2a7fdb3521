package halfwidth.localizer.station;

import halfwidth.localizer.array.FeedPath;
import halfwidth.localizer.transmit.BothSides;
import halfwidth.localizer.uncertainty.Estimate;
import java.util.function.DoubleSupplier;
import java.util.stream.DoubleStream;

/**
 * What a crew on a simulated station can do and read. Nothing here looks at the truth.
 *
 * <p>The procedures know a receiver by its step only, so the crew gives them the step whose u =
 * step/√12 is that of its readings, noise included.
 */
final class Crew {
    /** Everything on a data sheet holds to this part of it (1). */
    private static final double DATA_SHEET = 0.03;

    private static final double PIECE_TOLERANCE = 4;
    private static final double ADAPTER_TOLERANCE = 1;
    private static final double GREATEST_RETURN_LOSS = 0.05;

    private final SimulatedStation station;

    Crew(SimulatedStation station) {
        this.station = station;
    }

    SimulatedStation station() {
        return station;
    }

    /** Reads both sides of the course line, far away. */
    BothSides read(double azimuth, Transmitter transmitter, Radiated radiated) {
        return new BothSides(
                station.ddmFarAway(azimuth, transmitter, radiated),
                station.ddmFarAway(-azimuth, transmitter, radiated),
                ddmStep());
    }

    /** The mean of several readings; rounding averages out as far as the noise dithers it. */
    Estimate mean(int readings, DoubleSupplier reading) {
        double mean = DoubleStream.generate(reading).limit(readings).average().orElseThrow();
        return new Estimate(mean, ddmUncertainty() / Math.sqrt(readings));
    }

    /**
     * What a crew knows of the signal that a monitor is fed with.
     *
     * @param balance DDM of the carrier by itself (1)
     * @param lead what phasing left of the phase of the sidebands (deg)
     */
    record Signal(Estimate balance, Estimate lead) {}

    /** The DDM of the carrier by itself: with the SBO off there is no deflection anywhere. */
    Estimate balance(Transmitter transmitter, double setting, int readings) {
        station.setSboAmplitude(transmitter, Channel.COURSE, 0);
        Estimate balance =
                mean(readings, () -> station.ddmFarAway(0, transmitter, Radiated.COURSE));
        station.setSboAmplitude(transmitter, Channel.COURSE, setting);
        return balance;
    }

    /** What two readings of DDM have to differ by to be told apart, noise included (1). */
    double ddmStep() {
        return Math.sqrt(12) * ddmUncertainty();
    }

    double ddmUncertainty() {
        return uncertainty(station.instruments().ddm());
    }

    double phaseUncertainty() {
        return uncertainty(station.instruments().phase());
    }

    private static double uncertainty(Instruments.Precision precision) {
        return Math.hypot(precision.resolution() / Math.sqrt(12), precision.noise());
    }

    /** β of feeds and returns by the data sheet (deg/m). */
    Estimate dataSheet(Channel channel) {
        double frequency = station.array().carriers().get(channel.ordinal()).frequency();
        double beta = station.dataSheetLine().at(frequency).phaseConstant();
        return Estimate.within(beta, DATA_SHEET * beta);
    }

    static Estimate piece() {
        return Estimate.within(SimulatedStation.QUADRATURE_PIECE, PIECE_TOLERANCE);
    }

    static Estimate adapter() {
        return Estimate.within(SimulatedStation.ADAPTER, ADAPTER_TOLERANCE);
    }

    /** Of two returns that have lost 0 to 5 % of their amplitude (JCGM 100:2008, 4.3.7). */
    static Estimate amplitudeRatio() {
        double one = Estimate.within(0, GREATEST_RETURN_LOSS / 2).standardUncertainty();
        return new Estimate(1, Math.sqrt(2) * one);
    }

    double cutStep() {
        return station.instruments().cutStep();
    }

    static FeedPath sbo(Channel channel) {
        return channel == Channel.COURSE ? FeedPath.COURSE_SBO : FeedPath.CLEARANCE_SBO;
    }

    static FeedPath csb(Channel channel) {
        return channel == Channel.COURSE ? FeedPath.COURSE_CSB : FeedPath.CLEARANCE_CSB;
    }

    /** The points where a channel is phased and its width set (deg). */
    static double points(Channel channel) {
        return channel == Channel.COURSE ? 2 : 10;
    }

    static Radiated alone(Channel channel) {
        return channel == Channel.COURSE ? Radiated.COURSE : Radiated.CLEARANCE;
    }
}
