package halfwidth.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import halfwidth.page.Filled;
import halfwidth.page.Page;
import halfwidth.page.Pages;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Values that a page takes from another: a chain of three, first → second → third. */
class LinksTest {
    private static final Page FIRST = JobPages.page("a/first", "");
    private static final Page SECOND = JobPages.page("a/second", "a/first#width");
    private static final Page THIRD = JobPages.page("a/third", "a/second#width");

    @TempDir Path folder;
    private Job job;
    private Pages pages;

    @BeforeEach
    void create() {
        Job.create(folder.resolve("job"), Map.of()).close();
        Clock clock = Clock.fixed(Instant.parse("2026-06-12T10:31:00Z"), ZoneId.of("UTC"));
        job = Job.open(folder.resolve("job"), "crew", clock);
        pages = JobPages.written(folder.resolve("pages"), FIRST, SECOND, THIRD);
    }

    @AfterEach
    void close() {
        job.close();
    }

    /** Runs a page as far as the job is concerned: the width is what is taken, and a half more. */
    private void run(Page page, String visit) {
        Filled filled = job.filled(page, visit).filled();
        double width = (Double) filled.entries().get("taken").value() + 0.5;
        Finding found = new Finding("width", width + "", "\u00b0", "", "no limit");
        job.publish(filled, visit, Outcome.of(Outcome.Word.RAN), List.of(found));
    }

    private void type(Page page, String visit, String taken) {
        job.enter(page, visit, List.of(Change.to(Place.input("taken"), taken)));
    }

    private String stands(Page page, String visit) {
        return job.standing(new Visit(page.name(), visit), pages).words();
    }

    private Object taken(Page page, String visit) {
        return job.filled(page, visit).filled().entries().get("taken").value();
    }

    @Test
    void takesAValueAndSaysWhereItCameFromAndWhen() {
        type(FIRST, "", "3.5");
        run(FIRST, "");
        Filled filled = job.filled(SECOND, "").filled();
        assertEquals(4.0, filled.entries().get("taken").value());
        assertEquals("from a/first#width, 2026-06-12 10:31", filled.origins().get("taken"));
    }

    @Test
    void keepsATypedUncertaintyInTheJournal() {
        type(FIRST, "", "3.5 ± 0.25");
        job.close();
        job = Job.open(folder.resolve("job"));
        var entry = job.filled(FIRST, "").filled().entries().get("taken");
        assertEquals("3.5 ± 0.25", entry.typed());
        assertEquals(3.5, entry.value());
        assertEquals(java.util.Optional.of(0.25), entry.uncertainty());
    }

    @Test
    void takesEveryDigitAndShowsSix() {
        type(FIRST, "", "0.12345678901234");
        run(FIRST, "");
        var entry = job.filled(SECOND, "").filled().entries().get("taken");
        assertEquals(0.12345678901234 + 0.5, entry.value());
        assertEquals("0.623457 \u00b0", entry.understood());
    }

    @Test
    void takesATypedValueFirstAndSaysSo() {
        type(FIRST, "", "3.5");
        run(FIRST, "");
        type(SECOND, "", "9");
        Filling filling = job.filled(SECOND, "");
        assertEquals(9.0, filling.filled().entries().get("taken").value());
        assertTrue(filling.filled().origins().isEmpty());
        assertTrue(
                filling.remarks().get(0).endsWith(" is typed here, not taken from a/first"),
                filling.remarks().toString());
    }

    @Test
    void waitsForARunByName() {
        Filling filling = job.filled(SECOND, "");
        assertFalse(filling.filled().entries().containsKey("taken"));
        assertTrue(filling.remarks().get(0).contains("waits for a run of a/first"));
    }

    @Test
    void takesFromTheVisitOfTheSameNameElseFromTheOnlyOne() {
        type(FIRST, "pair 1", "1");
        run(FIRST, "pair 1");
        assertEquals(1.5, taken(SECOND, "pair 2"), "the only one");
        type(FIRST, "pair 2", "2");
        run(FIRST, "pair 2");
        assertEquals(2.5, taken(SECOND, "pair 2"), "the one of the same name");
        assertEquals(1.5, taken(SECOND, "pair 1"));
    }

    @Test
    void asksWhichOfSeveralVisits() {
        for (String visit : List.of("2026", "2027")) {
            type(FIRST, visit, visit.substring(3));
            run(FIRST, visit);
        }
        Filling filling = job.filled(SECOND, "");
        assertTrue(
                filling.remarks().get(0).contains("choose one of several visits of a/first: 2026;"),
                filling.remarks().toString());
        job.state(new Fact.Choice(new Visit("a/second", ""), "taken", "2027"));
        assertEquals(7.5, taken(SECOND, ""));
    }

    @Test
    void isOutOfDateThroughAnyNumberOfPagesUntilRunAgain() {
        type(FIRST, "", "1");
        List.of(FIRST, SECOND, THIRD).forEach(page -> run(page, ""));
        assertEquals("ran", stands(THIRD, ""));
        type(FIRST, "", "2");
        assertEquals("out of date", stands(FIRST, ""));
        assertEquals("out of date", stands(SECOND, ""));
        Standing third = job.standing(new Visit("a/third", ""), pages);
        assertEquals("out of date", third.words());
        assertEquals(List.of("a/second is out of date"), third.because());
        run(FIRST, "");
        assertEquals("ran", stands(FIRST, ""));
        assertEquals("out of date", stands(THIRD, ""));
        run(SECOND, "");
        run(THIRD, "");
        assertEquals("ran", stands(THIRD, ""));
        assertEquals(3.0, taken(THIRD, ""));
    }

    @Test
    void isUpToDateAgainWhereTheChangeIsUndone() {
        type(FIRST, "", "1");
        run(FIRST, "");
        run(SECOND, "");
        type(FIRST, "", "2");
        job.undo(java.util.Optional.empty());
        assertEquals("ran", stands(FIRST, ""));
        assertEquals("ran", stands(SECOND, ""));
    }

    @Test
    void isOutOfDateWhereThePageWasChanged() throws IOException {
        type(FIRST, "", "1");
        run(FIRST, "");
        Path file = folder.resolve("pages/a/first.md");
        Files.writeString(file, FIRST.text().replace("taken + 0.5", "taken + 0.6"));
        assertEquals("out of date", stands(FIRST, ""));
    }

    @Test
    void isOutOfDateWhereTheArraysFileWasChanged() throws IOException {
        Page page =
                Pages.parse(
                        "a/array",
                        Path.of("a/array.md"),
                        FIRST.text().replace("remark,,text,none", "remark,,array,nine-uneven"));
        pages = JobPages.written(folder.resolve("pages"), page);
        Path file = folder.resolve("own.csv");
        String text = Files.readString(Path.of("datasets/arrays/nine-uneven.csv"));
        Files.writeString(file, text);
        type(page, "", "3");
        job.enter(page, "", List.of(Change.to(Place.input("remark"), file.toString())));
        run(page, "");
        assertEquals("ran", stands(page, ""));
        Files.writeString(file, text.replace("name,", "name,More of "));
        assertEquals("out of date", stands(page, ""));
        Files.delete(file);
        assertEquals("out of date", stands(page, ""));
        Files.writeString(file, text.replace("\n", "\r\n"));
        assertEquals("ran", stands(page, ""), "other line ends are no change");
    }

    @Test
    void tellsHowAVisitStands() {
        assertEquals("not started", stands(FIRST, ""));
        type(FIRST, "", "1");
        assertEquals("not run", stands(FIRST, ""));
        Filled filled = job.filled(FIRST, "").filled();
        Outcome waiting = new Outcome(Outcome.Word.WAITING, List.of("length", "sweep"));
        job.publish(filled, "", waiting, List.of());
        assertEquals("waiting for length, sweep", stands(FIRST, ""));
        job.publish(filled, "", Outcome.of(Outcome.Word.NOT_MET), List.of());
        assertEquals("not met", stands(FIRST, ""));
        assertEquals(List.of(new Visit("a/first", "")), List.copyOf(job.standings(pages).keySet()));
    }

    @Test
    void refusesARingAndNamesIt() {
        Page first = JobPages.page("a/first", "a/third#width");
        pages = JobPages.written(folder.resolve("ring"), first, SECOND, THIRD);
        String refusal = assertThrows(JobRefused.class, () -> stands(first, "")).getMessage();
        assertTrue(
                refusal.startsWith(
                        "a/first takes a value from a/third takes a value from a/second takes a"
                                + " value from a/first"),
                refusal);
        type(SECOND, "", "1");
        assertEquals("not started", stands(first, ""), "a typed value opens the ring");
    }

    @Test
    void gathersTheRowsOfEarlierVisits() {
        Place cell = Place.cell("sweep", 1, "mark");
        for (String year : List.of("2026", "2027", "2028")) {
            job.enter(FIRST, year, List.of(Change.to(cell, "of " + year)));
        }
        assertEquals(List.of("of 2026", "of 2027"), marks("2027"));
        assertEquals(List.of("of 2026", "of 2027", "of 2028"), marks("2028"));
        assertEquals(List.of("of 2026"), marks("2026"), "later years leave a record as it was");
        assertEquals(1, job.entered(FIRST, "2028").readings().get("sweep").size());
    }

    private List<String> marks(String visit) {
        return job.filled(FIRST, visit).filled().readings().get("sweep").stream()
                .map(row -> row.get(2).orElseThrow().typed())
                .toList();
    }
}
