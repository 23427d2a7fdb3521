package halfwidth.value;

import static halfwidth.value.Refusals.DDM;
import static halfwidth.value.Refusals.assertRefused;
import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * 150 µA = 0.155 DDM is the trade's convention for the indicator current; positive where 150 Hz
 * predominates is this program's. Values are worked by hand from the two.
 */
class DdmEntryTest {
    /** One rounding each of a product and a quotient near 0.1. */
    private static final double ROUNDING = 3e-17;

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "155 in the 150; 0.155",
                "155 in the 90; -0.155",
                "155 in 150; 0.155",
                "155 in 90 Hz; -0.155",
                "155 In The 150Hz; 0.155",
                "2,5 in the 90; -0.0025",
                "1 in the 150; 0.001",
                "0 in the 90; 0",
                "155 thousandths in the 90; -0.155",
                "0.155 DDM in the 90; -0.155",
                "0.155; 0.155",
                "-0,031; -0.031",
                "\u22120.031; -0.031",
                "0.155 DDM; 0.155",
                "1 DDM; 1",
                "155 thousandths; 0.155",
                "-155 ‰; -0.155",
                "15.5 %; 0.155",
                "150 µA; 0.155",
                "15 µA; 0.0155",
                "-15 µA; -0.0155",
                "15 uA in the 90; -0.0155",
                "0.15 mA; 0.155",
                "0; 0",
                "0 µA; 0",
            })
    void understands(String typed, double expected) {
        assertEquals(expected, (double) Entry.read(DDM, "DDM", typed).value(), ROUNDING);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "155 in the 150; 0.155 DDM, 150 Hz (150.0 µA)",
                "155 in the 90; -0.155 DDM, 90 Hz (-150.0 µA)",
                "0; 0 DDM (0.0 µA)",
                "0 in the 90; 0 DDM (0.0 µA)",
                "31 ‰; 0.031 DDM, 150 Hz (30.0 µA)",
                // 163 µA are 163/150 · 0.155 = 0.168433… DDM.
                "163 µA; 0.1684 DDM, 150 Hz (163.0 µA)",
                "-163 µA; -0.1684 DDM, 90 Hz (-163.0 µA)",
                "163.5 µA in the 90; -0.16895 DDM, 90 Hz (-163.5 µA)",
                "7 µA; 0.0072 DDM, 150 Hz (7.0 µA)",
                "0.0123456789; 0.0123456789 DDM, 150 Hz (11.9 µA)",
            })
    void saysRatioToneAndCurrent(String typed, String understood) {
        assertEquals(understood, Entry.read(DDM, "DDM", typed).understood());
    }

    @ParameterizedTest
    @ValueSource(strings = {"155", "-155", "2", "1", "1.5"})
    void refusesAPlainNumberThatMayBeARatioOrThousandths(String typed) {
        assertRefused(DDM, "DDM", typed, "may be thousandths", " in the 90", "or " + typed + " µA");
    }

    @ParameterizedTest
    @ValueSource(strings = {"-155 in the 90", "+155 in the 150", "-15 µA in the 90", "-0 in 90"})
    void refusesASignTogetherWithATone(String typed) {
        assertRefused(DDM, "DDM", typed, "has both a sign and a tone", "155 in the 90");
    }

    @ParameterizedTest
    @ValueSource(strings = {"0.155 in the 150", "0,5 in the 90"})
    void refusesABareRatioWithATone(String typed) {
        assertRefused(DDM, "DDM", typed, "may be a ratio or thousandths");
    }

    @ParameterizedTest
    @ValueSource(strings = {"1001 in the 150", "155 DDM", "-1.01 DDM", "1000 µA", "101 %"})
    void refusesMoreThanOne(String typed) {
        assertRefused(DDM, "DDM", typed, "is more than 1");
    }

    @ParameterizedTest
    @ValueSource(strings = {"155 in the 120", "155 in the 15", "155 in 9", "155 in the 1.50"})
    void refusesAnotherTone(String typed) {
        assertRefused(DDM, "DDM", typed, "must be 150 or 90 [Hz]", "155 in the 90");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "155 in; in is typed where DDM is expected",
                "3 °; ° is typed where DDM is expected",
                "3 blinks; blinks in 3 blinks is unknown",
                "155 left; left in 155 left is unknown",
                "3/8; common fraction",
                "155 150; is not one number",
                "in the 150; does not start with a number",
                "1,234; may be 1.234 or 1234",
            })
    void refusesEverythingElse(String typed, String why) {
        assertRefused(DDM, "DDM", typed, why, "type ");
    }
}
