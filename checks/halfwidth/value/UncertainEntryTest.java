package halfwidth.value;

import static halfwidth.value.Refusals.DDM;
import static halfwidth.value.Refusals.NUMBER;
import static halfwidth.value.Refusals.assertRefused;
import static org.junit.jupiter.api.Assertions.assertEquals;

import halfwidth.laws.Draw;
import halfwidth.laws.Law;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A value typed with its standard uncertainty. Expected values are worked by hand. */
class UncertainEntryTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            quoteCharacter = '`',
            value = {
                "1; 0.83 ± 0.02; 0.83; 0.02",
                "1; 0.83 +/- 0.02; 0.83; 0.02",
                "1; 0.83+/-0.02; 0.83; 0.02",
                "1; 0,83 ± 0,02; 0.83; 0.02",
                "1; 0.83 +/\u2212 0.02; 0.83; 0.02",
                "°; -14 ± 0.5; -14; 0.5",
                "°; -14 ± 0.5 °; -14; 0.5",
                "in; 4 1/16 ± 1/32; 4.0625; 0.03125",
                "in; 25.4 mm ± 2.54 mm; 1; 0.1",
                "in; 25.4 mm ± 2.54; 1; 0.1",
                "in; (25.4 ± 2.54) mm; 1; 0.1",
                "in; 25.4 mm ± 1/16 in; 1; 0.0625",
                "in; 1 ft 2 in ± 1/16 in; 14; 0.0625",
                "1; 83 % ± 2 %; 0.83; 0.02",
                "1; (83 ± 2) %; 0.83; 0.02",
                "K; 20 °C ± 0.5 °C; 293.15; 0.5",
                "Hz; 110.30 MHz ± 1 kHz; 110300000; 1000"
            })
    void readsBothInTheUnitOfTheField(String unit, String typed, double value, double u) {
        Entry entry = Entry.read(NUMBER, unit, typed);
        assertEquals(value, (Double) entry.value(), 1e-12 * Math.abs(value));
        assertEquals(u, entry.uncertainty().orElseThrow(), 1e-12 * u);
        assertEquals(typed, entry.typed());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "155 in the 150 ± 2 ‰; 0.155; 0.002",
                "155 in the 90 ± 0.002 DDM; -0.155; 0.002",
                "-0.155 ± 0.002; -0.155; 0.002",
                "(155 ± 2) ‰; 0.155; 0.002"
            })
    void readsADdmWithItsUncertainty(String typed, double value, double u) {
        Entry entry = Entry.read(DDM, "DDM", typed);
        assertEquals(value, (Double) entry.value(), 1e-12);
        assertEquals(u, entry.uncertainty().orElseThrow(), 1e-12);
    }

    @Test
    void isReadBackAsValueWithUncertainty() {
        assertEquals(
                "0.83 ± 0.02 (standard uncertainty)",
                Entry.read(NUMBER, "1", "0.83 ± 0.02").understood());
        assertEquals(
                "1 in (25.4 mm typed) ± 0.1 in (2.54 mm typed) (standard uncertainty)",
                Entry.read(NUMBER, "in", "(25.4 ± 2.54) mm").understood());
    }

    @Test
    void noneIsKnownWhereNoneIsTyped() {
        assertEquals(Optional.empty(), Entry.read(NUMBER, "1", "0.83").uncertainty());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "in; 103.2 ± 0.5 mm; (103.2 ± 0.5) mm",
                "1; 0.83 ± 2 %; (0.83 ± 2) %",
                "in; 1 ft 2 in ± 1; has no unit",
                "1; 0.83 ± 0; above 0",
                "1; 0.83 ± -0.02; above 0",
                "1; 0.83 ±; nothing is typed",
                "1; ± 0.02; nothing is typed",
                "1; 0.83 ± 0.02 ± 0.01; has ± twice",
                "in; 4 in ± 1 °; where in is expected"
            })
    void refusesWhatCouldMeanTwoThings(String unit, String typed, String words) {
        assertRefused(NUMBER, unit, typed, words);
    }

    @Test
    void refusesABareUncertaintyBehindATone() {
        assertRefused(DDM, "DDM", "155 in the 150 ± 2", "± 1 DDM");
    }

    @Test
    void aWholeNumberHasNone() {
        assertRefused(new Kind.Count(), "1", "12 ± 1", "whole number");
    }

    @Law
    void aPrintedPairReadsBackTheSame(Draw draw) {
        double value = draw.between(-1e6, 1e6);
        double u = draw.between(0.01, 1e3);
        String typed = Decimal.print(value) + " mm ± " + Decimal.print(u) + " mm";
        Entry entry = Entry.read(NUMBER, "mm", typed);
        assertEquals(value + 0.0, entry.value());
        assertEquals(Optional.of(u), entry.uncertainty());
    }
}
