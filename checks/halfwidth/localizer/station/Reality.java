package halfwidth.localizer.station;

import halfwidth.localizer.array.ArrayModel;
import halfwidth.localizer.array.Carrier;
import halfwidth.localizer.line.Line;
import java.util.List;

/** What only a test may know of a station: the truth behind what its crew found. */
record Reality(SimulatedStation station) {

    /** β of the feeds (deg/m). */
    double feedBeta(Channel channel) {
        double frequency = station.array().carriers().get(channel.ordinal()).frequency();
        return new Line(station.truth().lines().feedVelocityFactor(), frequency).phaseConstant();
    }

    /** β of the returns (deg/m). */
    double returnBeta() {
        double factor = station.truth().lines().returnVelocityFactor();
        return new Line(factor, station.array().course().frequency()).phaseConstant();
    }

    /** The offset that a transmitter needs after a net cut (deg). */
    double offset(Transmitter transmitter, Channel channel, double netCut) {
        double delay = station.truth().signal(transmitter, channel).sboDelay();
        return delay - feedBeta(channel) * netCut;
    }

    /** What phasing with the real piece, taken for 90°, adds to every offset (deg). */
    double pieceError() {
        return station.truth().lines().quadraturePiece() - SimulatedStation.QUADRATURE_PIECE;
    }

    /** The middle of the offsets that phasing with the real piece shows (deg). */
    double middleAsPhased(Channel channel, double netCut) {
        return pieceError()
                + (offset(Transmitter.ONE, channel, netCut)
                                + offset(Transmitter.TWO, channel, netCut))
                        / 2;
    }

    /** Deflection at the points of a channel as the station is set now (1). */
    double deflection(Transmitter transmitter, Channel channel, Radiated radiated) {
        List<Carrier> carriers =
                radiated.channels().stream()
                        .filter(c -> c.ordinal() < station.array().carriers().size())
                        .map(c -> station.transmission().carrier(transmitter, c))
                        .toList();
        ArrayModel design = station.array();
        ArrayModel fed =
                new ArrayModel(design.name(), design.positions(), design.pattern(), carriers);
        double azimuth = Crew.points(channel);
        return (fed.farField(azimuth).ddm() - fed.farField(-azimuth).ddm()) / 2;
    }

    /** Excess of a pair's returns after what was cut off them (deg). */
    double excess(AntennaPair pair, double cut150, double cut90) {
        List<Truth.Return> returns = station.truth().returns();
        double on150 = returns.get(pair.element150() - 1).length() - cut150;
        double on90 = returns.get(pair.element90() - 1).length() - cut90;
        return returnBeta() * (on150 - on90);
    }
}
