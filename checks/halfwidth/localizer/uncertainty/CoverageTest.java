package halfwidth.localizer.uncertainty;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class CoverageTest {

    @Test
    void givesTableG2() {
        // JCGM 100:2008, table G.2 (values of t_p(ν) printed to two digits; read from memory,
        // and the same as in any table of Student's t).
        assertEquals(12.71, Coverage.factor(0.95, 1), 0.005);
        assertEquals(2.57, Coverage.factor(0.95, 5), 0.005);
        assertEquals(2.23, Coverage.factor(0.95, 10), 0.005);
        assertEquals(3.17, Coverage.factor(0.99, 10), 0.005);
        assertEquals(1.960, Coverage.factor(0.95, Double.POSITIVE_INFINITY), 0.0005);
        assertEquals(2.576, Coverage.factor(0.99, Double.POSITIVE_INFINITY), 0.0005);
    }

    @Test
    void addsDegreesOfFreedomOfEqualContributions() {
        // ν = (2u²)² / (2u⁴/ν₁): two equal ones give twice the degrees of freedom of each.
        double degrees =
                Coverage.effectiveDegreesOfFreedom(new double[] {3, 3}, new double[] {7, 7});

        assertEquals(14, degrees, 1e-12);
    }

    @Test
    void isInfiniteWhereEveryInputIsKnownExactly() {
        double degrees =
                Coverage.effectiveDegreesOfFreedom(
                        new double[] {3, 0}, new double[] {Double.POSITIVE_INFINITY, 2});

        assertEquals(Double.POSITIVE_INFINITY, degrees);
    }

    @Test
    void refusesImpossibleArguments() {
        assertThrows(IllegalArgumentException.class, () -> Coverage.factor(1, 5));
        assertThrows(IllegalArgumentException.class, () -> Coverage.factor(0.95, 0.5));
        assertThrows(IllegalArgumentException.class, () -> Coverage.factor(0.95, Double.NaN));
        assertThrows(
                IllegalArgumentException.class,
                () -> Coverage.effectiveDegreesOfFreedom(new double[1], new double[2]));
    }
}
