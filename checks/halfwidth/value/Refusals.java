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
        for (String word : words) {
            assertTrue(
                    refusal.getMessage().contains(word),
                    () -> typed + ": \"" + refusal.getMessage() + "\" does not say " + word);
        }
    }
}
