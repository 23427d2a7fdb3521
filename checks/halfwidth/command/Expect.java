package halfwidth.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** What is expected of a program that ended; a failure shows all it wrote. */
final class Expect {
    private Expect() {}

    static void status(int expected, Program program) {
        assertEquals(expected, program.status(), program::toString);
    }

    static void said(Program program, String... words) {
        for (String word : words) {
            assertTrue(
                    program.out().contains(word),
                    () -> "'" + word + "' is not on standard output of " + program);
        }
    }

    static void complained(Program program, String... words) {
        for (String word : words) {
            assertTrue(
                    program.err().contains(word),
                    () -> "'" + word + "' is not on standard error of " + program);
        }
    }
}
