package halfwidth.value;

import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** What every refusal test asks: that the entry is refused in words that help. */
final class Refusals {
    static final Kind NUMBER = new Kind.Number();
    static final Kind DDM = new Kind.Ddm();

    private Refusals() {}

    static void assertRefused(Kind kind, String unit, String typed, String... words) {
        EntryRefused refusal =
                assertThrows(
                        EntryRefused.class,
                        () -> {
                            Entry read = Entry.read(kind, unit, typed);
                            throw new AssertionError(typed + " was read as " + read);
                        });
        assertShort(typed, refusal.getMessage());
        for (String word : words) {
            assertTrue(
                    refusal.getMessage().contains(word),
                    () -> typed + ": \"" + refusal.getMessage() + "\" does not say " + word);
        }
    }

    /** What is wrong and what to type is read at a glance: 25 words beside what was typed. */
    private static void assertShort(String typed, String message) {
        int words = message.replace(typed.strip(), "").strip().split("\\s+").length;
        assertTrue(words <= 25, () -> words + " words are too many: " + message);
    }
}
