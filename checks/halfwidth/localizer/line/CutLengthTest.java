package halfwidth.localizer.line;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.laws.Draw;
import halfwidth.laws.Law;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CutLengthTest {

    @ParameterizedTest
    @CsvSource({
        "3.4375, 3 7/16 in",
        "3.4999, 3 7/16 in",
        "0.5, 1/2 in",
        "0.0624, 0 in",
        "2, 2 in",
        "1.99, 1 15/16 in"
    })
    void showsInchesAsARuleDoes(double inches, String shown) {
        assertEquals(shown, CutLength.ofInches(inches).inInches());
    }

    @Law
    void neverRoundsACutUp(Draw draw) {
        double metres = draw.flag() ? draw.between(0, 10) : nearADivision(draw);
        CutLength cut = new CutLength(metres);

        assertTrue(cut.inWholeSixteenths().metres() <= metres);
        assertTrue(cut.inWholeMillimetres().metres() <= metres);
        // And loses less than one division of the rule.
        assertTrue(metres - cut.inWholeSixteenths().metres() < 0.0254 / 16 + 1e-12);
        assertTrue(metres - cut.inWholeMillimetres().metres() < 0.001 + 1e-12);
    }

    private static double nearADivision(Draw draw) {
        double division = draw.of(0.0254 / 16, 0.001);
        return draw.whole(1, 6000) * division + draw.between(-1e-9, 1e-9);
    }

    @Law
    void keepsWhatIsAWholeDivisionAlready(Draw draw) {
        int divisions = draw.whole(0, 6000);
        assertEquals(divisions, CutLength.ofInches(divisions / 16.0).sixteenths());
        assertEquals(divisions, new CutLength(divisions / 1000.0).millimetres());
    }

    @Test
    void takesAPart() {
        assertEquals(0.08, new CutLength(0.1).part(0.8).metres(), 1e-15);
        assertThrows(IllegalArgumentException.class, () -> new CutLength(0.1).part(1.1));
    }

    @Test
    void refusesALengtheningCut() {
        assertThrows(IllegalArgumentException.class, () -> new CutLength(-0.001));
        assertThrows(IllegalArgumentException.class, () -> new CutLength(Double.NaN));
    }
}
