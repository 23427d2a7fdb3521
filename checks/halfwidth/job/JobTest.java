package halfwidth.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class JobTest {
    @TempDir Path folder;

    @Test
    void keepsTheOrderOfItsHeading() throws IOException {
        Files.writeString(
                folder.resolve("job.csv"),
                "name,value\nStation,North Field\nRunway,09\nChannel,40X\nOwner,A\nCrew,B\n");
        assertEquals(
                List.of("Station", "Runway", "Channel", "Owner", "Crew"),
                List.copyOf(Job.open(folder).heading().keySet()));
    }

    @Test
    void saysHowToMakeAFolderThatIsNone() {
        String refusal = assertThrows(JobRefused.class, () -> Job.open(folder)).getMessage();
        assertTrue(refusal.contains("job.csv is not there"), refusal);
        assertTrue(refusal.contains("name,value"), refusal);
    }

    @Test
    void refusesAHeadingWithoutItsColumns() throws IOException {
        Files.writeString(folder.resolve("job.csv"), "station,runway\nNorth Field,09\n");
        String refusal = assertThrows(JobRefused.class, () -> Job.open(folder)).getMessage();
        assertTrue(refusal.contains("no name,value"), refusal);
    }
}
