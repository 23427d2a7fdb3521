package halfwidth.localizer.uncertainty;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class EstimateTest {

    @Test
    void takesTheStepOfADisplayAsRectangular() {
        // JCGM 100:2008, F.2.2.1: u = 0.29 δx.
        assertEquals(0.29, Estimate.readInSteps(7, 1).standardUncertainty(), 0.005);
        // A step is the whole range, so it must equal a half range of half of it.
        assertEquals(
                Estimate.within(7, 0.5).standardUncertainty(),
                Estimate.readInSteps(7, 1).standardUncertainty(),
                1e-15);
    }

    @Test
    void expandsBothWays() {
        assertEquals(4, new Estimate(10, 3).expanded(2).least());
        assertEquals(16, new Estimate(10, 3).expanded(2).most());
    }

    @Test
    void refusesWhatIsNoUncertainty() {
        assertThrows(IllegalArgumentException.class, () -> new Estimate(1, -1e-9));
        assertThrows(IllegalArgumentException.class, () -> new Estimate(Double.NaN, 0));
        assertThrows(IllegalArgumentException.class, () -> Estimate.readInSteps(1, -1));
        assertThrows(IllegalArgumentException.class, () -> Estimate.within(1, Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> Quantity.ofReadings("one", 5));
    }
}
