package halfwidth.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Where a job is opened: a browser keeps what is typed by port, and must find it again. */
class UsualPortTest {
    @Test
    void isTheSameForAJobHoweverItIsNamed() {
        int port = OpenScreen.usualPort(Path.of("north-field"));
        assertEquals(
                port, OpenScreen.usualPort(Path.of("").toAbsolutePath().resolve("north-field")));
        assertEquals(port, OpenScreen.usualPort(Path.of("x", "..", "north-field")));
        assertNotEquals(port, OpenScreen.usualPort(Path.of("south-field")));
    }

    /** Two jobs that are opened at once seldom want the same: by chance one pair in 900. */
    @Test
    void isAnotherForMostOtherJobsAndNeverASystemsOwn() {
        int[] ports =
                IntStream.range(0, 1000)
                        .map(i -> OpenScreen.usualPort(Path.of("/jobs/station-" + i)))
                        .toArray();
        assertTrue(IntStream.of(ports).distinct().count() > 500);
        assertTrue(IntStream.of(ports).allMatch(port -> port > 8047 && port < 9000));
    }
}
