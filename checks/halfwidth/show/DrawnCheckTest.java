package halfwidth.show;

import static org.junit.jupiter.api.Assertions.assertEquals;

import halfwidth.run.Drawn;
import org.junit.jupiter.api.Test;

/** JCGM 101:2008, 7.9.2 and 8.1. */
class DrawnCheckTest {
    /** The examples of 7.9.2 for one significant digit: 0.000 35 g and 2 K (from memory). */
    @Test
    void allowsHalfAUnitInTheOneDigitOfTheUncertainty() {
        assertEquals(0.00005, DrawnCheck.tolerance(0.00035), 1e-15);
        assertEquals(0.5, DrawnCheck.tolerance(2), 1e-15);
    }

    private static Drawn drawn(int draws, double u, double low, double high) {
        return new Drawn(draws, 0, 0, u, low, high);
    }

    /** 9.2.2, table 2: first order -3.92 to 3.92, draws the same; tolerance of u = 2 is 0.5. */
    @Test
    void agreesForTheAdditiveModel() {
        assertEquals(DrawnCheck.AGREES, DrawnCheck.of(0, 2.0, drawn(1_000_000, 2, -3.92, 3.92)));
    }

    /** 9.3.3, table 5: first order 1.1285 to 1.3395 mg, draws 1.0834 to 1.3825 mg. */
    @Test
    void differsForTheMassCalibration() {
        Drawn drawn = new Drawn(100_000, 0, 1.2341, 0.0754, 1.0834, 1.3825);
        assertEquals(DrawnCheck.DIFFERS, DrawnCheck.of(1.2340, 0.0539, drawn));
    }

    @Test
    void doesNotTellWhereTheEndsScatterByMore() {
        // u = 9 allows 0.5; with 1000 draws an end scatters by 2.671 · 9 / √1000 = 0.76.
        assertEquals(
                DrawnCheck.TOO_FEW, DrawnCheck.of(0, 9, drawn(1000, 9, -1.96 * 9 - 1, 1.96 * 9)));
    }
}
