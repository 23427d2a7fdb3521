package halfwidth.localizer.signal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import halfwidth.laws.Draw;
import halfwidth.laws.Law;
import org.junit.jupiter.api.Test;

class DepthsTest {

    @Test
    void isTheDifferenceInPercentOverAHundred() {
        // 14 CFR 171.107: larger depth less smaller depth in percent, over 100.
        assertEquals(0.155, Depths.ofPercent(12.25, 27.75).ddm(), 1e-12);
        assertEquals(0.40, Depths.ofPercent(12.25, 27.75).sdm(), 1e-12);
    }

    @Law
    void comesBackFromDifferenceAndSum(Draw draw) {
        double m90 = draw.between(0, 1);
        double m150 = draw.between(0, 1);
        Depths depths = new Depths(m90, m150);
        Depths back = Depths.ofDifferenceAndSum(depths.ddm(), depths.sdm());

        assertEquals(m90, back.m90(), 1e-15);
        assertEquals(m150, back.m150(), 1e-15);
    }

    @Test
    void refusesDepthsThatCannotBe() {
        assertThrows(IllegalArgumentException.class, () -> Depths.ofPercent(-1, 20));
        assertThrows(IllegalArgumentException.class, () -> Depths.ofPercent(20, 101));
        assertThrows(IllegalArgumentException.class, () -> Depths.ofDifferenceAndSum(0.5, 0.4));
    }
}
