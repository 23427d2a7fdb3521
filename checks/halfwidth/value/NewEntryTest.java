package halfwidth.value;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is refused when it is typed and still read where an older program kept it. */
class NewEntryTest {
    private static final Kind NUMBER = new Kind.Number();

    @ParameterizedTest
    @CsvSource({
        "21/16, 2 1/16, 1 5/16",
        "17/16, 1 7/16, 1 1/16",
        "-415/16 in, 4 15/16, 25 15/16",
        "16/16, 1 6/16, 1",
        "13/8, 1 3/8, 1 5/8"
    })
    void aFractionThatMayLackASpaceIsRefused(String typed, String one, String other) {
        String refusal =
                assertThrows(EntryRefused.class, () -> NewEntry.check(NUMBER, typed)).getMessage();
        assertTrue(refusal.contains("type " + one + " or " + other), refusal);
        assertDoesNotThrow(() -> Entry.read(NUMBER, "in", typed), "and read again as before");
    }

    /**
     * Without its space 4 1/16 would be 41/16; these would be nothing, or nothing that anyone
     * types.
     */
    @ParameterizedTest
    @ValueSource(
            strings = {"4 1/16", "1/16", "15/16", "15/32", "3/2", "10/8", "0.5", "1 ft 2 3/8 in"})
    void otherFractionsAreTaken(String typed) {
        assertDoesNotThrow(() -> NewEntry.check(NUMBER, typed));
    }

    @ParameterizedTest
    @ValueSource(strings = {"M\ufffdller", "\ud800", "5 \ufffdA"})
    void lettersThatCouldNotBeDecodedAreRefused(String typed) {
        assertFalse(NewEntry.isLegible(typed));
        assertThrows(EntryRefused.class, () -> NewEntry.check(new Kind.Text(), typed));
        assertThrows(EntryRefused.class, () -> NewEntry.check(NUMBER, typed));
    }

    @ParameterizedTest
    @ValueSource(strings = {"M\u00fcller", "\ud83d\udce1", "5 \u00b5A"})
    void everyLetterThatIsOneIsTaken(String typed) {
        assertTrue(NewEntry.isLegible(typed));
        assertEquals(typed, Entry.read(new Kind.Text(), "", typed).value());
        assertDoesNotThrow(() -> NewEntry.check(new Kind.Text(), typed));
    }
}
