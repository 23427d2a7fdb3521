package halfwidth.localizer.cut;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.localizer.uncertainty.Estimate;
import org.junit.jupiter.api.Test;

class CutRecordTest {
    private static final Estimate DATA_SHEET = new Estimate(157, 3);

    @Test
    void acceptsAnUnsteadyReadingAfterACutOfOneStep() {
        // One millimetre is 0.157 degrees; readings good to 0.35 degrees make 0.5 degrees of their
        // difference, and four standard deviations of that against the cut are no slip.
        assertDoesNotThrow(
                () -> CutRecord.checkMovement(new Estimate(157 - 2000, 500), DATA_SHEET, "phase"));
        assertDoesNotThrow(
                () -> CutRecord.checkMovement(new Estimate(157 + 2000, 500), DATA_SHEET, "phase"));
    }

    @Test
    void refusesASignMistypedAfterACutWorthTheName() {
        // The same readings after 100 mm: a phase that rose by as much as it should have fallen.
        var refusal =
                assertThrows(
                        IllegalArgumentException.class,
                        () ->
                                CutRecord.checkMovement(
                                        new Estimate(-157, 5), DATA_SHEET, "the phase"));
        assertTrue(refusal.getMessage().contains("wrong way"));
    }

    @Test
    void refusesATotalThatShrinks() {
        assertDoesNotThrow(() -> CutRecord.checkGrows("SBO feed", 0.1, 0.1, 2));
        assertThrows(
                IllegalArgumentException.class,
                () -> CutRecord.checkGrows("SBO feed", 0.1, 0.09, 2));
    }
}
