package halfwidth.localizer.transmit;

import halfwidth.localizer.Range;
import halfwidth.localizer.Require;
import halfwidth.localizer.cut.PhaseLength;
import halfwidth.localizer.uncertainty.Estimate;

/**
 * The phase error of the sidebands, from readings with a 90-degree piece of line in the SBO path.
 *
 * <p>With the SBO signal leading by ε and a piece that delays by p, the deflection is D cos(ε − p),
 * which for p = 90° is D sin ε: it vanishes when the sidebands are in phase, and is steepest there.
 * The readings on the two sides hold it with opposite signs, and the offset of the course line with
 * the same sign, so half their difference is phase error and half their sum is centring.
 *
 * <p>This is the phase at the two points. In the far field it is that of the signals, but near the
 * array the elements' paths differ and the place adds a phase of its own: take the {@code
 * sboPhase()} that the array's prediction has there off the error. It falls only as 1/distance; of
 * one array with an aperture of 26.5 m it is 14° at 300 m and still 8° at 2 D²/λ. One carrier is on
 * the air.
 *
 * @param readings DDM at the two points with the piece in
 * @param deflection D, half the difference of the same points with sidebands in phase (DDM), above
 *     0
 * @param piece p, the electrical length of the piece (deg), positive = delays; 90 where it is exact
 */
public record QuadraturePhasing(BothSides readings, Estimate deflection, Estimate piece) {
    private static final double QUARTER_TURN = 90;

    /**
     * A quarter turn, and how far a piece may be off it before it is another piece (deg); the
     * sideband phase is no longer told from the piece beyond.
     */
    private static final Range PIECES = new Range(45, 135);

    /**
     * @throws IllegalArgumentException if the deflection is not above 0 and at most 1, the piece is
     *     not 45 to 135 deg, or the readings differ by so much that no phase error explains it
     */
    public QuadraturePhasing {
        Require.above("in-phase deflection", deflection.value(), 0, "");
        Require.within("in-phase deflection", deflection.value(), new Range(0, 1), "");
        checkPiece(piece);
        double part = readings.deflection().value() / deflection.value();
        if (!(Math.abs(part) < 1)) {
            throw new IllegalArgumentException(
                    String.format(
                            "half the difference of the readings, %.4g, must be smaller than the"
                                    + " in-phase deflection %.4g: no phase error gives more; are"
                                    + " the readings in the right units, is the 90-degree piece in"
                                    + " the SBO path, and was the deflection measured with the"
                                    + " sidebands in phase, at the same points and SBO setting?",
                            readings.deflection().value(), deflection.value()));
        }
    }

    /**
     * Takes an exact piece.
     *
     * @param readings DDM at the two points with 90° in the SBO path
     * @param deflection half the difference of the same points with sidebands in phase (DDM)
     * @return the phasing
     * @throws IllegalArgumentException as the record does
     */
    public static QuadraturePhasing withExactPiece(BothSides readings, Estimate deflection) {
        return new QuadraturePhasing(readings, deflection, Estimate.exact(QUARTER_TURN));
    }

    /**
     * Returns the phase error that an exact piece would have shown: asin(q/D), q half the
     * difference of the readings, with u² = (u(q)² + (q u(D)/D)²) / (D² − q²).
     *
     * @return the apparent error (deg), positive = the SBO signal leads; -90 to 90, so an SBO
     *     signal of reversed sign has to be found from the in-phase readings
     */
    public Estimate apparentPhaseError() {
        double q = readings.deflection().value();
        double d = deflection.value();
        double across =
                Math.hypot(
                        readings.deflection().standardUncertainty(),
                        q * deflection.standardUncertainty() / d);
        return new Estimate(
                Math.toDegrees(Math.asin(q / d)),
                Math.toDegrees(across / Math.sqrt(d * d - q * q)));
    }

    static void checkPiece(Estimate piece) {
        Require.within("piece", piece.value(), PIECES, "deg");
    }

    /**
     * Returns what the piece adds to the error: p − 90.
     *
     * <p>A piece that is long by this much makes sidebands in phase read as if the SBO signal
     * lagged by as much.
     *
     * @return the error of the piece (deg)
     */
    public Estimate errorOfPiece() {
        return new Estimate(piece.value() - QUARTER_TURN, piece.standardUncertainty());
    }

    /**
     * Returns the phase error of the sidebands: ε = asin(q/D) + (p − 90).
     *
     * @return ε (deg), positive = the SBO signal leads
     */
    public Estimate phaseError() {
        Estimate apparent = apparentPhaseError();
        return new Estimate(
                apparent.value() + errorOfPiece().value(),
                Math.hypot(apparent.standardUncertainty(), piece.standardUncertainty()));
    }

    /**
     * Returns the phase error when D was itself read with that error in: D stands for D cos ε then,
     * and tan ε = (q/D + sin δ)/cos δ with δ = p − 90.
     *
     * @return ε (deg), positive = the SBO signal leads
     */
    public double phaseErrorIfDeflectionHasIt() {
        double off = Math.toRadians(errorOfPiece().value());
        double part = readings.deflection().value() / deflection.value();
        return Math.toDegrees(Math.atan((part + Math.sin(off)) / Math.cos(off)));
    }

    /**
     * Returns the part of the readings that is common to both sides.
     *
     * @return the centring (DDM), positive = 150 Hz predominates in the middle
     */
    public Estimate centring() {
        return readings.centring();
    }

    /**
     * Returns the offset that brings the sidebands in phase: present offset − ε.
     *
     * @param presentOffset the sideband phase offset now set (deg), positive = SBO advanced
     * @return the offset to dial in (deg), -180 to 180
     * @throws IllegalArgumentException if the present offset is beyond ±180 deg
     */
    public Estimate offsetToDialIn(double presentOffset) {
        Require.within("present offset", presentOffset, CutRow.OFFSETS, "deg");
        Estimate error = phaseError();
        return new Estimate(
                Math.IEEEremainder(presentOffset - error.value(), 360),
                error.standardUncertainty());
    }

    /**
     * Returns the feed whose cut would do instead of the offset.
     *
     * @return CSB for an SBO signal that leads, SBO for one that lags
     */
    public Feed feedToCut() {
        return Feed.takingAway(-phaseError().value());
    }

    /**
     * Returns the line that is worth the phase error: |ε|/β, to be cut from {@link #feedToCut()}.
     *
     * @param phaseConstant β of that feed (deg/m), above 0
     * @return the length (m)
     * @throws IllegalArgumentException if the phase constant is not above 0 and at most 1000 deg/m
     */
    public Estimate equivalentLength(Estimate phaseConstant) {
        Estimate error = phaseError();
        return PhaseLength.of(
                new Estimate(Math.abs(error.value()), error.standardUncertainty()), phaseConstant);
    }
}
