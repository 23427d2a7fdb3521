package halfwidth.demo;

import halfwidth.localizer.array.ArrayModel;
import halfwidth.localizer.array.Carrier;
import halfwidth.localizer.line.Line;
import halfwidth.localizer.station.Channel;
import halfwidth.localizer.station.SignalTruth;
import halfwidth.localizer.station.Transmitter;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.analysis.solvers.BrentSolver;

/** What the station really radiates when its season is over, or really needs; for checks only. */
record Field(Season season) {

    private SignalTruth hidden(Channel channel, Transmitter transmitter) {
        return season.station().simulated().truth().signal(transmitter, channel);
    }

    private double feedBeta(Channel channel) {
        double factor = season.station().simulated().truth().lines().feedVelocityFactor();
        return new Line(factor, frequency(channel)).phaseConstant();
    }

    private double frequency(Channel channel) {
        return season.station().array().carriers().get(channel.ordinal()).frequency();
    }

    /** The offset that would bring the sidebands in phase after all cuts (deg). */
    double offsetNeeded(Channel channel, Transmitter transmitter) {
        return hidden(channel, transmitter).sboDelay()
                - feedBeta(channel) * season.phasing().netCut(channel);
    }

    double degreesPerInch(Channel channel) {
        return feedBeta(channel) * Station.METRES_PER_INCH;
    }

    /** How far the sidebands are ahead (deg). */
    double lead(Channel channel, Transmitter transmitter) {
        return season.phasing().offset(channel, transmitter) - offsetNeeded(channel, transmitter);
    }

    /** The array as a transmitter feeds it with part of the SBO that its course is set to. */
    ArrayModel fed(Transmitter transmitter, double courseAmplitude, double clearanceAmplitude) {
        ArrayModel design = season.station().array();
        List<Carrier> carriers = new ArrayList<>();
        for (Channel channel : Channel.values()) {
            double set = channel == Channel.COURSE ? courseAmplitude : clearanceAmplitude;
            double scale = set * hidden(channel, transmitter).sboAmplitude();
            carriers.add(
                    design.carriers()
                            .get(channel.ordinal())
                            .withSboScaled(scale)
                            .withSboAdvanced(lead(channel, transmitter)));
        }
        return new ArrayModel(design.name(), design.positions(), design.pattern(), carriers);
    }

    /** Both carriers' DDM, each counted as the detector weighs it. */
    double balance(Transmitter transmitter) {
        return hidden(Channel.COURSE, transmitter).balance();
    }

    /** The whole sector between the points of 0.155 about the course line, far away (deg). */
    static double width(ArrayModel fed) {
        BrentSolver solver = new BrentSolver(1e-12);
        double on150 = solver.solve(100, at -> fed.farField(at).ddm() - 0.155, 0.5, 4);
        double on90 = solver.solve(100, at -> fed.farField(at).ddm() + 0.155, -4, -0.5);
        return on150 - on90;
    }
}
