package halfwidth.localizer.transmit;

import halfwidth.localizer.uncertainty.Estimate;
import halfwidth.localizer.uncertainty.Propagation;
import halfwidth.localizer.uncertainty.Quantity;
import java.util.function.ToDoubleFunction;

/**
 * The phase error of the sidebands, however large, from readings without and with a 90-degree piece
 * of line in the SBO path.
 *
 * <p>Without the piece the deflection is c = D cos ε, with a piece that delays by p it is s = D
 * cos(ε − p) = c cos p + D sin ε sin p. So D sin ε = (s − c cos p)/sin p, and D itself, which
 * {@link QuadraturePhasing} has to know, need not be known: this is where a transmitter starts that
 * was never phased. Points near the array add a phase of their own to the error, as they do there.
 *
 * @param without DDM at the two points without the piece
 * @param with DDM at the same points, at the same SBO setting, with the piece in
 * @param piece p, the electrical length of the piece (deg), positive = delays; 45 to 135
 */
public record CoarsePhasing(BothSides without, BothSides with, Estimate piece) {
    /** Beyond this many standard uncertainties a deflection is surely there. */
    private static final double SURE = 3;

    private static final double TURN = 360;

    /**
     * @throws IllegalArgumentException if the piece is not 45 to 135 deg, or both deflections are
     *     lost in the receiver's resolution
     */
    public CoarsePhasing {
        QuadraturePhasing.checkPiece(piece);
        double u = without.deflection().standardUncertainty();
        double whole = Math.hypot(without.deflection().value(), with.deflection().value());
        if (!(whole > SURE * Math.hypot(u, with.deflection().standardUncertainty()))) {
            throw new IllegalArgumentException(
                    String.format(
                            "deflections %.4g without and %.4g with the piece must not both be lost"
                                    + " in the receiver's resolution: is the SBO signal on, and are"
                                    + " the two points on opposite sides of the course line?",
                            without.deflection().value(), with.deflection().value()));
        }
    }

    /**
     * Returns the phase error: ε = atan2((s − c cos p)/sin p, c).
     *
     * @return ε (deg), positive = the SBO signal leads; −180 to 180, beyond ±90 for an SBO signal
     *     of reversed sign; its uncertainty to first order (JCGM 100:2008, equation (10))
     */
    public Estimate phaseError() {
        double middle =
                angle(without.deflection().value(), with.deflection().value(), piece.value());
        // Turned to the middle, so that no step of a derivative crosses from 180 to -180.
        return propagated(x -> middle + Math.IEEEremainder(angle(x[0], x[1], x[2]) - middle, TURN));
    }

    /**
     * Returns the deflection that sidebands in phase would give: D = √(c² + (D sin ε)²).
     *
     * @return D (DDM)
     */
    public Estimate inPhaseDeflection() {
        return propagated(x -> Math.hypot(x[0], across(x[0], x[1], x[2])));
    }

    private Estimate propagated(ToDoubleFunction<double[]> function) {
        return Propagation.of(
                        function,
                        Quantity.of("without", without.deflection()),
                        Quantity.of("with", with.deflection()),
                        Quantity.of("piece", piece))
                .result();
    }

    private static double angle(double c, double s, double piece) {
        return Math.toDegrees(Math.atan2(across(c, s, piece), c));
    }

    /** D sin ε. */
    private static double across(double c, double s, double piece) {
        double p = Math.toRadians(piece);
        return (s - c * Math.cos(p)) / Math.sin(p);
    }
}
