package halfwidth.value;

import static halfwidth.value.Refusals.assertRefused;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class WordEntryTest {
    private static final Kind COUNT = new Kind.Count();
    private static final Kind CHOICE = new Kind.Choice(List.of("CSB", "SBO"));
    private static final Kind TEXT = new Kind.Text();
    private static final Kind DATE = new Kind.Date();

    @Test
    void understandsWholeNumbers() {
        assertEquals(14, Entry.read(COUNT, "1", " 14 ").value());
        assertEquals(-3, Entry.read(COUNT, "1", "\u22123").value());
        assertEquals(new Entry("7 d", 7, "7 d"), Entry.read(COUNT, "d", "7 d"));
        assertEquals("14", Entry.read(COUNT, "1", "14").understood());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "12.5", "12.0", "1,234", "1e3", "3 cuts", "3000000000", "7 1", "x"})
    void refusesWhatIsNoWholeNumber(String typed) {
        assertRefused(COUNT, "1", typed, "is no whole number", "such as 12");
    }

    @Test
    void refusesAnotherUnitForACount() {
        assertRefused(COUNT, "d", "7 h", "is no whole number", "with d");
    }

    @Test
    void understandsAChoiceInAnyCase() {
        assertEquals(new Entry(" sbo", "SBO", "SBO"), Entry.read(CHOICE, "", " sbo"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "SB", "both"})
    void refusesWhatIsNoChoiceListingThem(String typed) {
        assertRefused(CHOICE, "", typed, "is not among the choices", "CSB, SBO");
    }

    @Test
    void trimsText() {
        assertEquals(new Entry("  Tx 1 ", "Tx 1", "Tx 1"), Entry.read(TEXT, "", "  Tx 1 "));
        assertRefused(TEXT, "", " \t", "nothing is typed", "type");
    }

    @ParameterizedTest
    @CsvSource({
        "2026-11-25, 2026-11-25",
        "25.11.2026, 2026-11-25 (25.11.2026 typed)",
        "3.4.2026, 2026-04-03 (3.4.2026 typed)",
        "25 Nov 2026, 2026-11-25 (25 Nov 2026 typed)",
        "1 Sep 2026, 2026-09-01 (1 Sep 2026 typed)",
        "25 november 2026, 2026-11-25 (25 november 2026 typed)",
    })
    void understandsDatesThatReadInOneWay(String typed, String understood) {
        Entry entry = Entry.read(DATE, "", typed);
        assertEquals(understood, entry.understood());
        assertEquals(LocalDate.parse(understood.substring(0, 10)), entry.value());
    }

    @ParameterizedTest
    @ValueSource(strings = {"3/4/2026", "25/11/2026", "2026/3/4"})
    void refusesDatesWithSlashes(String typed) {
        assertRefused(DATE, "", typed, "which is the day", "2026-11-25");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "today",
                "2026-02-30",
                "31.4.2026",
                "25.11.26",
                "0026-01-01",
                "9999-01-01"
            })
    void refusesWhatIsNoDate(String typed) {
        assertRefused(DATE, "", typed, "is no date between 1900 and 2199", "25 Nov 2026");
    }
}
