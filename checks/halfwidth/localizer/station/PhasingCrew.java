package halfwidth.localizer.station;

import halfwidth.localizer.transmit.BothSides;
import halfwidth.localizer.transmit.CoarsePhasing;
import halfwidth.localizer.transmit.QuadraturePhasing;
import halfwidth.localizer.uncertainty.Estimate;

/** Brings the sidebands of one channel in phase, by readings without and with the 90° piece. */
record PhasingCrew(Crew crew, Channel channel) {

    /**
     * What a phasing ended with.
     *
     * @param offset the offset needed (deg), uncertain by its readings and by the piece
     * @param repeatable its standard uncertainty by readings alone (deg): the piece is the same
     *     each time
     */
    record Phased(Estimate offset, double repeatable) {}

    /** From an offset that may be any: coarse first, then at the null. */
    Phased phaseFrom(Transmitter transmitter, double offset) {
        set(transmitter, offset);
        Estimate coarse =
                new CoarsePhasing(inPhase(transmitter), inQuadrature(transmitter), Crew.piece())
                        .phaseError();
        double near = Math.IEEEremainder(offset - coarse.value(), 360);
        set(transmitter, near);
        BothSides inPhase = inPhase(transmitter);
        QuadraturePhasing fine =
                new QuadraturePhasing(
                        inQuadrature(transmitter), inPhase.deflection(), Crew.piece());
        Estimate found = fine.offsetToDialIn(near);
        set(transmitter, found.value());
        return new Phased(found, fine.apparentPhaseError().standardUncertainty());
    }

    private void set(Transmitter transmitter, double offset) {
        crew.station().setSboOffset(transmitter, channel, offset);
    }

    private BothSides inPhase(Transmitter transmitter) {
        return crew.read(Crew.points(channel), transmitter, Crew.alone(channel));
    }

    private BothSides inQuadrature(Transmitter transmitter) {
        crew.station().insertQuadraturePiece(channel);
        BothSides read = inPhase(transmitter);
        crew.station().removeQuadraturePiece(channel);
        return read;
    }
}
