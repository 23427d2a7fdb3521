package halfwidth.value;

import static halfwidth.value.Refusals.assertRefused;
import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A step, a tolerance or an uncertainty in DDM. 150 µA = 0.155 DDM is the trade's convention for
 * the indicator current; values are worked by hand from it.
 */
class DdmSizeEntryTest {
    private static final Kind SIZE = new Kind.DdmSize();

    /** One rounding each of a product and a quotient near 0.001. */
    private static final double ROUNDING = 5e-19;

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "0.001; 0.001; 0.001 DDM",
                "0,001; 0.001; 0.001 DDM",
                "+0.001; 0.001; 0.001 DDM",
                "0.001 DDM; 0.001; 0.001 DDM",
                "0; 0; 0 DDM",
                "1 DDM; 1; 1 DDM",
                "1 ‰; 0.001; 0.001 DDM (1 ‰ typed)",
                "1 thousandth; 0.001; 0.001 DDM (1 thousandth typed)",
                "0.1 %; 0.001; 0.001 DDM (0.1 % typed)",
                "3 µA; 0.0031; 0.0031 DDM (3 µA typed)",
                "7 µA; 0.0072333333333333333; 0.0072 DDM (7 µA typed)",
                "3 uA; 0.0031; 0.0031 DDM (3 uA typed)",
            })
    void isUnderstoodAndShownWithoutATone(String typed, double value, String understood) {
        Entry entry = Entry.read(SIZE, "DDM", typed);
        assertEquals(value, (double) entry.value(), ROUNDING);
        assertEquals(understood, entry.understood());
    }

    @ParameterizedTest
    @ValueSource(strings = {"1 in the 150", "1 in the 90", "0 in 90", "0.001 DDM in the 150 Hz"})
    void refusesATone(String typed) {
        assertRefused(SIZE, "DDM", typed, typed + " names a tone", "without tone and sign");
    }

    @ParameterizedTest
    @ValueSource(strings = {"-0.001", "\u22120.001", "-1 ‰", "-1 µA", "-0"})
    void refusesAMinusSign(String typed) {
        assertRefused(SIZE, "DDM", typed, "has a minus sign", "without tone and sign", "1 ‰");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "1; may be thousandths or µA",
                "2.5; may be thousandths or µA",
                "1001 ‰; is more than 1",
                "3/8; common fraction",
                "3 °; ° is typed where DDM is expected",
                "3 blinks; is unknown",
                "'1,234'; may be 1.234 or 1234",
                "' '; nothing is typed",
            })
    void refusesWhatNoDdmIs(String typed, String why) {
        assertRefused(SIZE, "DDM", typed, why, "type ");
    }
}
