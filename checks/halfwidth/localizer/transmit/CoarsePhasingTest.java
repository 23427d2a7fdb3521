package halfwidth.localizer.transmit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.laws.Draw;
import halfwidth.laws.Law;
import halfwidth.localizer.uncertainty.Estimate;
import org.hipparchus.complex.Complex;
import org.junit.jupiter.api.Test;

class CoarsePhasingTest {
    private static final Estimate EXACT_PIECE = Estimate.exact(90);

    private static BothSides both(double deflection, double centring) {
        return new BothSides(centring + deflection, centring - deflection, 1e-9);
    }

    /** Re(D e^(j(ε − p))): the sideband phasor turned by the piece, seen along the carrier. */
    private static double along(double deflection, double error, double piece) {
        return new Complex(0, Math.toRadians(error - piece)).exp().multiply(deflection).getReal();
    }

    @Law
    void findsAnyPhaseErrorAndDeflectionOfThePhasor(Draw draw) {
        double error = draw.between(-180, 180);
        double piece = draw.between(45, 135);
        double deflection = draw.between(0.02, 0.4);
        double centring = draw.between(-0.01, 0.01);
        var phasing =
                new CoarsePhasing(
                        both(along(deflection, error, 0), centring),
                        both(along(deflection, error, piece), centring),
                        Estimate.exact(piece));
        double found = phasing.phaseError().value();
        // Rounding of the readings, which an angle near 0 or 180 feels as itself.
        assertEquals(0, Math.IEEEremainder(found - error, 360), 1e-9);
        assertEquals(deflection, phasing.inPhaseDeflection().value(), 1e-12);
    }

    @Test
    void findsWhatTheQuadratureReadingsAloneCannot() {
        // ICAO's 0.155 at a phase error of 60 degrees: 0.155 cos 60 and 0.155 sin 60, by hand.
        BothSides without = new BothSides(0.0775, -0.0775, 0.0001);
        BothSides with = new BothSides(0.13423, -0.13423, 0.0001);
        assertThrows(
                IllegalArgumentException.class,
                () -> QuadraturePhasing.withExactPiece(with, without.deflection()));
        Estimate error = new CoarsePhasing(without, with, EXACT_PIECE).phaseError();
        assertEquals(60, error.value(), 0.01);
        // Along the circle the readings' uncertainty u turns the phasor by u/D whatever ε is.
        double u = 0.0001 / Math.sqrt(24);
        assertEquals(Math.toDegrees(u / 0.155), error.standardUncertainty(), 1e-5);
    }

    @Test
    void passesThePiecesUncertaintyOn() {
        // D cos ε = 0 at ε = 90: s = D cos(90 − p), so one degree of the piece is nothing there;
        // at ε = 0 the piece's error is the answer's.
        var piece = new Estimate(90, 2);
        var lagging = new CoarsePhasing(both(0.155, 0), both(0, 0), piece).phaseError();
        assertEquals(2, lagging.standardUncertainty(), 1e-3);
        var across = new CoarsePhasing(both(0, 0), both(0.155, 0), piece).phaseError();
        assertEquals(0, across.standardUncertainty(), 1e-3);
    }

    @Test
    void keepsItsUncertaintyWhereThePhaseTurnsOver() {
        BothSides reversed = new BothSides(-0.155, 0.155, 0.001);
        Estimate error =
                new CoarsePhasing(reversed, new BothSides(0, 0, 0.001), EXACT_PIECE).phaseError();
        assertEquals(180, Math.abs(error.value()), 1e-9);
        double expected = Math.toDegrees(0.001 / Math.sqrt(24) / 0.155);
        assertEquals(expected, error.standardUncertainty(), 1e-6);
    }

    @Test
    void refusesReadingsWithoutAnyDeflection() {
        BothSides nothing = new BothSides(0.0005, 0.0005, 0.001);
        var refusal =
                assertThrows(
                        IllegalArgumentException.class,
                        () -> new CoarsePhasing(nothing, nothing, EXACT_PIECE));
        assertTrue(refusal.getMessage().contains("SBO signal on"));
    }

    @Test
    void refusesAPieceThatIsNoQuarterTurn() {
        assertThrows(
                IllegalArgumentException.class,
                () -> new CoarsePhasing(both(0.1, 0), both(0.1, 0), Estimate.exact(136)));
    }
}
