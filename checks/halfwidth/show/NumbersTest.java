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
    void givesAValueAsFarAsItsUncertaintyWarrants() {
        // JCGM 100:2008, 7.2.2 (100,021 47 g, u = 0,35 mg) and 7.2.6 (10,057 62 Ω, u = 27 mΩ).
        assertEquals("100.02147 ± 0.00035", Numbers.measured(100.02147, 0.00035));
        assertEquals("10.058 ± 0.027", Numbers.measured(10.05762, 0.027));
        assertEquals("4.00 ± 0.10", Numbers.measured(4, 0.1));
        assertEquals("12300 ± 1200", Numbers.measured(12345.6, 1234.5));
        assertEquals("0.0 ± 1.0", Numbers.measured(-0.04, 0.999));
        assertEquals("7 ± 0", Numbers.measured(7, 0));
        assertEquals("0.1 ± 1E-18", Numbers.measured(0.1, 1e-18));
    }

    @Test
    void losesOnlyTheNoiseForOtherPrograms() {
        assertEquals("0.3", Numbers.full(0.1 + 0.2));
        assertEquals("0.333333333333", Numbers.full(1.0 / 3));
    }
}
