package halfwidth.localizer.array;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import halfwidth.localizer.line.Line;
import java.nio.file.Path;
import org.hipparchus.complex.Complex;
import org.junit.jupiter.api.Test;

class FaultTest {
    private static final ArrayModel ARRAY =
            ArrayFile.read(Path.of("datasets", "arrays", "fourteen-two-carrier.csv"));

    /** The field is a sum, so a dead element takes exactly its own part away. */
    @Test
    void takesItsOwnPartAwayWhenDead() {
        ArrayModel faulty = ARRAY.with(Fault.deadElement(9));
        double k = 2 * Math.PI * 110.104e6 / 299_792_458;
        double sine = Math.sin(Math.toRadians(4));
        double gain = Math.pow(Math.cos(Math.toRadians(4)), 1.5);
        Complex part = new Complex(0, k * 3.06 * sine).exp().multiply(0.938 * gain);
        Complex lost = ARRAY.farField(4).course().csb().subtract(faulty.farField(4).course().csb());
        assertEquals(0, lost.subtract(part).norm(), 1e-12);
        assertEquals(0, faulty.clearance().orElseThrow().csb().get(8).amplitude());
        assertEquals(0, faulty.course().sbo().get(8).amplitude());
    }

    @Test
    void changesAllFeedsOfAnElementByDecibelsAndDegrees() {
        ArrayModel weak = ARRAY.with(Fault.amplitudeChange(8, -6.0206));
        assertEquals(0.5, weak.course().csb().get(7).amplitude(), 1e-6);
        assertEquals(0.01095, weak.course().sbo().get(7).amplitude(), 1e-7);
        ArrayModel early = ARRAY.with(Fault.phaseChange(8, 12));
        assertEquals(12, early.course().csb().get(7).phase(), 1e-12);
        assertEquals(-78, early.clearance().orElseThrow().sbo().get(7).phase(), 1e-12);
    }

    @Test
    void changesOnlyTheFeedsNamed() {
        ArrayModel faulty = ARRAY.with(Fault.deadElement(8).on(FeedPath.CLEARANCE_SBO));
        assertEquals(ARRAY.course(), faulty.course());
        assertEquals(ARRAY.clearance().orElseThrow().csb(), faulty.clearance().orElseThrow().csb());
        assertEquals(0, faulty.clearance().orElseThrow().sbo().get(7).amplitude());
    }

    @Test
    void advancesByTheLengthCutOff() {
        // 360 · 110 MHz/(c · 0.84) = 157.25 deg/m, by hand; 0.1 m of it.
        ArrayModel cut = ARRAY.with(Fault.cableCut(1, 0.1, new Line(0.84, 110e6)));
        assertEquals(15.725, cut.course().csb().get(0).phase(), 1e-3);
    }

    @Test
    void refusesAnElementOrAFeedThatIsNotThere() {
        assertThrows(IllegalArgumentException.class, () -> ARRAY.with(Fault.deadElement(15)));
        assertThrows(IllegalArgumentException.class, () -> Fault.deadElement(0));
        ArrayModel single = ArrayFile.read(Path.of("datasets", "arrays", "nine-uneven.csv"));
        Fault clearance = Fault.deadElement(1).on(FeedPath.CLEARANCE_CSB);
        assertThrows(IllegalArgumentException.class, () -> single.with(clearance));
    }
}
