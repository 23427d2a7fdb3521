package halfwidth.value;

import static halfwidth.value.Refusals.NUMBER;
import static halfwidth.value.Refusals.assertRefused;
import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Expected values are worked by hand with exact definitions: 1 in = 25.4 mm, 1 ft = 12 in, 1 NM =
 * 1852 m (NIST SP 811, 2008, appendix B). The tolerance, where there is one, is the rounding of one
 * operation on doubles.
 */
class NumberEntryTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            quoteCharacter = '`',
            value = {
                "in; 4 1/16 in; 4.0625",
                "in; 4 1/16; 4.0625",
                "in; 3/8 in; 0.375",
                "in; -3/8; -0.375",
                "in; 17/16; 1.0625",
                "in; 1 ft 2 3/8 in; 14.375",
                "in; 1' 2 3/8\"; 14.375",
                "in; -1'2\"; -14",
                "in; 1 foot 0 inches; 12",
                "in; 4'; 48",
                "in; 4\"; 4",
                "ft; 4'; 4",
                "ft; 4' 6\"; 4.5",
                "mm; 1 ft 2 3/8 in; 365.125",
                "in; 25,4 mm; 1",
                "m; 2 NM; 3704",
                "m; 0.5 km; 500",
                "m; 12.5; 12.5",
                "m; 5.; 5",
                "m; .5; 0.5",
                "m; ,5; 0.5",
                "m; 1234,5; 1234.5",
                "m; 1.234; 1.234",
                "m; 12,345678; 12.345678",
                "µA; -2 µA; -2",
                "µA; -2 \u03bcA; -2",
                "µA; -2uA; -2",
                "µA; \u22122 µA; -2",
                "µA; -2\u00a0µA; -2",
                "Hz; -1\u202f234\u202f567.8 Hz; -1234567.8",
                "mA; 150 µA; 0.15",
                "A; 1 mA; 0.001",
                "1; 1e-3; 0.001",
                "1; 1E3; 1000",
                "1; 0,155; 0.155",
                "1; +0.5; 0.5",
                "1; 12 %; 0.12",
                "1; 12%; 0.12",
                "1; 3 ppm; 0.000003",
                "%; 0.12; 0.12",
                "MHz; 110.1 MHz; 110.1",
                "Hz; 110,1 MHz; 110100000",
                "kHz; 8 kHz; 8",
                "dB; -3 dB; -3",
                "dBm; 10 dBm; 10",
                "dBµV; 60 dBuV; 60",
                "W; 250 mW; 0.25",
                "V; 12 mV; 0.012",
                "Ω; 50 \u2126; 50",
                "Ω; 50 ohms; 50",
                "°; 90 deg; 90",
                "°; 12º; 12",
                "°/in; 4 °/in; 4",
                "°/in; 4 deg/in; 4",
                "DDM/m; 0.00145; 0.00145",
                "µV/m; 1 mV/m; 1000",
                "V/m; 40 µV/m; 0.00004",
                "ppm/°C; 5 ppm/K; 5",
                "s; 250 ms; 0.25",
                "µs; 1 ms; 1000",
                "min; 1 h; 60",
                "d; 2 a; 730.485",
                "°C; -10 °C; -10",
                "°C; 293.15 K; 20",
            })
    void understands(String unit, String typed, double expected) {
        assertEquals(expected, Entry.read(NUMBER, unit, typed).value());
    }

    @Test
    void convertsAnglesWithinOneRounding() {
        Entry inDegrees = Entry.read(NUMBER, "°", "0.5 rad");
        assertEquals(Math.toDegrees(0.5), (double) inDegrees.value(), 1e-14);
        // 157.48 °/m is 4 °/in to the digits given: 157.48 · 0.0254 = 3.999992.
        Entry perInch = Entry.read(NUMBER, "°/in", "157.48 °/m");
        assertEquals(3.999992, (double) perInch.value(), 1e-15);
    }

    @Test
    void saysTheValueThatEntersAndWhatWasTypedIfThatDiffers() {
        assertAll(
                () -> assertUnderstood("in", "4 1/16", "4.0625 in"),
                () -> assertUnderstood("in", " 4.50 ", "4.5 in"),
                // 103.2/25.4 = 4.0629921259842…
                () -> assertUnderstood("in", "103.2 mm", "4.063 in (103.2 mm typed)"),
                // 103.3/25.4 = 4.0669…: a step of the tape is told from the next.
                () -> assertUnderstood("in", "103.3 mm", "4.0669 in (103.3 mm typed)"),
                () -> assertUnderstood("in", "1 m", "39.37 in (1 m typed)"),
                () -> assertUnderstood("m", "1017 ft", "309.98 m (1017 ft typed)"),
                () -> assertUnderstood("m", "1/64 in", "0.0003969 m (1/64 in typed)"),
                () -> assertUnderstood("in", "1/64", "0.015625 in"),
                () -> assertUnderstood("in", "1/3", "0.3333 in"),
                () ->
                        assertUnderstood(
                                "Hz", "110.30 MHz", "110\u202f300\u202f000 Hz (110.30 MHz typed)"),
                () ->
                        assertUnderstood(
                                "Hz",
                                "110.123456 MHz",
                                "110\u202f123\u202f456 Hz (110.123456 MHz typed)"),
                () -> assertUnderstood("°/in", "157.1 °/m", "3.9903 °/in (157.1 °/m typed)"),
                () -> assertUnderstood("K", "20.05 °C", "293.2 K (20.05 °C typed)"),
                () -> assertUnderstood("in", "1'  2\"", "14 in (1' 2\" typed)"),
                () -> assertUnderstood("1", "12 %", "0.12 (12 % typed)"),
                () -> assertUnderstood("1", "0,155", "0.155"),
                () -> assertUnderstood("Hz", "110100000.1234", "110\u202f100\u202f000.1234 Hz"),
                () -> assertUnderstood("°/in", "4 deg/in", "4 °/in"),
                () -> assertUnderstood("µA", "-2 uA", "-2 µA"),
                () -> assertUnderstood("m", "-0", "0 m"));
    }

    private static void assertUnderstood(String unit, String typed, String expected) {
        assertEquals(expected, Entry.read(NUMBER, unit, typed).understood());
    }

    @Test
    void keepsWhatWasTypedAsItWas() {
        assertEquals(" 4 1/16 ", Entry.read(NUMBER, "in", " 4 1/16 ").typed());
    }

    @Test
    void refusesAnAmbiguousCommaWithBothReadings() {
        assertRefused(NUMBER, "m", "1,234", "1,234 may be 1.234 or 1234", "type 1.234 or 1234");
        assertRefused(NUMBER, "m", "-12,500 m", "12.500", "12500");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            quoteCharacter = '`',
            value = {
                "1,234.5; 1234.5",
                "1.234,5; 1234.5",
                "1 234; 1234",
                "1 234,5 m; 1234.5",
                "1,234,567; 1234567",
                "1.234.567; 1234567",
                "1'234; 1234",
                "1\u202f234; 1234",
                "1_234; 1234",
            })
    void refusesSeparatorsOfThousandsWithWhatToType(String typed, String without) {
        assertRefused(NUMBER, "m", typed, "without separators of thousands, " + without);
    }

    @Test
    void refusesAnotherQuantityNamingBothUnits() {
        assertRefused(NUMBER, "in", "12 deg", "deg is typed where in is expected", "mm", "ft");
        assertRefused(NUMBER, "°", "4'", "' is typed where ° is expected", "rad");
        assertRefused(NUMBER, "°", "1' 2\"", "ft is typed where ° is expected");
        assertRefused(NUMBER, "dBm", "2 W", "W is typed where dBm is expected");
        assertRefused(NUMBER, "W", "3 dBm", "dBm is typed where W is expected");
        assertRefused(NUMBER, "dB", "3 dBm", "dBm is typed where dB is expected");
        assertRefused(NUMBER, "°/in", "4 °", "° is typed where °/in is expected", "°/m");
    }

    @Test
    void refusesAnAngleOrADdmForARatio() {
        assertRefused(NUMBER, "1", "0.5 rad", "rad is typed where a ratio is expected", "%");
        assertRefused(NUMBER, "1", "0.155 DDM", "DDM is typed where a ratio is expected");
        assertRefused(NUMBER, "DDM/m", "2 %/m", "%/m is typed where DDM/m is expected");
    }

    @Test
    void refusesAnUnknownUnitListingTheAcceptedOnes() {
        assertRefused(
                NUMBER, "in", "4 furlong", "furlong is not a known unit", "m, mm, cm, km, ft, NM");
        assertRefused(NUMBER, "MHz", "110.1 mhz", "mhz is not a known unit", "MHz, Hz, kHz");
        assertRefused(NUMBER, "1", "4 x", "x is not a known unit", "%, ‰, ppm");
        assertRefused(NUMBER, "dBm", "4 x", "a number, alone or with dBm");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "  ", "abc", "in 4", "--5", "NaN", "Infinity", "1/0", "4 17/16"})
    void refusesWhatIsNoNumber(String typed) {
        assertRefused(NUMBER, "in", typed, "type ");
    }

    @ParameterizedTest
    @ValueSource(strings = {"3/4/2026", "5+3", "10-3", "1.2.3", "1..2", "1,2,3", "4 5 in", "5-"})
    void refusesMoreThanOneNumber(String typed) {
        assertRefused(NUMBER, "in", typed, "is not one number", "type ");
    }

    @Test
    void refusesAFractionJoinedByADashWithWhatToType() {
        assertRefused(NUMBER, "in", "4-1/16 in", "type 4 1/16 in");
    }

    @ParameterizedTest
    @ValueSource(strings = {"1 ft 14 in", "1.5 ft 3 in", "1/2 ft 3 in", "4' 3", "4' 3 mm"})
    void refusesFeetAndInchesThatDoNotFitTogether(String typed) {
        assertRefused(NUMBER, "in", typed, "is not feet and inches", "1 ft 2 3/8 in");
    }

    @Test
    void refusesWhatADoubleCannotHold() {
        assertRefused(NUMBER, "1", "1e400", "out of reach");
        assertRefused(NUMBER, "1", "1e-400", "out of reach");
        assertRefused(NUMBER, "1", "1e999999999999", "out of reach");
        assertRefused(NUMBER, "mm", "1e308 km", "too large");
        assertRefused(NUMBER, "km", "5e-324 mm", "too small");
        assertRefused(NUMBER, "1", "1".repeat(200), "200 characters are too long");
    }

    @Test
    void readsAndPrintsTheSameInEveryLocale() {
        Locale before = Locale.getDefault();
        try {
            for (String tag : new String[] {"de-DE", "ar-EG", "tr-TR", "hi-IN-u-nu-deva"}) {
                Locale.setDefault(Locale.forLanguageTag(tag));
                assertUnderstood("in", "103.2 mm", "4.063 in (103.2 mm typed)");
                assertEquals(
                        "0.155 DDM, 150 Hz (150.0 µA)",
                        Entry.read(new Kind.Ddm(), "DDM", "155 IN the 150").understood());
            }
        } finally {
            Locale.setDefault(before);
        }
    }
}
