package halfwidth.show;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class NumbersTest {
    @Test
    void roundsTheDecimalThatPeopleSeeHalfUp() {
        // The double nearest to 2.675 is a little less; a person would still round it up.
        assertEquals("2.68", Numbers.fixed(2.675, 2));
        assertEquals("-2.68", Numbers.fixed(-2.675, 2));
        assertEquals("0.00", Numbers.fixed(-0.001, 2));
    }

    @Test
    void keepsAllWholeDigitsOfAValueOnTheWay() {
        assertEquals("299792458", Numbers.brief(299_792_458));
        assertEquals("0.157682", Numbers.brief(0.15768249));
        assertEquals("0", Numbers.brief(-0.0));
        assertEquals("1.2E-9", Numbers.brief(1.2e-9));
        assertEquals("1E+300", Numbers.brief(1e300));
    }

    @Test
    void losesOnlyTheNoiseForOtherPrograms() {
        assertEquals("0.3", Numbers.full(0.1 + 0.2));
        assertEquals("0.333333333333", Numbers.full(1.0 / 3));
    }
}
