package halfwidth.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.approval.Role;
import halfwidth.page.Filled;
import halfwidth.spreadsheet.CsvFor;
import halfwidth.value.EntryRefused;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class JobTest {
    private static final Place LENGTH = Place.input("length");

    @TempDir Path folder;

    private Job created() {
        return Job.create(folder.resolve("job"), Map.of("Station", "North Field"));
    }

    private static String typed(Job job, String visit, String input) {
        Filled filled = job.filled(JobPages.WIDTH, visit).filled();
        return Optional.ofNullable(filled.entries().get(input)).map(e -> e.typed()).orElse("");
    }

    private static void enter(Job job, String visit, Place place, String typed) {
        job.enter(JobPages.WIDTH, visit, List.of(Change.to(place, typed)));
    }

    @Test
    void keepsTheOrderOfItsHeading() throws IOException {
        Files.writeString(
                folder.resolve("job.csv"),
                "name,value\nStation,North Field\nRunway,09\nChannel,40X\nOwner,A\nCrew,B\n");
        assertEquals(
                List.of("Station", "Runway", "Channel", "Owner", "Crew"),
                List.copyOf(Job.readOnly(folder).heading().keySet()));
    }

    @Test
    void saysHowToMakeAFolderThatIsNone() {
        String refusal = assertThrows(JobRefused.class, () -> Job.open(folder)).getMessage();
        assertTrue(refusal.contains("job.csv is not there"), refusal);
        assertTrue(refusal.contains("name,value"), refusal);
        assertFalse(Files.exists(folder.resolve("job.lock")), "nothing is left behind");
    }

    @Test
    void refusesAHeadingWithoutItsColumns() throws IOException {
        Files.writeString(folder.resolve("job.csv"), "station,runway\nNorth Field,09\n");
        String refusal = assertThrows(JobRefused.class, () -> Job.open(folder)).getMessage();
        assertTrue(refusal.contains("no name,value"), refusal);
    }

    @Test
    void keepsWhatWasTypedWithHowItWasUnderstoodAndWhatItReplaced() {
        try (Job job = created()) {
            enter(job, "", LENGTH, "1 km");
            enter(job, "", LENGTH, "300 m");
        }
        Fact.Value last = (Fact.Value) Job.readOnly(folder.resolve("job")).lines().get(1).fact();
        assertEquals("300 m", last.typed());
        assertEquals("300", last.understood());
        assertEquals("m", last.unit());
        assertEquals("1 km", last.replaced());
    }

    @Test
    void keepsVisitsOfOnePageApart() {
        try (Job job = created()) {
            enter(job, "2026", LENGTH, "10");
            enter(job, "2027", LENGTH, "20");
            assertEquals("10", typed(job, "2026", "length"));
            assertEquals("20", typed(job, "2027", "length"));
            assertEquals("", typed(job, "", "length"));
        }
    }

    @Test
    void keepsAReasonForABlank() {
        Place cell = Place.cell("sweep", 2, "near");
        try (Job job = created()) {
            job.enter(
                    JobPages.WIDTH,
                    "",
                    List.of(
                            Change.to(Place.cell("sweep", 1, "near"), "0"),
                            new Change(cell, "", Optional.empty(), "lost mark")));
        }
        Job job = Job.readOnly(folder.resolve("job"));
        Line line = job.values(new Visit("sweep/width", "")).get(cell);
        assertEquals("lost mark", ((Fact.Value) line.fact()).reason());
        String export = Export.of(job, CsvFor.PROGRAMS);
        assertTrue(export.contains("sweep,2,near,,DDM,,lost mark,"), export);
    }

    @Test
    void entersABlockWholeOrNotAtAll() {
        try (Job job = created()) {
            List<Change> block =
                    List.of(
                            Change.to(Place.cell("sweep", 1, "near"), "0.1"),
                            Change.to(Place.cell("sweep", 2, "near"), "two"));
            String refusal =
                    assertThrows(EntryRefused.class, () -> job.enter(JobPages.WIDTH, "", block))
                            .getMessage();
            assertTrue(refusal.contains("sweep, row 2, near"), refusal);
            assertEquals(0, job.last());
        }
    }

    @Test
    void refusesToReplaceWhatThePersonDidNotSee() {
        try (Job job = created()) {
            enter(job, "", LENGTH, "300");
            Change stale = Change.to(LENGTH, "310").seeing("");
            ChangedMeanwhile refusal =
                    assertThrows(
                            ChangedMeanwhile.class,
                            () -> job.enter(JobPages.WIDTH, "", List.of(stale)));
            assertEquals("300", refusal.now());
            assertEquals(LENGTH, refusal.place());
            assertTrue(refusal.getMessage().contains("\"310\""), refusal.getMessage());
            assertTrue(refusal.getMessage().contains("\"300\""), refusal.getMessage());
            assertEquals("300", typed(job, "", "length"));
            job.enter(JobPages.WIDTH, "", List.of(Change.to(LENGTH, "310").seeing("300")));
            assertEquals("310", typed(job, "", "length"));
        }
    }

    @Test
    void undoesByANewLineAndUndoesThatToo() {
        try (Job job = created()) {
            enter(job, "", LENGTH, "300");
            enter(job, "", LENGTH, "310");
            assertEquals(2, job.undo(Optional.empty()).get(0).number());
            assertEquals("300", typed(job, "", "length"));
            assertEquals(1, job.undo(Optional.empty()).get(0).number());
            assertEquals("", typed(job, "", "length"));
            assertEquals(List.of(), job.undo(Optional.empty()), "nothing is left to undo");
            assertEquals(4, job.lines().size(), "nothing was removed");
        }
    }

    @Test
    void undoesAnEntryOfThatVisitOnly() {
        try (Job job = created()) {
            enter(job, "2026", LENGTH, "10");
            enter(job, "2027", LENGTH, "20");
            job.undo(Optional.of(new Visit("sweep/width", "2026")));
            assertEquals("", typed(job, "2026", "length"));
            assertEquals("20", typed(job, "2027", "length"));
        }
    }

    @Test
    void showsAnyEarlierMoment() {
        try (Job job = created()) {
            enter(job, "", LENGTH, "300");
            enter(job, "", LENGTH, "310");
            enter(job, "", LENGTH, "320");
            assertEquals("310", typed(job.at(2), "", "length"));
            assertEquals("", typed(job.at(0), "", "length"));
            assertFalse(job.at(2).isWritable());
            assertEquals("320", typed(job, "", "length"));
        }
    }

    /** By the order of the lines: a clock that is set back cannot reorder what was entered. */
    @Test
    void ordersByNumberWhereTheClockWasSetBack() {
        created().close();
        String[] clock = {"2026-06-12T10:00:00Z", "2026-06-12T11:00:00Z", "2026-06-12T10:30:00Z"};
        for (int i = 0; i < clock.length; i++) {
            Clock shown = Clock.fixed(Instant.parse(clock[i]), ZoneId.of("UTC"));
            try (Job job = Job.open(folder.resolve("job"), "crew", shown)) {
                enter(job, "", LENGTH, Integer.toString(i + 1));
            }
        }
        Job job = Job.readOnly(folder.resolve("job"));
        assertEquals("3", typed(job, "", "length"), "the last line counts");
        assertEquals(OffsetDateTime.parse(clock[2]), job.lines().get(2).time(), "as written");
        assertEquals("1", typed(job.at(OffsetDateTime.parse(clock[0])), "", "length"));
        assertEquals(
                "3", typed(job.at(OffsetDateTime.parse("2026-06-12T10:45:00Z")), "", "length"));
    }

    @Test
    void worksWhereverItsFolderIsCopied() throws IOException {
        try (Job job = created()) {
            enter(job, "", LENGTH, "300");
        }
        Path copy = folder.resolve("elsewhere");
        try (Stream<Path> files = Files.walk(folder.resolve("job"))) {
            for (Path file : files.toList()) {
                Files.copy(file, copy.resolve(folder.resolve("job").relativize(file)));
            }
        }
        try (Job first = Job.open(folder.resolve("job"));
                Job second = Job.open(copy)) {
            enter(second, "", LENGTH, "310");
            assertEquals("300", typed(first, "", "length"));
            assertEquals("310", typed(second, "", "length"));
            assertEquals(List.of(), second.warnings());
        }
    }

    @Test
    void tellsTheSecondWhoWritesAndLetsItRead() {
        try (Job job = created()) {
            enter(job, "", LENGTH, "300");
            String refusal =
                    assertThrows(JobHeld.class, () -> Job.open(folder.resolve("job"))).getMessage();
            assertTrue(refusal.contains("process " + ProcessHandle.current().pid()), refusal);
            assertTrue(refusal.contains("since 20"), refusal);
            assertTrue(refusal.contains("of " + System.getProperty("user.name")), refusal);
            Job second = Job.readOnly(folder.resolve("job"));
            assertEquals("300", typed(second, "", "length"));
            String notKept =
                    assertThrows(JobRefused.class, () -> enter(second, "", LENGTH, "1"))
                            .getMessage();
            assertTrue(notKept.contains("nothing is kept"), notKept);
        }
        Job.open(folder.resolve("job")).close();
    }

    @Test
    void takesAPageOfTheJobBeforeTheShippedOne() throws IOException {
        try (Job job = created()) {
            Path shipped = folder.resolve("shipped");
            JobPages.written(shipped, JobPages.WIDTH, JobPages.page("sweep/other", ""));
            Path own = job.folder().resolve("pages/sweep/width.md");
            Files.createDirectories(own.getParent());
            Files.writeString(own, JobPages.WIDTH.text().replace("# Trial", "# Ours"));
            var pages = job.pages(new halfwidth.page.Pages(shipped));
            assertEquals(List.of("sweep/other", "sweep/width"), pages.names());
            assertEquals("Ours", pages.find("sweep/width").title());
            assertEquals("Trial", pages.find("sweep/other").title());
        }
    }

    /** 12 typed where a page counted in metres must not become 12 of what it counts in later. */
    @Test
    void leavesOutWhatAnAdaptedPageCountsInAnotherUnit() {
        try (Job job = created()) {
            enter(job, "", LENGTH, "12");
            var adapted =
                    halfwidth.page.Pages.parse(
                            "sweep/width",
                            Path.of("x.md"),
                            JobPages.WIDTH.text().replace("length,m,number", "length,ft,number"));
            Filling filling = job.filled(adapted, "");
            assertFalse(filling.filled().entries().containsKey("length"));
            assertTrue(filling.remarks().get(0).contains("counted in m, which is ft now"));
        }
    }

    @Test
    void keepsNoNameWithLettersThatCouldNotBeDecoded() {
        try (Job job = created()) {
            Fact signed =
                    new Fact.Signed(
                            new Visit("sweep/width", ""),
                            "r.html",
                            "abc",
                            Role.CHECKED,
                            "M\ufffdller",
                            "");
            assertThrows(JobRefused.class, () -> job.state(signed));
            assertThrows(EntryRefused.class, () -> enter(job, "", Place.input("remark"), "\ufffd"));
            assertThrows(EntryRefused.class, () -> enter(job, "", LENGTH, "21/16 m"));
            assertEquals(0, job.last());
        }
    }

    @Test
    void saysThatItsHeadingWasChangedUntilTheNextEntryAndNotesItThere() throws IOException {
        try (Job job = created()) {
            enter(job, "", LENGTH, "300");
        }
        Path heading = folder.resolve("job/job.csv");
        Files.writeString(heading, Files.readString(heading).replace("\n", "\r\n"));
        assertEquals(List.of(), Job.readOnly(folder.resolve("job")).notices(), "other line ends");
        Files.writeString(heading, Files.readString(heading).replace("North", "South"));
        String said = "job.csv was changed since the last entry; it says now: Station South Field";
        assertEquals(List.of(said), Job.readOnly(folder.resolve("job")).notices());
        try (Job job = Job.open(folder.resolve("job"))) {
            assertEquals(List.of(said), job.notices());
            enter(job, "", LENGTH, "310");
            assertEquals(List.of(), job.notices());
            Fact.Noted noted = (Fact.Noted) job.lines().get(1).fact();
            assertEquals(said, noted.text());
            assertEquals("310", typed(job, "", "length"));
        }
        assertEquals(List.of(), Job.readOnly(folder.resolve("job")).notices());
        assertEquals(List.of(), Job.readOnly(folder.resolve("job")).warnings());
    }

    /** As an older program left it, which noted no heading. */
    @Test
    void saysNothingOfAHeadingThatWasNotNoted() throws IOException {
        try (Job job = created()) {
            enter(job, "", LENGTH, "300");
        }
        Path ends = folder.resolve("job/journal-end.csv");
        Files.writeString(ends, Files.readString(ends).replaceFirst("heading,.*\n", ""));
        Files.writeString(folder.resolve("job/job.csv"), "name,value\nStation,South Field\n");
        assertEquals(List.of(), Job.readOnly(folder.resolve("job")).notices());
    }
}
