package halfwidth.show;

import static org.junit.jupiter.api.Assertions.assertEquals;

import halfwidth.run.Step;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NumberedTest {
    private static String used(String code) {
        return new Numbered(DemoSheet.of(true)).used(new Step(0, 90, code, "", "", ""));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "double x = aim / beta;      | aim = 11.15°, beta = 0.157682 °/mm",
                "double x = aim * aim;       | aim = 11.15°",
                "double x = spread.aim;      | spread = 3.05°",
                "double x = aim(spread);     | spread = 3.05°",
                "String x = \"aim\" + '\"';  | ``",
                "double x = 2; // not aim    | ``",
                "double x = unknown + aims;  | ``"
            })
    void namesTheNumbersPutIntoAFormula(String code, String expected) {
        assertEquals(expected, used(code));
    }

    @org.junit.jupiter.api.Test
    void knowsNothingOfLaterSteps() {
        Step first = new Step(0, 50, "double x = aim;", "x", "", "");
        assertEquals("", new Numbered(DemoSheet.of(true)).used(first));
    }
}
