package halfwidth.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.job.Job;
import halfwidth.job.Place;
import halfwidth.job.Standing;
import halfwidth.job.Visit;
import halfwidth.page.Pages;
import halfwidth.run.Budget;
import halfwidth.run.Workshop;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The station that opens where no job is named. */
@Tag("long")
class DemoStationTest {
    private static final Pages PAGES = new Pages(Path.of("notebooks").toAbsolutePath());
    private static final Path SEASON = Path.of("datasets", "demo");

    @Test
    void everyVisitOfTheSeasonIsThereAndSaysHowItStands() throws IOException {
        DemoStation demo = DemoStation.beside(PAGES);
        try (Job job = demo.job();
                Workshop workshop = Workshop.withoutSpare(Budget.USUAL)) {
            assertTrue(job.heading().get("Station").contains("invented"), job.heading().toString());
            assertEquals(visitsOnDisk(), job.visits().size());
            Visit trim = new Visit("transmit/feed-trim", "course-2");
            assertEquals(
                    "108.75 MHz",
                    job.values(trim).get(Place.input("frequency")).fact()
                                    instanceof halfwidth.job.Fact.Value value
                            ? value.typed()
                            : "");
            demo.compute(workshop);
            Map<Visit, Standing> standings = job.standings(PAGES);
            standings.forEach(
                    (visit, standing) ->
                            assertTrue(
                                    standing.words()
                                            .matches(
                                                    "ran|to do|held|met|not met|not judged|waiting.*"),
                                    visit + ": " + standing));
            // The dead element and the long cable are what the station hides.
            assertEquals(
                    "not met", standings.get(new Visit("array/distribution-check", "")).words());
        }
    }

    private static long visitsOnDisk() throws IOException {
        try (Stream<Path> files = Files.walk(SEASON)) {
            return files.filter(file -> file.endsWith("inputs.csv")).count();
        }
    }

    @Test
    void withoutItsFilesItSaysWhereTheyBelong(@TempDir Path folder) {
        Refused refused =
                assertThrows(
                        Refused.class,
                        () -> DemoStation.beside(new Pages(folder.resolve("notebooks"))));
        assertTrue(refused.getMessage().contains(folder.resolve("datasets/demo").toString()));
        assertTrue(refused.getMessage().contains("--job DIR"), refused.getMessage());
    }
}
