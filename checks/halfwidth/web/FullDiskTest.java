package halfwidth.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.job.Change;
import halfwidth.job.Place;
import halfwidth.page.Pages;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.StandardOpenOption;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A journal that takes values and then no results. */
class FullDiskTest {
    private static final String PAGE = "transmit/feed-trim";

    @Test
    void theSheetIsShownThoughItsResultsCannotBeKept() throws IOException {
        Change target = Change.to(Place.input("target"), "0.5");
        try (Served served =
                Served.scratch(
                        job ->
                                job.enter(
                                        new Pages(Served.NOTEBOOKS).find(PAGE),
                                        "",
                                        List.of(target)))) {
            // Whatever keeps the program from writing: here, that another one has written.
            Files.writeString(
                    served.folder().resolve("journal.csv"), "more\n", StandardOpenOption.APPEND);
            String answer = Wire.friend(served).post("/fill/" + PAGE + "?visit=", "first=yes");
            assertEquals(200, Wire.status(answer), answer);
            assertTrue(answer.contains("value=\"0.5\""), answer);
            assertTrue(answer.contains("The results of this run are not kept"), answer);
            assertFalse(answer.contains("What was just entered is NOT kept"), answer);
        }
    }
}
