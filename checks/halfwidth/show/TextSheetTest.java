package halfwidth.show;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class TextSheetTest {
    private static final String TEXT = TextSheet.of(DemoSheet.of(true));

    private static void assertSays(String words) {
        assertTrue(TEXT.contains(words), () -> words + " not in:\n" + TEXT);
    }

    @Test
    void namesThePageFirst() {
        String first = TEXT.lines().findFirst().orElseThrow();
        assertTrue(first.startsWith("Trim of the sideband feed "), first);
        assertTrue(first.endsWith(" transmit/demo-trim"), first);
    }

    @Test
    void saysThatValuesAreInventedOnlyWhereTheyAre() {
        assertSays("WORKED EXAMPLE - invented values, not a station's");
        assertFalse(TextSheet.of(DemoSheet.of(false)).contains("WORKED EXAMPLE"));
    }

    @Test
    void givesTheCautionsBeforeAnyResult() {
        assertSays("! Take the localizer out of service");
        assertSays("! Check that the line is dry");
        assertTrue(TEXT.indexOf("CAUTION") < TEXT.indexOf("RESULTS"));
    }

    @Test
    void readsInputsBackAsUnderstood() {
        assertSays("0.155 DDM (155 in the 150)");
        assertTrue(
                TEXT.lines().anyMatch(line -> line.matches(" *Carrier power +not filled in")),
                TEXT);
    }

    @Test
    void headsAGroupOfResults() {
        assertSays("  -- Left after the cut --\n  Offset left on transmitter 1");
    }

    @Test
    void countsMissingReadings() {
        assertSays("5 rows, 2 of 20 readings missing");
    }

    @Test
    void alignsTheVerdictsOfAllResults() {
        List<Integer> places =
                Stream.of("met", "not met", "not judged")
                        .flatMap(verdict -> resultsEndingIn(" " + verdict))
                        .distinct()
                        .toList();
        assertEquals(1, places.size(), TEXT);
    }

    private static Stream<Integer> resultsEndingIn(String verdict) {
        String results = TEXT.substring(TEXT.indexOf("RESULTS"), TEXT.indexOf("± is one"));
        return results.lines()
                .filter(line -> line.endsWith("  " + verdict.strip()))
                .map(line -> line.length() - verdict.length());
    }

    @Test
    void saysWhichFileAndLineFailedAndWhatToDo() {
        String where = java.nio.file.Path.of("notebooks/transmit/demo-trim.md") + ":58: ";
        assertSays(where + "the two readings at this point are equal");
        assertSays("double slope = slope(course);");
        assertSays("Look at the rows of the table course");
        assertSays("1 later step not run");
    }

    @Test
    void namesWhatIsWaitedFor() {
        assertSays("WAITING - 1 step not run for want of\n  Carrier power (power)");
    }

    @Test
    void givesTheChecksThatDoNotHoldWithWhatWasExpected() {
        assertSays("CHECKS - 2 of 3 hold");
        assertSays("expected 70.5 within 0.1, got 70.7119");
    }

    @Test
    void fitsATerminal() {
        assertTrue(TEXT.lines().allMatch(line -> Line.width(line) <= 88), TEXT);
    }

    @Test
    void isTheSameWhateverTheMachinesLanguage() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG"));
            assertEquals(TEXT, TextSheet.of(DemoSheet.of(true)));
        } finally {
            Locale.setDefault(before);
        }
    }
}
