package halfwidth.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An entry that says what stands there already contradicts nobody, whatever its window showed. */
class SameEntryTest {
    private static final Place LENGTH = Place.input("length");
    private static final Place NEAR = Place.cell("sweep", 1, "near");

    @TempDir private Path folder;
    private Job job;

    @BeforeEach
    void create() {
        job = Job.create(folder.resolve("job"), Map.of());
    }

    /** Enters what somebody types who saw a blank there; returns how many lines that wrote. */
    private int enter(Place place, String typed, String reason) {
        Change change = new Change(place, typed, Optional.of(""), reason);
        return job.enter(JobPages.WIDTH, "", List.of(change)).size();
    }

    @Test
    void whatArrivedBeforeItsWindowWasClosedIsNotInConflictWithItself() {
        assertEquals(1, enter(LENGTH, "1", ""));
        assertEquals(0, enter(LENGTH, "1", ""));
        assertEquals(1, enter(NEAR, "", "lost mark"));
        assertEquals(0, enter(NEAR, "", "lost mark"));
    }

    @Test
    void norIsAnotherWayToTypeTheSame() {
        enter(LENGTH, "1 m", "");
        assertEquals(0, enter(LENGTH, "100 cm", ""));
        enter(NEAR, "155 in the 90", "");
        assertEquals(0, enter(NEAR, "-0.155", ""));
    }

    @Test
    void anotherValueAnotherUncertaintyOrABlankStillIs() {
        enter(LENGTH, "1", "");
        for (String typed : List.of("2", "1 ± 0.1")) {
            ChangedMeanwhile conflict =
                    assertThrows(ChangedMeanwhile.class, () -> enter(LENGTH, typed, ""));
            assertEquals("1", conflict.now());
        }
        enter(NEAR, "0.1", "");
        assertThrows(ChangedMeanwhile.class, () -> enter(NEAR, "", "lost mark"));
    }
}
