package halfwidth.localizer.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import halfwidth.laws.Draw;
import halfwidth.laws.Law;
import halfwidth.localizer.uncertainty.Estimate;
import java.util.Random;
import org.junit.jupiter.api.Test;

class LostMarkTest {

    private static TapeReading tape(Mark from, double distance, double uncertainty) {
        return new TapeReading(from, new Estimate(distance, uncertainty));
    }

    private static LostMark find(Mark lost, Mark one, Mark other, double uncertainty) {
        return LostMark.find(
                tape(one, one.distanceTo(lost), uncertainty),
                tape(other, other.distanceTo(lost), uncertainty));
    }

    @Test
    void findsTheCornerOfATriangleOfThreeFourFive() {
        // Marks 5 m apart on the course line; 3 m and 4 m away: 1.8 m along, 2.4 m to either side.
        LostMark lost =
                LostMark.find(tape(new Mark(100, 0), 3, 0.01), tape(new Mark(105, 0), 4, 0.01));

        assertEquals(101.8, lost.first().mark().along(), 1e-12);
        assertEquals(2.4, lost.first().mark().offset(), 1e-12);
        assertEquals(-2.4, lost.second().mark().offset(), 1e-12);
        assertEquals(90, lost.crossingAngle(), 1e-9);
        // Tapes square to each other: as uncertain in every direction.
        assertEquals(0.01, lost.first().ellipse().semiMajor(), 1e-12);
        assertEquals(0.01, lost.first().ellipse().semiMinor(), 1e-12);
    }

    @Law
    void findsTheMarkThatWasTaped(Draw draw) {
        double along = draw.between(200, 400);
        double offset = draw.between(-200, 200);
        Mark lost = new Mark(along, offset);
        Mark one = new Mark(300, 30);
        Mark other = new Mark(320, -90);
        // Not on the line through the two, where the tapes only touch.
        assumeTrue(Math.abs((along - 300) * -120 - (offset - 30) * 20) > 100);

        LostMark found = find(lost, one, other, 0.01);

        assertEquals(0, found.nearestTo(lost).mark().distanceTo(lost), 1e-6);
    }

    @Test
    void statesTheEllipseThatManyTapingsWouldShow() {
        Mark lost = new Mark(290, 100);
        Mark one = new Mark(300, 0);
        Mark other = new Mark(300, 40);
        ErrorEllipse ellipse = find(lost, one, other, 0.02).nearestTo(lost).ellipse();

        // The other way: tape twenty thousand times with errors of 0.02 m and take the spread along
        // the direction stated and square to it.
        Random random = new Random(3);
        double cos = Math.cos(Math.toRadians(ellipse.direction()));
        double sin = Math.sin(Math.toRadians(ellipse.direction()));
        double major = 0;
        double minor = 0;
        int tapings = 20_000;
        for (int i = 0; i < tapings; i++) {
            Mark found =
                    LostMark.find(
                                    tape(
                                            one,
                                            one.distanceTo(lost) + 0.02 * random.nextGaussian(),
                                            0),
                                    tape(
                                            other,
                                            other.distanceTo(lost) + 0.02 * random.nextGaussian(),
                                            0))
                            .nearestTo(lost)
                            .mark();
            double x = found.along() - lost.along();
            double y = found.offset() - lost.offset();
            major += Math.pow(x * cos + y * sin, 2) / tapings;
            minor += Math.pow(y * cos - x * sin, 2) / tapings;
        }

        // A standard deviation of twenty thousand draws is good to half a percent; four of them.
        assertEquals(Math.sqrt(major), ellipse.semiMajor(), 0.02 * ellipse.semiMajor());
        assertEquals(Math.sqrt(minor), ellipse.semiMinor(), 0.02 * ellipse.semiMinor());
    }

    @Test
    void warnsWhereTheTapesMeetFlat() {
        Mark lost = new Mark(300, 100);

        LostMark flat = find(lost, new Mark(300.5, 0), new Mark(299, 40), 0.01);
        LostMark good = find(lost, new Mark(260, 60), new Mark(340, 60), 0.01);

        assertTrue(flat.warning().orElseThrow().contains("only"));
        assertTrue(good.warning().isEmpty());
        assertTrue(flat.nearestTo(lost).ellipse().semiMajor() > 0.1);
    }

    @Test
    void refusesTapesThatDoNotMeet() {
        Mark one = new Mark(300, 0);
        Mark other = new Mark(300, 40);

        assertThrows(
                IllegalArgumentException.class,
                () -> LostMark.find(tape(one, 10, 0.01), tape(other, 20, 0.01)));
        assertThrows(
                IllegalArgumentException.class,
                () -> LostMark.find(tape(one, 100, 0.01), tape(other, 20, 0.01)));
        assertThrows(
                IllegalArgumentException.class,
                () -> LostMark.find(tape(one, 30, 0.01), tape(other, 10, 0.01)));
        assertThrows(
                IllegalArgumentException.class,
                () -> LostMark.find(tape(one, 30, 0.01), tape(one, 30, 0.01)));
    }
}
