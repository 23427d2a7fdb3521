package halfwidth.localizer.transmit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import halfwidth.laws.Draw;
import halfwidth.laws.Law;
import halfwidth.localizer.uncertainty.Distribution;
import halfwidth.localizer.uncertainty.Draws;
import halfwidth.localizer.uncertainty.Estimate;
import halfwidth.localizer.uncertainty.MonteCarlo;
import org.hipparchus.complex.Complex;
import org.junit.jupiter.api.Test;

class QuadraturePhasingTest {
    private static final Estimate HALF_WIDTH = Estimate.exact(0.155);

    private static QuadraturePhasing phasing(double on150, double on90) {
        return QuadraturePhasing.withExactPiece(new BothSides(on150, on90, 0.001), HALF_WIDTH);
    }

    /** DDM = 2 Re(S/C) of two phasors: the SBO leads by {@code lead}, then the piece delays it. */
    private static double reading(double deflection, double lead, double piece, double centring) {
        Complex sideband =
                new Complex(0, Math.toRadians(lead - piece)).exp().multiply(deflection / 2);
        return 2 * sideband.divide(Complex.ONE).getReal() + centring;
    }

    @Test
    void readsOneDegreeAsTwoPointSixMicroamps() {
        // 0.155 sin 1° = 0.002705 DDM (2.62 µA): slope 0.01745 DDM0 per degree.
        Estimate error = phasing(0.002705, -0.002705).phaseError();
        assertEquals(1, error.value(), 0.0005);
    }

    @Test
    void leavesWhatBothSidesShareToCentring() {
        QuadraturePhasing both = phasing(0.010, 0.004);
        assertEquals(0.007, both.centring().value(), 1e-15);
        // asin(0.003/0.155) = 1.10903 deg, series x + x³/6 with x = 0.0193548.
        double x = 0.003 / 0.155;
        assertEquals(Math.toDegrees(x + x * x * x / 6), both.phaseError().value(), 0.00001);
    }

    /** Two sides of opposite sideband sign, as phasors with any piece: the lead comes back. */
    @Law
    void findsTheLeadThatTwoPhasorsHave(Draw draw) {
        double lead = draw.between(-50, 50);
        double piece = draw.between(60, 120);
        double centring = draw.between(-0.02, 0.02);
        assumeTrue(Math.abs(lead - (piece - 90)) < 85);
        BothSides readings =
                new BothSides(
                        reading(0.155, lead, piece, centring),
                        -reading(0.155, lead, piece, 0) + centring,
                        0.001);
        QuadraturePhasing exact =
                new QuadraturePhasing(readings, HALF_WIDTH, Estimate.exact(piece));
        assertEquals(lead, exact.phaseError().value(), 1e-6);
        assertEquals(centring, exact.centring().value(), 1e-12);
        // With the in-phase deflection read while the error was there: D cos ε.
        double read = reading(0.155, lead, 0, 0);
        if (read > Math.abs(readings.deflection().value())) {
            double both =
                    new QuadraturePhasing(readings, Estimate.exact(read), Estimate.exact(piece))
                            .phaseErrorIfDeflectionHasIt();
            assertEquals(lead, both, 1e-6);
        }
    }

    @Test
    void takesALongPieceForALagOfTheSidebands() {
        // In phase, but the piece is 3 deg long: reads D sin(−3°), apparent error −3.
        double q = reading(0.155, 0, 93, 0);
        QuadraturePhasing long3 =
                new QuadraturePhasing(new BothSides(q, -q, 0.001), HALF_WIDTH, Estimate.exact(93));
        assertEquals(-3, long3.apparentPhaseError().value(), 1e-9);
        assertEquals(3, long3.errorOfPiece().value(), 1e-12);
        assertEquals(0, long3.phaseError().value(), 1e-9);
    }

    @Test
    void dialsTheLeadOutOrCutsTheOtherFeed() {
        double q = 0.155 * Math.sin(Math.toRadians(8));
        QuadraturePhasing leads = phasing(q, -q);
        assertEquals(12 - 8, leads.offsetToDialIn(12).value(), 1e-9);
        assertEquals(172 + 8 - 16, leads.offsetToDialIn(172).value(), 1e-9);
        // Past half a turn the dial comes round: -176 − 8 = -184 is 176.
        assertEquals(176, leads.offsetToDialIn(-176).value(), 1e-9);
        assertEquals(Feed.CSB, leads.feedToCut());
        assertEquals(0.05, leads.equivalentLength(new Estimate(160, 0)).value(), 1e-9);
        QuadraturePhasing lags = phasing(-q, q);
        assertEquals(Feed.SBO, lags.feedToCut());
        assertEquals(20, lags.offsetToDialIn(12).value(), 1e-9);
    }

    @Test
    void agreesWithDrawsOfTheReadings() {
        // 20 deg, receiver of 0.002 steps, D known to 0.001, piece to 0.5 deg: JCGM 101 draws.
        double q = 0.155 * Math.sin(Math.toRadians(20));
        QuadraturePhasing made =
                new QuadraturePhasing(
                        new BothSides(q, -q, 0.002),
                        new Estimate(0.155, 0.001),
                        new Estimate(90, 0.5));
        MonteCarlo draws =
                MonteCarlo.of(
                        x -> Math.toDegrees(Math.asin((x[0] - x[1]) / 2 / x[2])) + x[3] - 90,
                        new Draws(100_000, 1),
                        Distribution.rectangular(q, 0.001),
                        Distribution.rectangular(-q, 0.001),
                        Distribution.normal(new Estimate(0.155, 0.001)),
                        Distribution.normal(new Estimate(90, 0.5)));
        assertEquals(20, made.phaseError().value(), 1e-9);
        // 100 000 draws know a standard deviation to 0.22 %; four times that.
        double u = made.phaseError().standardUncertainty();
        assertEquals(draws.estimate().standardUncertainty(), u, 0.01 * u);
    }

    @Test
    void mirrorsWithTheSides() {
        QuadraturePhasing one = phasing(0.013, -0.005);
        QuadraturePhasing mirrored = phasing(-0.005, 0.013);
        assertEquals(-one.phaseError().value(), mirrored.phaseError().value(), 1e-12);
        assertEquals(one.centring(), mirrored.centring());
    }

    @Test
    void refusesReadingsThatNoPhaseErrorGives() {
        IllegalArgumentException refusal =
                assertThrows(IllegalArgumentException.class, () -> phasing(0.2, -0.2));
        assertTrue(refusal.getMessage().contains("no phase error gives more"));
        assertThrows(IllegalArgumentException.class, () -> phasing(Double.NaN, 0));
        assertThrows(
                IllegalArgumentException.class,
                () ->
                        QuadraturePhasing.withExactPiece(
                                new BothSides(0, 0, 0.001), Estimate.exact(0)));
        assertThrows(
                IllegalArgumentException.class, () -> phasing(0.01, -0.01).offsetToDialIn(200));
    }
}
