package halfwidth.value;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class UnitTest {

    @ParameterizedTest
    @CsvSource({
        "1, 1",
        "deg, °",
        "deg/in, °/in",
        "m^2, m²",
        "W/m², W/m²",
        "W / m / m, W/m²",
        "m^-1, 1/m",
        "m⁻¹, 1/m",
        "1/m, 1/m",
        "m·V, V·m",
        "m*V/m, V",
        "%/%, 1",
        "uV/m, µV/m",
    })
    void writesEqualUnitsInOneWay(String typed, String label) {
        assertEquals(label, Unit.of(typed).label());
        assertEquals(Unit.of(label), Unit.of(typed));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "", " ", "furlong", "/m", "m/", "m//s", "m^", "m^0", "m^22", "2", "m m", "·"
            })
    void rejectsUnknownLabels(String label) {
        IllegalArgumentException refusal =
                assertThrows(IllegalArgumentException.class, () -> Unit.of(label));
        assertTrue(refusal.getMessage().contains("is not known; known are 1, %"));
    }

    @Test
    void rejectsAnEndlessLabelAtOnce() {
        assertEquals(Optional.empty(), Unit.find("m·".repeat(100_000) + "m"));
    }

    @Test
    void multipliesAndDivides() {
        Unit inch = Unit.of("in");
        assertEquals(Unit.of("°"), Unit.of("°/in").times(inch));
        assertEquals(Unit.of("°/in"), Unit.of("°").over(inch));
        assertEquals(Unit.ONE, inch.over(inch));
        assertEquals(Unit.of("in²"), inch.power(2));
        assertEquals(Unit.ONE, inch.power(0));
        assertEquals(Optional.of(inch), Unit.of("in²").root(2));
        assertEquals(Optional.empty(), inch.root(2));
        assertThrows(IllegalArgumentException.class, () -> inch.root(0));
    }

    /** Definitions: SI Brochure, 9th edition, table 4. */
    @ParameterizedTest
    @CsvSource({
        "V·A, W",
        "1/s, Hz",
        "V/A, Ω",
        "W/A, V",
        "V/m·m, V",
        "rad, 1",
        "DDM, 1",
        "V·A·s, W·s"
    })
    void knowsWhatIsTheSameUnit(String one, String other) {
        assertTrue(Unit.of(one).sameSize(Unit.of(other)));
    }

    @ParameterizedTest
    @CsvSource({"°, rad", "°, 1", "in, mm", "%, 1", "MHz, 1/s", "°C, K", "dB/m, dB/in"})
    void knowsTheSameDimensionInAnotherSize(String one, String other) {
        assertTrue(Unit.of(one).sameDimension(Unit.of(other)));
        assertFalse(Unit.of(one).sameSize(Unit.of(other)));
    }

    @ParameterizedTest
    @CsvSource({"m, s", "dB, 1", "dBm, W", "dB, dBm", "dBm, dBµV", "dB/m, 1/m", "V, A", "m, m²"})
    void knowsAnotherDimension(String one, String other) {
        assertFalse(Unit.of(one).sameDimension(Unit.of(other)));
        IllegalArgumentException refusal =
                assertThrows(
                        IllegalArgumentException.class,
                        () -> Unit.of(one).convert(1, Unit.of(other)));
        assertEquals("unit " + one + " must be of the dimension of " + other, refusal.getMessage());
    }

    /** Factors: NIST Special Publication 811 (2008), appendix B; the degree is π/180 rad. */
    @ParameterizedTest
    @CsvSource({
        "in, mm, 25.4",
        "ft, m, 0.3048",
        "NM, km, 1.852",
        "h, s, 3600",
        "d, h, 24",
        "GHz, MHz, 1000",
        "kW, W, 1000",
        "kΩ, Ω, 1000",
        "ns, s, 1e-9",
        "°, rad, 0.017453292519943295",
        "W/m², mW/cm², 0.1",
        "ppm/°C, 1/K, 1e-6",
    })
    void convertsByTheirDefinitions(String from, String to, double factor) {
        assertEquals(factor, Unit.of(from).convert(1, Unit.of(to)), factor * 1e-15);
    }

    @Test
    void convertsTemperaturesWithTheirZero() {
        assertEquals(293.15, Unit.of("°C").convert(20, Unit.of("K")));
    }

    @Test
    void rejectsWhatIsNoNumber() {
        Unit metre = Unit.of("m");
        assertThrows(IllegalArgumentException.class, () -> metre.convert(Double.NaN, metre));
        assertThrows(IllegalArgumentException.class, () -> metre.convert(1e308, Unit.of("mm")));
    }

    @ParameterizedTest
    @EnumSource
    void everySymbolConvertsWithinItsQuantity(Symbol symbol) {
        Unit unit = Unit.of(symbol.label);
        assertEquals(symbol.label, unit.label());
        for (String other : unit.alternatives()) {
            double there = unit.convert(40, Unit.of(other));
            // Temperatures lose the digits of their zero's 273.15.
            assertEquals(40, Unit.of(other).convert(there, unit), 1e-12);
        }
    }
}
