package halfwidth.localizer.signal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import halfwidth.laws.Draw;
import halfwidth.laws.Law;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ToneReadingTest {

    @ParameterizedTest
    @CsvSource({
        "155 in the 150, 0.155",
        "155 in the 90, -0.155",
        "3 in 90, -0.003",
        "2.5 in the 150, 0.0025",
        "0 in the 90, 0"
    })
    void readsWhatCrewsSay(String text, double ddm) {
        assertEquals(ddm, ToneReading.parse(text).ddm(), 1e-15);
    }

    @ParameterizedTest
    @ValueSource(strings = {"155", "in the 150", "-155 in the 150", "155 in the 120", "90 150", ""})
    void refusesWhatLeavesTheToneOpen(String text) {
        assertThrows(IllegalArgumentException.class, () -> ToneReading.parse(text));
    }

    @Test
    void saysNoToneForZero() {
        assertEquals("0", ToneReading.of(0).spoken());
        assertEquals("0", ToneReading.of(-0.00001).spoken());
        assertEquals(0.0, ToneReading.parse("0 in the 90").ddm());
    }

    @Test
    void refusesMoreThanTheWholeModulation() {
        assertThrows(IllegalArgumentException.class, () -> new ToneReading(1001, Tone.HZ_90));
        assertThrows(IllegalArgumentException.class, () -> ToneReading.of(Double.NaN));
    }

    @Law
    void understandsWhatItSays(Draw draw) {
        int thousandths = draw.whole(-1000, 1000);
        ToneReading reading = ToneReading.of(thousandths / 1000.0);
        String spoken = thousandths == 0 ? "0 in the 150" : reading.spoken();

        assertEquals(thousandths / 1000.0, ToneReading.parse(spoken).ddm(), 1e-12);
    }
}
