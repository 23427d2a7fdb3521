package halfwidth.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.value.EntryRefused;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** How far down a table may be filled in, and what becomes of what stands below. */
class RowBoundTest {
    private static final Visit VISIT = new Visit("sweep/width", "");

    @TempDir Path folder;
    private Job job;

    @BeforeEach
    void create() {
        job = Job.create(folder, Map.of());
    }

    @AfterEach
    void close() {
        job.close();
    }

    private static Change azimuth(int row, String typed) {
        return Change.to(Place.cell("sweep", row, "azimuth"), typed);
    }

    private void enter(Change... changes) {
        job.enter(JobPages.WIDTH, "", List.of(changes));
    }

    private int rows() {
        var readings = job.filled(JobPages.WIDTH, "").filled().readings();
        return readings.getOrDefault("sweep", List.of()).size();
    }

    @Test
    void aRowFarBelowTheLastIsRefused() {
        enter(azimuth(3, "1"));
        String refusal =
                assertThrows(EntryRefused.class, () -> enter(azimuth(104, "1"))).getMessage();
        assertTrue(refusal.contains("sweep, row 104, azimuth"), refusal);
        assertTrue(refusal.contains("rows 1 to 103"), refusal);
        enter(azimuth(103, "1"));
        assertEquals(103, rows());
    }

    @Test
    void aBlockMayBeLongButNotWithoutEnd() {
        enter(IntStream.rangeClosed(1, 5000).mapToObj(i -> azimuth(i, "1")).toArray(Change[]::new));
        assertEquals(5000, rows());
        assertThrows(EntryRefused.class, () -> enter(azimuth(5001, "1")));
        Change reason =
                new Change(Place.cell("sweep", 5001, "near"), "", Optional.empty(), "lost mark");
        assertThrows(EntryRefused.class, () -> enter(reason));
    }

    /** As a program wrote that had no such bound. */
    private void writeFarDown() throws java.io.IOException {
        enter(azimuth(1, "1"));
        job.close();
        Path journal = folder.resolve("journal.csv");
        String text = Files.readString(journal);
        String cells =
                LineText.write(
                        new Line(
                                2,
                                0,
                                job.lines().get(0).time(),
                                "crew",
                                new Fact.Value(
                                        VISIT,
                                        Place.cell("sweep", 999_999, "azimuth"),
                                        "2",
                                        "2",
                                        "\u00b0",
                                        "",
                                        "")));
        byte[] bytes = cells.getBytes(StandardCharsets.UTF_8);
        String end = new Chain().end(Chain.last(text.strip()), bytes);
        Files.writeString(journal, text + cells + end + "\n");
        job = Job.open(folder);
        assertEquals(List.of(), job.warnings());
    }

    @Test
    void whatStandsFarDownIsLeftOutAndSaid() throws java.io.IOException {
        writeFarDown();
        Filling filling = job.filled(JobPages.WIDTH, "");
        assertEquals(1, filling.filled().readings().get("sweep").size());
        String remark = filling.remarks().get(0);
        assertTrue(remark.contains("row 999999") && remark.contains("left out"), remark);
        assertThrows(EntryRefused.class, () -> enter(azimuth(102, "1")));
    }

    @Test
    void whatStandsFarDownIsTakenBackByUndo() throws java.io.IOException {
        writeFarDown();
        assertEquals(1, job.undo(Optional.of(VISIT)).size());
        assertEquals(
                List.of(),
                job.filled(JobPages.WIDTH, "").remarks().stream()
                        .filter(remark -> remark.contains("row"))
                        .toList());
    }

    @Test
    void whatStandsFarDownIsTakenBackByABlank() throws java.io.IOException {
        writeFarDown();
        enter(azimuth(999_999, ""));
        assertEquals(1, job.filled(JobPages.WIDTH, "").filled().readings().get("sweep").size());
        assertEquals(
                List.of(),
                job.filled(JobPages.WIDTH, "").remarks().stream()
                        .filter(remark -> remark.contains("row"))
                        .toList());
    }
}
